using System.Globalization;
using Stockroom.Book.Entries;

namespace Stockroom.Verbs;

/// <summary>An entry in a few words, for the history of a container and for the ledger.</summary>
internal static class EntryWords
{
    public static string Of(Entry entry)
    {
        var words = entry switch
        {
            PlaceMade e => $"place made: {e.Name}, {e.PlaceKind}{Inside(e.Inside)}",
            PlaceLimited => "place limited",
            ClassTableChosen e => $"class table chosen: {e.Table}",
            SubstanceStated e => $"substance stated: {e.Name}, {e.Hazards ?? "no classification given"} (the keeper: {e.Source})",
            Received e => $"received: {e.Content}{(e.Quantity is null ? "" : ", " + e.Quantity)}, put in {e.To}",
            Weighed e => $"weighed: {Grams(e.GrossGrams)} g gross",
            Drawn e => $"drawn: {e.Quantity} ({Grams(e.Grams)} g)",
            Decanted e => $"decanted: {e.Quantity}",
            Moved e => $"moved to {e.To}",
            Covered e => $"cover {Covered.WordOf(e.Act)}{(e.Cover is null ? "" : ": " + e.Cover)}{(e.DepthMillimetres is { } mm ? $", {Grams(mm)} mm" : "")}",
            Packed e => $"packed: {e.Packing ?? "unpacked"}",
            Sealed e => $"sealed{(e.Closure is null ? "" : " with " + e.Closure)}{(e.GasCelsius is { } at ? $" at {Grams(at)} C" : "")}{(e.GasBar is { } bar ? $" under {Grams(bar)} bar" : "")}",
            Tested e => $"tested: {e.What}, {e.Result}",
            Marked { HandsOff: true } e => $"marked hands off: {e.Reason}",
            Marked { HandsOff: false } e => $"hands off lifted: {e.Reason}",
            Marked { Pinned: true } e => $"pinned to its place: {e.Reason}",
            Marked { Pinned: false } => "no longer pinned",
            Marked { LeastPercent: 0 } => "least strength lifted",
            Marked { LeastPercent: { } percent } e => $"least strength: {Grams(percent)} %{(e.Reason is null ? "" : $", {e.Reason}")}",
            Marked e => $"note: {e.Note}",
            Attached e => $"attached: {e.Name} ({e.MediaType}, {e.Bytes} bytes)",
            LabelPrinted e => $"label printed{(e.Stock is null ? "" : " on " + e.Stock)}",
            Retired e => $"retired: {e.Reason}",
            Corrected e => $"corrected entry {e.Entry}: {string.Join(", ", e.Changes.Select(c => $"{c.Field} = {c.Value ?? "nothing"}"))} ({e.Reason})",
            Undone e => $"undone: transaction {e.Undoes} ({e.Reason})",
            _ => entry.Kind,
        };
        return entry.Note is { } note && entry is not Marked { IsNote: true } ? $"{words}; {note}" : words;
    }

    private static string Inside(string? place) => place is null ? "" : $" inside {place}";

    private static string Grams(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
