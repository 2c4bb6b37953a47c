using Stockroom.Assessment.Losses;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Holdings;

/// <summary>The situation of a container, put together from its record and its place; or the reason why there is none.</summary>
internal static class SituationOf
{
    private const decimal UnstatedReadabilityGrams = 0.1m;

    public static (Situation? Situation, string? Problem) Container(Container container, Content content, BookState state, WareCatalogue wares)
    {
        if (container.Vessel is null || wares.FindVessel(container.Vessel) is not { } vessel)
            return (null, "its vessel is not known");
        if (container.Closure is null || wares.FindClosure(container.Closure) is not { } closure)
            return (null, "its closure is not known");
        if (Amount(container) is not { } amount)
            return (null, "how much there is was never booked");
        var limits = state.LimitsAt(container.PlaceId);
        return (new Situation
        {
            Content = content,
            Amount = Mass.FromGrams((double)amount.Grams),
            AmountOn = amount.On,
            Vessel = vessel,
            Closure = closure,
            Cover = container.Cover is { } cover ? wares.FindCover(cover.Name) : null,
            CoverDepth = container.Cover?.DepthMillimetres is { } depth ? Length.FromMillimetres((double)depth) : null,
            CoverDepths = [.. container.CoverDepths.Select(d => new DepthReading(d.On, Length.FromMillimetres((double)d.Millimetres)))],
            OuterPacking = container.Packing,
            Temperature = Temperature.FromCelsius((double)(limits.MeanCelsius ?? 20m)),
            DailySwing = new TemperatureChange((double)(limits.SwingKelvin ?? 0m)),
            SeasonalSwing = new TemperatureChange((double)(limits.SeasonalSwingKelvin ?? 0m)),
            WarmestMonth = limits.WarmestMonth ?? 7,
            Coldest = limits.MinCelsius is { } coldest ? Temperature.FromCelsius((double)coldest) : null,
            Light = limits.Light,
            Warmest = limits.MaxCelsius is { } warmest ? Temperature.FromCelsius((double)warmest) : null,
            Filled = container.MadeOn,
            InVesselSince = InVesselSince(container),
            Sealed = container.SealedOn,
            Opened = container.OpenedOn,
            LeastStrength = container.LeastPercent is { } least ? Fraction.FromPercent((double)least) : null,
            SealedGas = container.SealedAtBar is { } bar ? Pressure.FromBar((double)bar) : null,
            SealedGasAt = container.SealedAtCelsius is { } celsius ? Temperature.FromCelsius((double)celsius) : null,
            Weighings = [.. UnderThisCover(container).Select(Weighing)],
            Draws = [.. Interruptions(container)],
        }, null);
    }

    // Split: poured into this vessel on the day it came. Made, or filled by a maker on a known day: that day, or earlier than it came in here.
    // Bought or found without one: its walls may be soaked through, and nothing is held in their favour.
    private static DateOnly? InVesselSince(Container container) => container.Lot.How switch
    {
        LotOrigin.Split => container.ReceivedOn,
        LotOrigin.Made => container.MadeOn,
        _ => container.Lot.MadeOn,
    };

    private static WeighIn Weighing(Weighing w) => new(
        w.On, Mass.FromGrams((double)w.GrossGrams), Mass.FromGrams((double)(w.ReadabilityGrams ?? UnstatedReadabilityGrams)))
    {
        At = w.TemperatureCelsius is { } celsius ? Temperature.FromCelsius((double)celsius) : null,
        Air = w.PressureHectopascals is { } hectopascals ? new Pressure((double)hectopascals * 100) : null,
        Calibration = w.CalibrationGrams is { } grams ? Mass.FromGrams((double)grams) : null,
        Order = w.Entry,
    };

    // A bottle that was covered tells nothing of the pace at which it goes bare, nor the other way round.
    private static IEnumerable<Weighing> UnderThisCover(Container container) => container.Refittings.LastOrDefault(r => r.OtherCover) is { } change
        ? container.Weighings.Where(w => IsAfter(w, change))
        : container.Weighings;

    private static bool IsAfter(Weighing w, Refitting change) => w.On > change.On || (w.On == change.On && w.Entry >= change.Entry);

    // Whatever changed the gross mass by hand: taken out, poured in, covered, topped up, uncovered, closed anew.
    private static IEnumerable<Assessment.Draw> Interruptions(Container container)
    {
        foreach (var d in container.Draws)
            yield return new Assessment.Draw(d.On, Mass.FromGrams((double)d.Grams)) { Order = d.Entry };
        foreach (var f in container.Fills)
            yield return new Assessment.Draw(f.On, Mass.FromGrams(-(double)f.Grams)) { Order = f.Entry };
        for (var i = 0; i < container.CoverDepths.Count; i++)
        {
            var depth = container.CoverDepths[i];
            if (i > 0 && depth.Millimetres > container.CoverDepths[i - 1].Millimetres)
                yield return new Assessment.Draw(depth.On, null) { Order = depth.Entry };
        }

        foreach (var r in container.Refittings)
            yield return new Assessment.Draw(r.On, null) { Order = r.Entry };
    }

    // What the last weigh-in leaves where the tare is known and nothing lies over the content; else what was booked.
    private static (decimal Grams, DateOnly On)? Amount(Container container)
    {
        if (container.TareGrams is { } tare && container.Cover is null && container.Weighings.LastOrDefault() is { } last && last.GrossGrams > tare
            && !container.Draws.Any(d => d.On > last.On) && container.Refittings.All(r => IsAfter(last, r)))
            return (last.GrossGrams - tare, last.On);
        return container.NetGrams is { } net and > 0 ? (net, container.ReceivedOn) : null;
    }
}
