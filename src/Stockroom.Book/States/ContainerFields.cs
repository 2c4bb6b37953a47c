using System.Collections.Immutable;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.States;

/// <summary>What of a container stands where in a written state.</summary>
internal static class ContainerFields
{
    public static void Write(Container c, StateWriter w)
    {
        w.Id(c.Id);
        w.Text(c.ContentName);
        w.List(c.Parts, p => w.Group(p, x => HappeningFields.Write(x, w)));
        w.Integer((int?)c.State);
        w.Flag(c.IsOrphan);
        w.Text(c.Seen);
        w.Text(c.FoundBy);
        w.Text(c.Vessel);
        w.Text(c.Closure);
        w.Group(c.Cover, x => HappeningFields.Write(x, w));
        w.List(c.CoverDepths, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.Text(c.Packing);
        w.Text(c.PlaceId);
        w.Group(c.Lot, x => HappeningFields.Write(x, w));
        w.Text(c.Quantity);
        w.Group(c.Density, x => HappeningFields.Write(x, w));
        w.Number(c.NetGrams);
        w.Number(c.TareGrams);
        w.Number(c.LastGrossGrams);
        w.List(c.Weighings, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.Draws, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.Fills, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.Refittings, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.Assays, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.LastTested.Keys, w.Text);
        w.List(c.LastTested.Values, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.List(c.Attachments, d => w.Group(d, x => HappeningFields.Write(x, w)));
        w.Day(c.ReceivedOn);
        w.Day(c.OpenedOn);
        w.Day(c.SealedOn);
        w.Number(c.SealedAtCelsius);
        w.Number(c.SealedAtBar);
        w.Text(c.HandsOff);
        w.Text(c.Pinned);
        w.Number(c.LeastPercent);
        w.Day(c.LabelPrintedOn);
        w.Text(c.LabelRules);
        w.List(c.LabelSays, s => w.Group(s, x => HappeningFields.Write(x, w)));
        w.Day(c.RetiredOn);
        w.Text(c.RetiredBecause);
        w.List(c.History, n => w.Integer(n));
        w.Day(c.LastDay);
    }

    public static Container Read(StateReader r) => new()
    {
        Id = r.Id(),
        ContentName = r.Text(),
        Parts = r.GroupsOrNull(HappeningFields.Part),
        State = r.IntegerOrNull() is { } state ? (MatterState)state : null,
        IsOrphan = r.Flag(),
        Seen = r.TextOrNull(),
        FoundBy = r.TextOrNull(),
        Vessel = r.TextOrNull(),
        Closure = r.TextOrNull(),
        Cover = r.GroupOrNull(HappeningFields.Cover),
        CoverDepths = [.. r.Groups(HappeningFields.Depth)],
        Packing = r.TextOrNull(),
        PlaceId = r.Text(),
        Lot = r.Group(HappeningFields.Lot),
        Quantity = r.TextOrNull(),
        Density = r.GroupOrNull(HappeningFields.Density),
        NetGrams = r.NumberOrNull(),
        TareGrams = r.NumberOrNull(),
        LastGrossGrams = r.NumberOrNull(),
        Weighings = [.. r.Groups(HappeningFields.Weighing)],
        Draws = [.. r.Groups(HappeningFields.Draw)],
        Fills = [.. r.Groups(HappeningFields.Fill)],
        Refittings = [.. r.Groups(HappeningFields.Refitting)],
        Assays = [.. r.Groups(HappeningFields.Assay)],
        LastTested = Tests(r.Texts(), r.Groups(HappeningFields.Test)),
        Attachments = [.. r.Groups(HappeningFields.Attachment)],
        ReceivedOn = r.Day(),
        OpenedOn = r.DayOrNull(),
        SealedOn = r.DayOrNull(),
        SealedAtCelsius = r.NumberOrNull(),
        SealedAtBar = r.NumberOrNull(),
        HandsOff = r.TextOrNull(),
        Pinned = r.TextOrNull(),
        LeastPercent = r.NumberOrNull(),
        LabelPrintedOn = r.DayOrNull(),
        LabelRules = r.TextOrNull(),
        LabelSays = r.GroupsOrNull(HappeningFields.Saying)?.ToImmutableList(),
        RetiredOn = r.DayOrNull(),
        RetiredBecause = r.TextOrNull(),
        History = [.. r.Integers()],
        LastDay = r.Day(),
    };

    private static ImmutableSortedDictionary<string, TestResult> Tests(List<string> sorts, List<TestResult> results) => sorts.Count == results.Count
        ? sorts.Zip(results).ToImmutableSortedDictionary(t => t.First, t => t.Second, StringComparer.Ordinal)
        : throw new FormatException($"{sorts.Count} sorts of test have {results.Count} results");
}
