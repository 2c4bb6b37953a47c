using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Encoding;
using Stockroom.Labels.Output;

namespace Stockroom.Verbs;

internal sealed class ExportVerb : IVerb
{
    private static readonly string[] Columns =
    [
        "id", "content", "orphan", "net_g", "quantity", "place", "place_path", "vessel", "closure", "cover", "cover_mm", "packing",
        "received", "opened", "sealed", "hands_off", "lot", "origin", "signal_word", "hazard_statements",
    ];

    public string Name => "export";

    public string Summary => "Write the book out: .json keeps every entry, .csv lists the containers";

    public Command Build(Surroundings around)
    {
        var file = new Argument<string>("FILE") { Description = "FILE.csv or FILE.json" };
        var book = BookAccess.BookOption();
        var asJson = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { file, book, asJson };
        command.SetAction(p =>
        {
            var path = p.GetRequiredValue(file);
            Func<OpenedStock, byte[]> write = Path.GetExtension(path).ToLowerInvariant() switch
            {
                ".json" => Json,
                ".csv" => Csv,
                var other => throw RefusedException.Words($"'{other}' is not a format of export; write FILE.csv or FILE.json"),
            };
            var folder = BookAccess.FolderOf(p.GetValue(book), around);
            using var open = OpenedStock.OpenWhole(p.GetValue(book), around);
            var report = Storage.StockBookFolder.Verify(folder);
            if (!report.Holds)
                throw RefusedException.Input($"nothing was exported: {report.Findings[0]}; see 'stockroom verify'");
            var bytes = write(open);
            OutputFile.Write(path, s => s.Write(bytes));
            if (p.GetValue(asJson))
            {
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    w.WriteString("file", path);
                    w.WriteNumber("containers", open.Stock.Holdings.Count);
                    w.WriteNumber("entries", open.Book.Ledger.Entries.Count);
                });
                return ExitCodes.Done;
            }

            around.Out.WriteLine($"{open.Stock.Holdings.Count} containers, {open.Book.Ledger.Entries.Count} entries in {path}");
            return ExitCodes.Done;
        });
        return command;
    }

    // Every entry in its canonical text, so that the same book gives the same bytes.
    private static byte[] Json(OpenedStock open)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("format", "stockroom export");
            json.WriteNumber("version", 1);
            json.WriteString("head", open.Book.Ledger.HeadHash);
            json.WriteStartArray("entries");
            foreach (var entry in open.Book.Ledger.Entries)
                json.WriteRawValue(EntryCodec.Encode(entry));
            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static byte[] Csv(OpenedStock open)
    {
        var text = new StringBuilder();
        text.Append(string.Join(',', Columns)).Append("\r\n");
        foreach (var holding in open.Stock.Holdings)
            text.Append(string.Join(',', Cells(holding).Select(Cell))).Append("\r\n");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static IEnumerable<string?> Cells(Holding h) =>
    [
        h.Id.ToString(), h.Content.Name, h.Content.IsUnknown ? "yes" : "no", h.Container.NetGrams?.ToString(CultureInfo.InvariantCulture), h.Container.Quantity,
        h.Container.PlaceId, h.PlaceWords, h.Container.Vessel, h.Container.Closure, h.Container.Cover?.Name,
        h.Container.Cover?.DepthMillimetres?.ToString(CultureInfo.InvariantCulture), h.Container.Packing, h.Container.ReceivedOn.Iso(),
        h.Container.OpenedOn?.Iso(), h.Container.SealedOn?.Iso(), h.Container.HandsOff, Book.Containers.Lot.WordOf(h.Container.Lot.How), h.Container.Lot.Origin,
        h.Label.SignalWord, string.Join(' ', h.Label.HazardStatements.Select(s => s.Code)),
    ];

    // RFC 4180; text that a spreadsheet would run as a formula is led by an apostrophe.
    private static string Cell(string? value)
    {
        if (string.IsNullOrEmpty(value))
            return "";
        if (value[0] is '=' or '+' or '-' or '@' or '\t' or '\r')
            value = "'" + value;
        return value.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{value.Replace("\"", "\"\"")}\"" : value;
    }
}
