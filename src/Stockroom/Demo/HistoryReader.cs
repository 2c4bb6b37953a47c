using System.Globalization;
using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Demo;

/// <summary>Reads what happened to the containers of a collection, oldest first.</summary>
internal sealed class HistoryReader(TimeProvider clock, IReadOnlyDictionary<string, ContainerId> containers, DateOnly today)
{
    private static readonly Dictionary<string, Func<TableRow, HistoryReader, Entry>> Kinds = new(StringComparer.Ordinal)
    {
        ["opened"] = (_, _) => new Opened(),
        ["weighed"] = (r, _) => new Weighed { GrossGrams = r.Decimal("value"), ReadabilityGrams = r.DecimalOrNull("detail") },
        ["drawn"] = (r, h) => h.Draw(r),
        ["cover put on"] = (r, _) => new Covered { Act = CoverAct.PutOn, Cover = r.Text("detail"), DepthMillimetres = r.DecimalOrNull("value") },
        ["cover measured"] = (r, _) => new Covered { Act = CoverAct.Measured, DepthMillimetres = r.Decimal("value") },
        ["cover topped up"] = (r, _) => new Covered { Act = CoverAct.ToppedUp, DepthMillimetres = r.Decimal("value") },
        ["tested"] = (r, _) => new Tested { What = r.TextOrNull("detail") ?? "round", Result = r.Text("value") },
        ["hands off"] = (r, _) => new Marked { HandsOff = true, Reason = r.Text("value"), Note = r.TextOrNull("detail") },
        ["moved"] = (r, _) => new Moved { To = r.Text("value") },
        ["sealed"] = (r, _) => new Sealed { Closure = r.TextOrNull("value") },
        ["note"] = (r, _) => new Marked { Note = r.Text("value") },
    };

    public IEnumerable<SeedEntry> Read(string text)
    {
        var table = TableReader.ReadPlain(SeedFiles.HistoryName, text, "when", "container", "what", "value", "detail", "by");
        return [.. table.Rows.Select(r => new SeedEntry(ReadRow(r), r, "what")).OrderBy(e => e.Entry.HappenedAt)];
    }

    private Entry ReadRow(TableRow row)
    {
        if (!containers.TryGetValue(row.Text("container"), out var id))
            throw row.Wrong("container", $"'{row.Text("container")}' is not a container of {SeedFiles.ContainersName}");
        var entry = row.OneOf("what", Kinds)(row, this);
        var by = row.TextOrNull("by") is { } name ? $"by {name}" : null;
        return entry with
        {
            Container = id,
            HappenedAt = Verbs.Dates.MomentOf(SeedReader.DateOf(row, "when", today), clock),
            Note = entry.Note is { } note && by is not null ? $"{note}; {by}" : entry.Note ?? by,
        };
    }

    // The content's density at the time, as the catalogue has it; the container's own is asked for by name.
    private Drawn Draw(TableRow row)
    {
        if (!TypedAmount.TryParse(row.Text("value"), out var amount, out var problem))
            throw row.Wrong("value", problem);
        if (row.TextOrNull("detail") is not { } content)
            throw row.Wrong("detail", "a draw needs the name of the content drawn");
        if (SubstanceCatalogue.Default.Resolve(content).Content is not { } known)
            throw row.Wrong("detail", SubstanceCatalogue.Default.Resolve(content).Problem!);
        var booked = AmountBooking.Of(amount, known, PropertyFacts.Default);
        return booked.Grams is { } grams
            ? new Drawn { Quantity = amount.Text, Grams = grams, Density = booked.Density }
            : throw row.Wrong("value", booked.Problem!);
    }
}
