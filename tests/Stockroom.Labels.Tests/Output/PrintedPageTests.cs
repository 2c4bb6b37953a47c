using System.Diagnostics;
using System.Globalization;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Output;

/// <summary>The page as a printer lays down its dots, black or none, read by a second, independent reader (ZBar, through Poppler's raster).</summary>
public sealed class PrintedPageTests
{
    private static readonly string[] StockNames =
        ["a4-2x4", "a4-3x8", "a4-4x12", "letter-4x20", "a4-disc-25", "a4-flag-6", "a4-wrap-12", "band-12", "roll-25x13", "a4-door-card"];

    /// <summary>Every stock on the printers in use.</summary>
    public static MatrixTheoryData<string, int> Prints() => new(StockNames, [203, 300, 600]);

    [Theory]
    [MemberData(nameof(Prints))]
    public void EveryCode_ReadsExactly(string name, int dotsPerInch)
    {
        Need("pdftoppm", "poppler-utils");
        Need("zbarimg", "zbar-tools");
        var stock = LabelStocks.Load().Named(name);
        var sheet = LabelSheet.Render(Samples.All, stock);
        var pdf = Artefacts.Path($"codes-{name}-{dotsPerInch}.pdf");
        PageFiles.Write(pdf, sheet.Pages, "Codes", Samples.PrintedAt);
        var folder = Directory.CreateTempSubdirectory("codes").FullName;

        try
        {
            Run("pdftoppm", "-r", dotsPerInch.ToString(CultureInfo.InvariantCulture), "-gray", "-aa", "no", "-aaVector", "no", pdf, Path.Combine(folder, "page"));

            // Whole pages of codes: the reader sweeps along every line, and again along every second, as a hand moves a camera.
            var read = Directory.GetFiles(folder, "*.pgm").Order(StringComparer.Ordinal)
                .SelectMany(p => new[] { "1", "2" }.Select(lines => Run("zbarimg", "-q", "--nodbus", "--raw", $"-Sx-density={lines}", $"-Sy-density={lines}", p)))
                .SelectMany(t => t.Split("STOCKROOM:", StringSplitOptions.RemoveEmptyEntries))
                .Select(t => "STOCKROOM:" + t.TrimEnd('\n'));

            // A code that stands on both sides of a flag is read once or twice.
            Assert.Equal(sheet.Fits.Where(f => f.Code is not null).Select(f => f.Code!.Text).Order(StringComparer.Ordinal), read.Distinct().Order(StringComparer.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Need(string tool, string package)
    {
        var there = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator)
            .Any(f => File.Exists(Path.Combine(f, tool)));
        if (!there && string.Equals(Environment.GetEnvironmentVariable("CI"), "true", StringComparison.OrdinalIgnoreCase))
        {
            Assert.Fail($"{tool} is missing; install {package}");
        }

        Assert.SkipUnless(there, $"{tool} is not installed (package {package})");
    }

    private static string Run(string tool, params string[] arguments)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{tool} ended with {process.ExitCode}: {errors.Result}");
        return output;
    }
}
