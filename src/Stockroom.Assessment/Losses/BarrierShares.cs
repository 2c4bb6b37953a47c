using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What the barriers leave of the ways out, as shares of what would go without them. A cover stands before the leaks; a second wall before
/// them and what goes through the vessel's body alike, for one vapour between the walls is driven by both. What decays in the vessel passes neither.
/// </summary>
internal readonly record struct BarrierShares(Band<double> Leaks, Band<double> Body)
{
    private static readonly BarrierShares All = new(new(1, 1, 1), new(1, 1, 1));

    public static BarrierShares Of(ReadOnlySpan<PathLoss> findings)
    {
        var any = false;
        foreach (var f in findings)
            any |= f.Barrier is not null;
        if (!any)
            return All;
        var leaks = Sum(findings, PathRole.Leak);
        var slowed = Behind(findings, leaks, body: false);
        var body = Sum(findings, PathRole.Direct);
        var both = BandMath.Linear([slowed, body]);
        var packed = Share(Behind(findings, both, body: true), both);
        var covered = Share(slowed, leaks);
        return new(new(covered.Low * packed.Low, covered.Expected * packed.Expected, covered.High * packed.High), packed);
    }

    /// <summary>The share left of a way out by its role.</summary>
    public Band<double> Of(PathRole role) => role switch
    {
        PathRole.Leak => Leaks,
        PathRole.Direct => Body,
        _ => All.Body,
    };

    private static Band<MassRate> Sum(ReadOnlySpan<PathLoss> findings, PathRole role)
    {
        var (low, expected, high) = (0.0, 0.0, 0.0);
        foreach (var f in findings)
        {
            if (f.Role != role || f.Verdict != PathVerdict.Applies)
                continue;
            foreach (var l in f.Leaves)
            {
                low += l.Rate.Low.KilogramsPerSecond;
                expected += l.Rate.Expected.KilogramsPerSecond;
                high += l.Rate.High.KilogramsPerSecond;
            }
        }

        return new Band<MassRate>(new(low), new(expected), new(high));
    }

    private static Band<MassRate> Behind(ReadOnlySpan<PathLoss> findings, Band<MassRate> rate, bool body)
    {
        foreach (var f in findings)
        {
            if (f.Barrier is { } barrier && barrier.HoldsBody == body)
                rate = barrier.Slow(rate);
        }

        return rate;
    }

    private static Band<double> Share(Band<MassRate> left, Band<MassRate> of) =>
        new(Share(left.Low, of.Low), Share(left.Expected, of.Expected), Share(left.High, of.High));

    private static double Share(MassRate left, MassRate of) => of.KilogramsPerSecond > 0 ? left / of : 1;
}
