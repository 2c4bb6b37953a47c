using System.Text;
using Stockroom.Book.Containers;

namespace Stockroom.Book.Tests.Ledgers;

/// <summary>A state written out whole, so that two can be compared.</summary>
internal static class StateText
{
    public static string Of(BookState state)
    {
        var text = new StringBuilder();
        foreach (var place in state.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal))
            text.Append(place.Id).Append(' ').Append(place.Name).Append(' ').Append(place.Kind).Append(" in ").Append(place.Inside).Append(' ').Append(place.Limits).AppendLine();
        foreach (var container in state.Containers.Values.OrderBy(c => c.Id))
            text.AppendLine(Of(container));
        return text.Append("next ").Append(state.NewId()).ToString();
    }

    private static string Of(Container c) => string.Join(
        " | ",
        (object?[])
        [
            c.Id, c.ContentName, c.PlaceId, c.Lot, c.NetGrams, c.TareGrams, c.LastGrossGrams, c.Vessel, c.Closure, c.Cover, c.Packing,
            c.ReceivedOn, c.OpenedOn, c.SealedOn, c.HandsOff, c.LabelPrintedOn, c.LabelRules, string.Join(';', c.LabelSays ?? []), c.RetiredOn, c.RetiredBecause,
            string.Join(';', c.Weighings), string.Join(';', c.Draws), string.Join(';', c.Fills), string.Join(';', c.Assays),
            string.Join(';', c.LastTested), string.Join(';', c.Attachments), string.Join(',', c.History),
        ]);
}
