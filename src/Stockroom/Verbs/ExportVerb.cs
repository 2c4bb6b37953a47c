using System.CommandLine;
using Stockroom.Exports;
using Stockroom.Labels.Output;
using Stockroom.Storage;
using Stockroom.Storage.Exports;

namespace Stockroom.Verbs;

/// <summary>
/// Writes the book out. A .json holds all of it and makes an equal book again; a .csv lists the containers, or the places;
/// an .ics is the calendar of what is due.
/// </summary>
internal sealed class ExportVerb : IVerb
{
    public string Name => "export";

    public string Summary => "Write the book out: .json keeps all of it, .csv lists the containers or places, .ics is what is due";

    public Command Build(Surroundings around)
    {
        var file = new Argument<string>("FILE") { Description = "FILE.json, FILE.csv or FILE.ics" };
        var places = new Option<bool>("--places") { Description = "List the places in the .csv, with their limits" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var asJson = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { file, places, asOf, book, asJson };
        command.SetAction(p =>
        {
            var path = p.GetRequiredValue(file);
            var format = Path.GetExtension(path).ToLowerInvariant();
            var day = p.GetValue(asOf);
            if (format is not (".json" or ".csv" or ".ics"))
                throw RefusedException.Words($"'{format}' is not a format of export; write FILE.json, FILE.csv or FILE.ics");
            if (p.GetValue(places) && format != ".csv")
                throw RefusedException.Words("--places is for a .csv; a .json holds the places anyway");
            if (day is not null && format == ".json")
                throw RefusedException.Words("a .json holds every entry there is; --as-of is for a .csv or .ics");
            if (StockBookFolder.IsOwnFile(BookAccess.FolderOf(p.GetValue(book), around), path))
                throw RefusedException.Words($"'{path}' is a file of the book itself; name another");
            using var open = OpenedStock.OpenWhole(p.GetValue(book), day, around);
            var report = StockBookFolder.Verify(open.Book.Folder);
            if (!report.RecordHolds)
                throw RefusedException.Input($"nothing was exported: {report.Findings.Except(report.OfAttachments).First()}; see 'stockroom verify'");
            var (bytes, missing) = format switch
            {
                ".json" => BookExport.Of(open.Book),
                ".csv" => (p.GetValue(places) ? CsvExport.Places(open.State) : CsvExport.Containers(open.Stock), []),
                _ => (CalendarExport.Of(open.Report().View.Due, open.Book.Identity.Book, open.LastChange), []),
            };
            OutputFile.Write(path, s => s.Write(bytes));
            return Answer(around, path, open, missing, p.GetValue(asJson));
        });
        return command;
    }

    private static int Answer(Surroundings around, string path, OpenedStock open, IReadOnlyList<string> missing, bool json)
    {
        if (json)
        {
            JsonDocumentWriter.Write(around.Out, w =>
            {
                w.WriteString("file", path);
                w.WriteNumber("containers", open.Stock.Holdings.Count);
                w.WriteNumber("places", open.State.Places.Count);
                w.WriteNumber("entries", open.Book.Ledger.Entries.Count);
                w.WriteNumber("due", open.Stock.Due.Count);
                w.Texts("missing_attachments", missing);
            });
        }
        else
        {
            around.Out.WriteLine($"{open.Stock.Holdings.Count} containers, {open.Book.Ledger.Entries.Count} entries in {path}");
            foreach (var hash in missing)
                around.Out.WriteLine($"not in it, for it is missing or altered: attachment {hash}");
        }

        return missing.Count == 0 ? ExitCodes.Done : ExitCodes.Attention;
    }
}
