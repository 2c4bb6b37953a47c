using System.ComponentModel;
using System.Diagnostics;
using Stockroom.Labels;
using Stockroom.Labels.Stocks;

namespace Stockroom.Desk;

/// <summary>Sends a file to a printer with the <c>lp</c> of the system, at its true size.</summary>
internal static class LinePrinter
{
    private const string Command = "lp";

    /// <summary>Where <c>lp</c> lies.</summary>
    /// <exception cref="LabelException">This computer has none.</exception>
    public static string Find(string? searchPath)
    {
        foreach (var folder in (searchPath ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries))
        {
            var path = Path.Combine(folder, Command);
            if (File.Exists(path))
                return path;
        }

        throw new LabelException("there is no 'lp' on this computer to print with; write a file with --out FILE.pdf and print it at 100 %");
    }

    /// <summary>Prints a PDF; an empty printer name means the usual one.</summary>
    /// <exception cref="LabelException">The printer refused it; the message is the printer's own.</exception>
    public static string Print(string command, string printer, string file, LabelStock? stock)
    {
        var start = new ProcessStartInfo(command) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        if (printer.Length > 0)
        {
            start.ArgumentList.Add("-d");
            start.ArgumentList.Add(printer);
        }

        start.ArgumentList.Add("-o");
        start.ArgumentList.Add("print-scaling=none");
        if (stock is not null)
        {
            start.ArgumentList.Add("-o");
            start.ArgumentList.Add(Media(stock));
        }

        start.ArgumentList.Add(file);
        try
        {
            using var process = Process.Start(start)!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0
                ? output.ReplaceLineEndings(" ").Trim()
                : throw new LabelException($"the printer refused the labels: {error.Result.ReplaceLineEndings(" ").Trim()}; 'lpstat -p' lists the printers");
        }
        catch (Win32Exception e)
        {
            throw new LabelException($"'{command}' cannot be run: {e.Message}", e);
        }
    }

    private static string Media(LabelStock stock) => (stock.PageWidthMm, stock.PageHeightMm) switch
    {
        (210, 297) => "media=A4",
        (215.9, 279.4) => "media=Letter",
        _ => FormattableString.Invariant($"media=Custom.{stock.PageWidthMm:0.##}x{stock.PageHeightMm:0.##}mm"),
    };
}
