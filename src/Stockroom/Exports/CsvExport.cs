using System.Globalization;
using CsvHelper;
using Stockroom.Assessment.Holdings;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Quantities;
using Stockroom.Imports;
using Stockroom.Verbs;

namespace Stockroom.Exports;

/// <summary>
/// Lists as CSV (RFC 4180, UTF-8, CRLF). A list of containers imports back to an equal list: contents, amounts, places,
/// dates. The last columns are worked out and only there to be read. Text that a spreadsheet would run is guarded.
/// </summary>
internal static class CsvExport
{
    private const string Unknown = "unknown";

    private static readonly CsvWriterOptions Options = new() { Quoting = CsvQuoting.WhenNeededOrWhitespace, NewLine = "\r\n" };

    /// <summary>A line for each container that is there, by id.</summary>
    public static byte[] Containers(StockAssessment stock) =>
        Write([.. ImportField.OfContainers.Select(f => f.Name).Where(n => n != "note")], stock.Holdings.Select(h => Cells(h, stock.State)));

    /// <summary>A line for each place, rooms first and each before what stands in it.</summary>
    public static byte[] Places(BookState state) =>
        Write([.. ImportField.OfPlaces.Select(f => f.Name)], state.Places.Values.OrderBy(p => state.PathTo(p.Id).Count).ThenBy(p => p.Id, StringComparer.Ordinal).Select(Cells));

    private static string[] Cells(Holding h, BookState state)
    {
        var c = h.Container;
        return
        [
            c.Id.ToString(), Text(c.ContentName), c.IsOrphan ? "yes" : "no", Net(c), Text(c.Quantity), Text(c.PlaceId), Text(h.PlaceWords), Text(PlaceRows.StepsOf(state, c.PlaceId)),
            Text(c.Vessel), Text(c.Closure), Text(c.Cover?.Name), Number(c.Cover?.DepthMillimetres), Day(c.Cover?.Since), Day(c.Cover?.DepthOn), Text(c.Packing),
            Day(c.ReceivedOn), Day(c.OpenedOn), Day(c.SealedOn), Number(c.SealedAtCelsius), Number(c.SealedAtBar), Text(c.HandsOff), Text(c.Pinned), Number(c.LeastPercent), Lot.WordOf(c.Lot.How), Text(c.Lot.Origin), Text(c.Lot.Supplier), Text(c.Lot.Batch),
            c.Lot.From?.ToString() ?? "", Day(c.Lot.MadeOn), Text(c.Lot.Note), Text(Composition(c)), c.State?.ToString().ToLowerInvariant() ?? "", Text(c.Seen), Text(c.FoundBy),
            Number(c.Density?.GramsPerMillilitre), Text(c.Density?.Source), Number(c.TareGrams), Number(c.LastGrossGrams), Day(c.LabelPrintedOn),
            Text(h.Label.SignalWord), string.Join(' ', h.Label.HazardStatements.Select(s => s.Code)),
        ];
    }

    private static string[] Cells(Place p) =>
    [
        Text(p.Id), Text(p.Name), p.Kind.Word, Text(p.Inside), Number(p.Limits.Position), Number(p.Limits.HeightMetres),
        YesNo(p.Limits.LeakTight), Number(p.Limits.MeanCelsius), Number(p.Limits.MinCelsius), Number(p.Limits.MaxCelsius),
        Number(p.Limits.SwingKelvin), Number(p.Limits.MaxLoadKilograms), Number(p.Limits.MaxContainers),
        Number(p.Limits.SeasonalSwingKelvin), Number(p.Limits.WarmestMonth), p.Limits.Light is { } light ? PlaceLimits.WordOf(light) : "", Number(p.Limits.MaxLitres),
        Number(p.Limits.MaxFlammableLitres), Number(p.Limits.AirChangesPerHour), YesNo(p.Limits.HasDoor), YesNo(p.Limits.IsLocked), YesNo(p.Limits.IsWooden),
        YesNo(p.Limits.IsNearHeat), YesNo(p.Limits.IsForFlammables), Text(p.Note),
    ];

    // An amount that reads like one and was never booked as a mass says so, or it would be booked on the way back.
    private static string Net(Container c) =>
        c.NetGrams is null && c.Quantity is not null ? Unknown : Number(c.NetGrams);

    private static string? Composition(Container c) =>
        c.Parts is null ? null : string.Join("; ", c.Parts.Select(p => $"{p.Substance}={Number(p.Percent)}%"));

    private static string Text(string? text) => FormulaGuard.Put(text ?? "");

    private static string Number(decimal? number) => number?.ToString("0.############################", CultureInfo.InvariantCulture) ?? "";

    private static string YesNo(bool? flag) => flag switch { true => "yes", false => "no", _ => "" };

    private static string Day(DateOnly? day) => day?.Iso() ?? "";

    private static byte[] Write(string[] columns, IEnumerable<string[]> rows)
    {
        using var stream = new MemoryStream();
        using (var writer = CsvWriter.Create(stream, Options))
        {
            writer.WriteRecord(columns);
            foreach (var row in rows)
                writer.WriteRecord(row);
        }

        return stream.ToArray();
    }
}
