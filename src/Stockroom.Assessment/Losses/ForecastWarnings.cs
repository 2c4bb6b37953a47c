using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Losses;

/// <summary>What a reader of a forecast must know besides its figures.</summary>
internal static class ForecastWarnings
{
    public static IEnumerable<string> Of(Situation situation, PropertyFacts facts, LossNetwork network, WeighedForecast? weighed)
    {
        foreach (var path in network.Paths.Where(p => p.Finding.Verdict == PathVerdict.Unknown))
            yield return $"{path.Path}: not counted; {path.Finding.Because}";
        foreach (var path in network.Paths.Where(p => p.Finding.NotCounted.Count > 0))
            yield return $"{path.Path}: {string.Join(", ", path.Finding.NotCounted)} not counted; how fast it passes is not in the tables";
        if (AmpouleFill.Fault(situation, facts) is { } fault)
            yield return $"sealed in the flame: {fault}";
        if (Overfull.Why(situation, facts) is { } overfull)
            yield return overfull;
        if (situation.Content.WaterPercent is > 0 and < 100)
            yield return "a solution loses water as well: a mass that falls, or stays, does not tell its strength";
        if (HygroscopicContents.Why(situation) is { } taker)
            yield return $"{taker} takes up water from the air: a mass that stays flat can hide a loss";
        if (weighed?.Verdict.IsAlarm == true)
            yield return $"weigh-ins: {weighed.Verdict.Because}";
        if (OuterPackings.Find(situation.OuterPacking) is { } packing)
            yield return $"{packing.Name}: counted as a second wall; it holds a leak{(packing.Absorbent is { } ml ? $" of up to {ml.Millilitres:0} mL" : ", but takes nothing up")} and hides one from the eye";
        else if (situation.OuterPacking is { } words)
            yield return $"outer packing ({words}) is not counted: the vessel in it loses no more than stated";
        if (situation.Vessel.Kind is "ampoule" && situation.Closure.Mechanism != ClosureMechanism.Fused)
            yield return "an ampoule that is not sealed in the flame is forecast as an open vessel with that closure";
        foreach (var words in PhaseWarnings.Of(situation, facts))
            yield return words;
    }
}
