using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Puts a forecast together.</summary>
internal static class ForecastBuilder
{
    private static readonly (string Name, Fraction Left)[] Limits =
        [("90 % left", new(0.9)), ("50 % left", new(0.5)), ("10 % left", new(0.1))];

    public static Forecast Build(Situation situation, PropertyFacts facts, DateOnly on)
    {
        var network = LossNetwork.At(new LossState(situation, facts));
        var complete = network.Paths.All(p => p.Finding.Verdict != PathVerdict.Unknown);
        var forecast = new Forecast
        {
            On = on,
            LossRate = null,
            IsComplete = complete,
            Paths = [.. network.Paths.Select(p => Show(p, network.Total.Expected))],
            Remaining = null,
            Reaches = [],
            Strength = StrengthForecasts.Of(situation, facts, on),
            Cover = CoverForecast.Of(situation, facts, on),
            Warnings = [.. Warnings(situation, network)],
        };
        return network.IsKnown ? WithAmounts(forecast, situation, facts, network) : forecast;
    }

    private static Forecast WithAmounts(Forecast forecast, Situation situation, PropertyFacts facts, LossNetwork network)
    {
        var elapsed = Span.FromDays(forecast.On.DayNumber - situation.AmountOn.DayNumber);
        var expected = Trajectory.Follow(situation, facts, b => b.Expected);
        var slow = Paced(expected, network.Total, network.Total.Low) ?? Trajectory.Follow(situation, facts, b => b.Low);
        var fast = Paced(expected, network.Total, network.Total.High) ?? Trajectory.Follow(situation, facts, b => b.High);
        return forecast with
        {
            LossRate = network.Total,
            Remaining = new Band<Mass>(fast.After(elapsed), expected.After(elapsed), slow.After(elapsed)),
            Reaches = [.. Limits.Select(l => new Reach(
                l.Name, l.Left, Date(situation.AmountOn, fast.Reaches(l.Left)), Date(situation.AmountOn, expected.Reaches(l.Left)), Date(situation.AmountOn, slow.Reaches(l.Left))))],
            Air = AirForecasts.Of(situation, facts, network.Total),
        };
    }

    // The ends of the band take the expected course at the pace of their rate today; null where nothing is expected to leave.
    private static Trajectory? Paced(Trajectory expected, Band<MassRate> total, MassRate end) =>
        total.Expected.KilogramsPerSecond > 0 ? expected.Paced(new Fraction(end / total.Expected)) : null;

    /// <summary>A day so long after another; null for never.</summary>
    internal static DateOnly? Date(DateOnly from, Span? after) =>
        after is { } span && span.Days < DateOnly.MaxValue.DayNumber - from.DayNumber - 1 ? from.AddDays((int)Math.Floor(span.Days)) : null;

    private static PathForecast Show(LossNetwork.PathRate path, MassRate total)
    {
        var counts = path.Finding.Role != PathRole.Strength && total.KilogramsPerSecond > 0;
        return new PathForecast(
            path.Path, path.Finding.Verdict, path.Finding.Role, new Fraction(counts ? path.Rate.Expected / total : 0), path.Rate, path.Finding.Because, path.Finding.Source);
    }

    private static IEnumerable<string> Warnings(Situation situation, LossNetwork network)
    {
        foreach (var path in network.Paths.Where(p => p.Finding.Verdict == PathVerdict.Unknown))
            yield return $"{path.Path}: not counted; {path.Finding.Because}";
        if (situation.Content.WaterPercent is > 0 and < 100)
            yield return "a solution loses water as well: a mass that falls, or stays, does not tell its strength";
        if (situation.Cover?.Name.StartsWith("sulfuric acid", StringComparison.Ordinal) == true)
            yield return "the acid cover takes up water from the air: a mass that stays flat can hide a loss";
        if (situation.OuterPacking is { } packing)
            yield return $"outer packing ({packing}) is not counted: the vessel in it loses no more than stated";
        if (situation.Vessel.Kind is "ampoule" && situation.Closure.Mechanism != ClosureMechanism.Fused)
            yield return "an ampoule that is not sealed in the flame is forecast as an open vessel with that closure";
    }
}
