using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>How one way out stands in the network.</summary>
/// <remarks>
/// Joined: "in parallel" (a leak), "in series" (a cover before the leaks), "beside" (out of the content itself), "in series with all" (a packing behind leaks and wall alike), "strength" or "none".
/// Resistance: vapour concentration over mass rate, s/m3; null where nothing passes or none can be stated.
/// </remarks>
public sealed record ExplainedPath(
    string Path, string Joined, string? Equation, FlowResistance? Resistance, Band<MassRate>? Rate, string Because, Provenance? Source)
{
    /// <summary>How long a wall or liner takes until it lets through what it will, part by part; empty for other ways.</summary>
    public IReadOnlyList<SheetLag> Lags { get; init; } = [];
}

/// <summary>The ways out as a network of resistances at the mean temperature of the place, and what it adds up to.</summary>
/// <remarks>
/// Vapour: saturated concentration that drives the leaks; null where it is not known. Lagging: from when the lags of wall and liner are counted,
/// or why they are not.
/// </remarks>
public sealed record LossExplanation(IReadOnlyList<ExplainedPath> Paths, MassConcentration? Vapour, Band<MassRate> Total, string Lagging)
{
    public const string Combined = "leaks in parallel, 1/R = sum of 1/R(i); a cover in series before them, R + R(cover); what goes beside is added; a packing in series with all that leaves the vessel, R + R(packing); rate = vapour/R";

    public static LossExplanation Of(Situation situation, PropertyFacts facts)
    {
        var state = new LossState(situation, facts);
        var network = LossNetwork.At(state);
        var vapour = Saturated(state);
        return new LossExplanation([.. network.Paths.Select((p, i) => Explain(LossPaths.All[i], p, vapour))], vapour, network.Total, SoakedSince(situation));
    }

    private static string SoakedSince(Situation situation) => situation.InVesselSince is { } since
        ? $"the content has stood in this vessel since {since:yyyy-MM-dd} or longer; what wall and liner let go is counted from then"
        : "since when the content has stood in this vessel is not known; wall and liner are taken as soaked through, and no lag is counted";

    private static ExplainedPath Explain(ILossPath path, LossNetwork.PathRate found, MassConcentration? vapour)
    {
        var finding = found.Finding;
        var joined = finding.Verdict != PathVerdict.Applies ? "none" : finding.Role switch
        {
            PathRole.Leak => "in parallel",
            PathRole.Barrier => finding.Barrier?.HoldsBody == true ? "in series with all" : "in series",
            PathRole.Strength => "strength",
            _ => "beside",
        };
        var alone = finding.Leaves.Sum(l => l.Rate.Expected.KilogramsPerSecond);
        FlowResistance? resistance = finding switch
        {
            { Barrier: { } barrier } => barrier.Resistance,
            { Role: PathRole.Leak or PathRole.Direct, Verdict: PathVerdict.Applies } when vapour is { } c && alone > 0 => new FlowResistance(c.KilogramsPerCubicMetre / alone),
            _ => null,
        };
        return new ExplainedPath(
            found.Path, joined, LossEquations.Of(path), resistance, finding.Verdict == PathVerdict.Applies ? found.Rate : null, finding.Because, finding.Source)
        {
            Lags = finding.Verdict == PathVerdict.Applies ? finding.Lags : [],
        };
    }

    private static MassConcentration? Saturated(LossState state)
    {
        var sum = 0.0;
        foreach (var v in state.Vapour.Where(v => v.Pressure.IsKnown))
        {
            if (state.Facts.MolarMass(v.Gas) is { } m)
                sum += GasLaw.Concentration(state.Driving(v), m, state.Temperature).KilogramsPerCubicMetre;
        }

        return sum > 0 ? new MassConcentration(sum) : null;
    }
}
