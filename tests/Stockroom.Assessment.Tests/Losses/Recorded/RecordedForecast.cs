using System.Globalization;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Ingress;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses.Recorded;

/// <summary>A forecast in lines, with every figure that a keeper or a script could see of it.</summary>
internal static class RecordedForecast
{
    public static IEnumerable<string> Lines(Situation situation, int days)
    {
        var on = Bench.Day.AddDays(days);
        var f = Forecast.Of(situation, Bench.Facts, on);
        yield return $"a year {Of(f.LossRate, r => r.GramsPerYear)} complete {f.IsComplete}";
        yield return $"left {Of(f.Remaining, m => m.Grams)}";
        foreach (var p in f.Paths)
            yield return $"{p.Path}: {p.Verdict} {p.Role} share {Number(p.Share.Value)} {Of(p.Rate, r => r.GramsPerYear)} {p.Because} [{p.Source}]";
        foreach (var r in f.Reaches)
            yield return Of(r);
        if (f.Strength is { } s)
            yield return $"strength of {s.Part} {Of(s.Left, x => x.Value)} half {Day(s.HalfLow)} {Day(s.HalfExpected)} {Day(s.HalfHigh)} {s.Because} [{s.Source}]";
        if (f.Strength?.BelowUse is { } below)
            yield return Of(below);
        if (f.Cover is { } c)
            yield return $"cover {c.Verdict} {Of(c.Depth, d => d.Millimetres)} fails {Day(c.FailsLow)} {Day(c.FailsExpected)} {Day(c.FailsHigh)} {c.Because} [{c.Source}]";
        if (f.Weighed is { } w)
        {
            yield return w.Because;
            yield return $"weighed {w.Verdict.State} follows {w.Follows} rate {Of(w.Rate, r => r.GramsPerYear)} prior {Of(w.PriorRate, r => r.GramsPerYear)} from {Number(w.Start.Amount.Grams)} {w.Verdict.Because}";
            if (w.Verdict.Measured is { } m)
                yield return $"measured {m.Weighings} from {Day(m.From)} to {Day(m.To)}: {Number(m.Low.GramsPerYear)} {Number(m.Rate.GramsPerYear)} {Number(m.High.GramsPerYear)}";
        }

        foreach (var line in Air(f.Air).Concat(Around(situation, on)).Concat(f.Warnings))
            yield return line;
    }

    private static IEnumerable<string> Air(AirForecast? air)
    {
        for (var space = air; space is not null; space = space.Room)
        {
            foreach (var g in space.Gases)
                yield return $"air {g.Gas.Name} {Of(g.Concentration, x => x.KilogramsPerCubicMetre * 1e6)} mg/m3 {Of(g.Share, x => x.PartsPerMillion)} limit {Of(g.ShareOfLimit, x => x.Value)} burns {Of(g.ShareOfLowerFlammableLimit, x => x.Value)}";
            yield return $"air in all limits {Of(space.LimitBand, x => x.Value)} burns {Of(space.FlammableBand, x => x.Value)} oxygen {Number(space.Oxygen.Value)} first {Of(space.Concentration, x => x.KilogramsPerCubicMetre * 1e6)} mg/m3";
            if (space.Breakage is { } b)
                yield return $"breakage {b.Gas.Name} {Number(b.Concentration.KilogramsPerCubicMetre)} {Number(b.ShareOfLimit?.Value)} {Number(b.ShareOfDanger?.Value)} {Number(b.ShareOfLowerFlammableLimit?.Value)} oxygen {Number(b.Oxygen.Value)}";
            if (space.Radon is { } r)
                yield return $"radon {Of(r.Inner, x => x.BecquerelsPerCubicMetre)} room {Of(r.Room, x => x.BecquerelsPerCubicMetre)} of reference {Of(r.ShareOfReference, x => x.Value)} {r.Because}";
            if (space.Thoron is { } t)
                yield return $"thoron {Of(t.Inner, x => x.BecquerelsPerCubicMetre)} room {Of(t.Room, x => x.BecquerelsPerCubicMetre)} of reference {Of(t.ShareOfReference, x => x.Value)} {t.Because}";
        }
    }

    private static IEnumerable<string> Around(Situation situation, DateOnly on)
    {
        foreach (var i in IngressForecasts.Of(situation, Bench.Facts))
            yield return $"{i.Gas} in: {i.Verdict} {Of(i.Rate, r => r.GramsPerYear)} spoiled {Day(i.SpoiledLow)} {Day(i.SpoiledExpected)} {Day(i.SpoiledHigh)} {i.Because} [{i.Source}]";
        if (DecayForecast.Of(situation, Bench.Facts, on) is { } d)
            yield return $"decay {string.Join(" ", d.Members.Select(m => $"{m.Nuclide.Name} {Number(m.Activity.Becquerels)}"))} helium {Number(d.Helium.Moles)} in all {Number(d.Total.Becquerels)} since {Day(d.Since)}";
        var e = LossExplanation.Of(situation, Bench.Facts);
        yield return $"vapour {Number(e.Vapour?.KilogramsPerCubicMetre)} in all {Of(e.Total, r => r.GramsPerYear)} {e.Lagging}";
        foreach (var p in e.Paths.Where(p => p.Joined != "none"))
            yield return $"explained: {p.Path}, {p.Joined}: {p.Equation}";
        foreach (var p in e.Paths.Where(p => p.Resistance is not null))
            yield return $"resistance of {p.Path}: {Number(p.Resistance?.SecondsPerCubicMetre)} {string.Join(" ", p.Lags.Select(l => $"lag {Of(l.Lag, x => x.Days)} {l.Because} [{l.Source}]"))}";
        if (CoverWorth.Of(situation, Bench.Facts) is { } worth)
            yield return $"cover is worth {Of(worth.Bare, r => r.GramsPerYear)} {Of(worth.Covered, r => r.GramsPerYear)} {worth.Because}";
    }

    private static string Of(Reach r) => $"{r.Limit} {Number(r.Left.Value)}: {Day(r.Low)} {Day(r.Expected)} {Day(r.High)}";

    private static string Of<T>(Band<T>? band, Func<T, double> value)
        where T : struct => band is { } b ? Of(b, value) : "none";

    private static string Of<T>(Band<T> band, Func<T, double> value) => $"{Number(value(band.Low))} {Number(value(band.Expected))} {Number(value(band.High))}";

    private static string Number(double? value) => value is { } v ? v.ToString("G6", CultureInfo.InvariantCulture) : "none";

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "never";
}
