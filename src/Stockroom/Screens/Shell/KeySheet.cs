using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Shell;

/// <summary>The keys that work now, and the signs, as lines of a text.</summary>
internal static class KeySheet
{
    public static IReadOnlyList<Line> Lines(string title, IEnumerable<KeyAction> here, IEnumerable<KeyAction> everywhere)
    {
        var lines = new List<Line> { Line.Of($" Keys that work now in {title}", Tone.Heading) };
        lines.AddRange(here.Where(a => a.Works).Select(ToLine));
        lines.Add(Line.Of(" Everywhere", Tone.Heading));
        lines.AddRange(everywhere.Where(a => a.Works).Select(ToLine));
        lines.Add(Line.Of(" Signs", Tone.Heading));
        lines.Add(ToLine("!  *  -", "in a list: wrong, due, hands off"));
        string margins = string.Join("  ", new[] { Attention.Danger, Attention.Warning, Attention.Notice }.Select(a => CardLines.Sign(a).Trim()));
        lines.Add(ToLine(margins, "on a card: danger, warning, notice"));
        return lines;
    }

    private static Line ToLine(KeyAction action) => ToLine(action.Name, action.Help);

    private static Line ToLine(string name, string help) =>
        new([new($"   {name.PadRight(12)} ", Tone.Plain), new(help, Tone.Quiet)]);
}
