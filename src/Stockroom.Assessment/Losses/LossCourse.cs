using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Which end of a band is followed.</summary>
internal enum BandEnd
{
    Low = 0,
    Expected,
    High,
}

/// <summary>
/// The rates of a content's parts as it dwindles. What a year's warmth makes of each way out is worked out once, at the start, and kept as
/// a factor; level, headspace, composition and pressure follow the amount.
/// </summary>
internal sealed class LossCourse
{
    private readonly Situation _situation;
    private readonly PropertyFacts _facts;
    private readonly List<ILossPath> _ways = [];
    private readonly List<double[]> _warmth = [];
    private readonly List<PathRole> _roles = [];

    /// <summary>The course of a situation from its year's network.</summary>
    /// <param name="situation">Its amount is the start.</param>
    /// <param name="facts">What the tables say.</param>
    /// <param name="year">Mean over the year.</param>
    /// <param name="atMean">At the mean temperature.</param>
    /// <param name="weighable">True leaves out what a balance cannot show.</param>
    public LossCourse(Situation situation, PropertyFacts facts, LossNetwork year, LossNetwork atMean, bool weighable = false)
    {
        (_situation, _facts) = (situation, facts);
        for (var i = 0; i < LossPaths.All.Count; i++)
        {
            var finding = year.Paths[i].Finding;
            if (finding.Verdict != PathVerdict.Applies || finding.Role == PathRole.Strength || (year.Paths[i].Leaves.Count == 0 && finding.Barrier is null))
                continue;
            if (weighable && finding.Role == PathRole.Transmuted)
                continue;
            _ways.Add(LossPaths.All[i]);
            _roles.Add(finding.Role);
            _warmth.Add([.. Parts.Select(p => Warmth(p.Substance, year.Paths[i], atMean.Paths[i]))]);
        }
    }

    public IReadOnlyList<Part> Parts => _situation.Content.Parts;

    public Mass Start => _situation.Amount;

    public bool IsPure => Parts.Count == 1;

    /// <summary>True where nothing leaves at all.</summary>
    public bool IsStill => _ways.Count == 0;

    /// <summary>The rate of each part, the mean of a year, at an amount and composition.</summary>
    public void Rates(double[] masses, Span<Band<MassRate>> weighable, Span<Band<MassRate>> transmuted)
    {
        weighable.Clear();
        transmuted.Clear();
        var total = masses.Sum();
        if (total <= 0)
            return;
        var content = IsPure ? _situation.Content : _situation.Content with { Parts = [.. Parts.Select((p, i) => p with { Percent = (decimal)(100 * masses[i] / total) })] };
        var network = LossNetwork.At(new LossState(_situation, _facts, content, new Mass(total)), _ways);
        for (var part = 0; part < masses.Length; part++)
        {
            if (masses[part] <= 0)
                continue;
            weighable[part] = Of(network, part, false);
            transmuted[part] = Of(network, part, true);
        }
    }

    private Band<MassRate> Of(LossNetwork network, int part, bool transmuted)
    {
        var only = default(Band<MassRate>);
        List<Band<MassRate>>? several = null;
        var count = 0;
        for (var i = 0; i < _ways.Count; i++)
        {
            if ((_roles[i] == PathRole.Transmuted) != transmuted)
                continue;
            foreach (var leaving in network.Paths[i].Leaves)
            {
                if (leaving.Part != Parts[part].Substance)
                    continue;
                var warmth = _warmth[i][part];
                var rate = warmth == 1 ? leaving.Rate : leaving.Rate.Select(r => r * warmth);
                if (count++ == 0)
                    only = rate;
                else
                    (several ??= [only]).Add(rate);
            }
        }

        return several is null ? only : BandMath.Sum(several);
    }

    private static double Warmth(Substance part, LossNetwork.PathRate year, LossNetwork.PathRate atMean)
    {
        var (over, at) = (Expected(part, year), Expected(part, atMean));
        return over > 0 && at > 0 ? over / at : 1;
    }

    private static double Expected(Substance part, LossNetwork.PathRate path)
    {
        var sum = 0.0;
        foreach (var leaving in path.Leaves)
        {
            if (leaving.Part == part)
                sum += leaving.Rate.Expected.KilogramsPerSecond;
        }

        return sum;
    }
}
