using System.CommandLine;
using Stockroom.Labels.Output;
using Stockroom.Plots;

namespace Stockroom.Verbs;

/// <summary>"--plot FILE.svg|.png" draws a forecast into a file, "--plot -" in the terminal.</summary>
internal sealed class PlotOption
{
    /// <summary>The word for the terminal in place of a file.</summary>
    public const string Terminal = "-";

    private Option<string?> Option { get; } = new("--plot") { Description = "Draw the curve with its band, weigh-ins and limits; '-' draws it in the terminal", HelpName = "FILE.svg|.png" };

    private readonly Option<bool> _chart = new("--chart") { Description = "The same as --plot -" };

    public IEnumerable<Option> All => [Option, _chart];

    /// <summary>Where to, checked before anything is computed; null where no drawing was asked for.</summary>
    public string? Asked(ParseResult p, bool json)
    {
        if ((p.GetValue(Option)?.Trim() ?? (p.GetValue(_chart) ? Terminal : null)) is not { } file)
            return null;
        if (file == Terminal)
            return json ? throw RefusedException.Words("--json leaves no room for a drawing in the terminal; name a file.svg or file.png") : file;
        return Kind(file) is ".svg" or ".png"
            ? file
            : throw RefusedException.Words($"a drawing is written as .svg or .png, not '{file}'");
    }

    /// <summary>Draws it, or refuses where there is no curve.</summary>
    public static void Draw(string asked, Surroundings around, ForecastCurve? curve)
    {
        if (curve is null)
            throw RefusedException.Input("there is nothing to draw: what is left is not known; --explain says which way out is not");
        if (asked == Terminal)
        {
            foreach (var line in TextPlot.Lines(curve))
                around.Out.WriteLine(line);
            return;
        }

        var bytes = Kind(asked) == ".png" ? CurvePicture.Png(curve) : CurvePicture.Svg(curve);
        OutputFile.Write(asked, stream => stream.Write(bytes));
    }

    private static string Kind(string file) => Path.GetExtension(file).ToLowerInvariant();
}
