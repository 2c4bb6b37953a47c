using Stockroom.Assessment.Losses.Paths;
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
/// a factor; level, headspace, composition and pressure follow the amount. Serves one thread at a time.
/// </summary>
internal sealed class LossCourse
{
    // A way out that lets go less than this share of the whole is not followed.
    private const double Negligible = 1e-4;

    private readonly Situation _situation;
    private readonly PropertyFacts _facts;
    private readonly List<Way> _ways = [];
    private readonly MoistureUptake? _moisture;
    private readonly SwingFactors? _swing;
    private readonly PathLoss[] _findings;
    private readonly Reach[] _weighable;
    private readonly Reach[] _transmuted;
    private Band<MassRate> _taken;

    /// <summary>The course of a situation from its year's network.</summary>
    /// <param name="situation">Its amount is the start.</param>
    /// <param name="facts">What the tables say.</param>
    /// <param name="network">The year at its place.</param>
    /// <param name="weighable">True leaves out what a balance cannot show.</param>
    /// <param name="moisture">What the content takes up from the room; null leaves it out.</param>
    public LossCourse(Situation situation, PropertyFacts facts, YearNetwork network, bool weighable = false, MoistureUptake? moisture = null)
    {
        (_situation, _facts, _moisture) = (situation, facts, moisture);
        for (var i = 0; i < LossPaths.All.Count; i++)
        {
            var path = network.Year.Paths[i];
            var finding = path.Finding;
            if (finding.Verdict != PathVerdict.Applies || finding.Role == PathRole.Strength || (path.Leaves.Count == 0 && finding.Barrier is null))
                continue;
            if (weighable && finding.Role == PathRole.Transmuted)
                continue;
            if (finding.Barrier is null && path.Rate.High.KilogramsPerSecond < Negligible * network.Year.Total.High.KilogramsPerSecond)
                continue;
            var warmth = new double[Parts.Count];
            for (var part = 0; part < warmth.Length; part++)
                warmth[part] = Warmth(Parts[part].Substance, path, network.AtMean.Paths[i]);
            _ways.Add(new Way(LossPaths.All[i], finding.Role, warmth));
        }

        _swing = situation.DailySwing.Kelvins > 0 && _ways.Any(w => w.Path is Breathing) ? SwingFactors.Of(situation, facts) : null;
        _findings = new PathLoss[_ways.Count];
        _weighable = new Reach[Parts.Count];
        _transmuted = new Reach[Parts.Count];
    }

    private sealed record Way(ILossPath Path, PathRole Role, double[] Warmth);

    // Sums over the ways out of one part, kg/s and their squared reaches.
    private record struct Reach(double Expected, double Below, double Above)
    {
        public readonly double At(BandEnd end) => end switch
        {
            BandEnd.Low => Math.Max(0, Expected - Math.Sqrt(Below)),
            BandEnd.High => Expected + Math.Sqrt(Above),
            _ => Expected,
        };
    }

    public IReadOnlyList<Part> Parts => _situation.Content.Parts;

    public Mass Start => _situation.Amount;

    public bool IsPure => Parts.Count == 1;

    /// <summary>Index of the part whose strength is followed; null for none.</summary>
    public int? Deciding { get; init; }

    /// <summary>True where nothing leaves at all, and nothing comes in.</summary>
    public bool IsStill => _ways.Count == 0 && _moisture is null;

    /// <summary>Works out the rates of all parts, the mean of a year, for an amount and composition.</summary>
    public void Evaluate(ReadOnlySpan<double> kilograms)
    {
        Array.Clear(_weighable);
        Array.Clear(_transmuted);
        var total = 0.0;
        foreach (var m in kilograms)
            total += m;
        if (total <= 0)
            return;
        var state = new LossState(_situation, _facts, IsPure ? _situation.Content : Mixed(kilograms, total), new Mass(total)) { Swing = _swing };
        for (var i = 0; i < _findings.Length; i++)
            _findings[i] = _ways[i].Path.Assess(state);
        var shares = BarrierShares.Of(_findings);
        for (var i = 0; i < _findings.Length; i++)
            Add(_ways[i], _findings[i], shares.Of(_ways[i].Role));
        if (_moisture is not null)
            _taken = _moisture.Into(state);
    }

    /// <summary>Rate of a part in kg/s as last evaluated; the ways that a balance can show so many times faster.</summary>
    public double Rate(int part, BandEnd end, double pace) =>
        (pace * (_weighable[part].At(end) - Taken(part, end))) + _transmuted[part].At(end);

    /// <summary>The same, apart: what a balance can show, and what it cannot.</summary>
    public (double Weighable, double Transmuted) Rates(int part, BandEnd end) => (_weighable[part].At(end), _transmuted[part].At(end));

    private double Taken(int part, BandEnd end) => _moisture?.Water != part ? 0 : end switch
    {
        BandEnd.Low => _taken.Low.KilogramsPerSecond,
        BandEnd.High => _taken.High.KilogramsPerSecond,
        _ => _taken.Expected.KilogramsPerSecond,
    };

    private void Add(Way way, PathLoss finding, Band<double> left)
    {
        var sums = way.Role == PathRole.Transmuted ? _transmuted : _weighable;
        foreach (var leaving in finding.Leaves)
        {
            var part = IndexOf(leaving.Part);
            var warmth = way.Warmth[part];
            var expected = leaving.Rate.Expected.KilogramsPerSecond * warmth * left.Expected;
            var below = expected - (leaving.Rate.Low.KilogramsPerSecond * warmth * left.Low);
            var above = (leaving.Rate.High.KilogramsPerSecond * warmth * left.High) - expected;
            ref var sum = ref sums[part];
            sum = new Reach(sum.Expected + expected, sum.Below + (below * below), sum.Above + (above * above));
        }
    }

    private Content Mixed(ReadOnlySpan<double> kilograms, double total)
    {
        var parts = new Part[kilograms.Length];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = new Part(Parts[i].Substance, (decimal)(100 * kilograms[i] / total));
        return _situation.Content with { Parts = parts };
    }

    private int IndexOf(Substance part)
    {
        for (var i = 0; i < Parts.Count; i++)
        {
            if (ReferenceEquals(Parts[i].Substance, part))
                return i;
        }

        throw new ArgumentException($"{part.Name} is no part of {_situation.Content.Name}", nameof(part));
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
            if (ReferenceEquals(leaving.Part, part))
                sum += leaving.Rate.Expected.KilogramsPerSecond;
        }

        return sum;
    }
}
