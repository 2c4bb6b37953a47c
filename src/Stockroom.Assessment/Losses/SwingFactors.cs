using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What the warmest and the coolest of a usual day make of each vapour, as a factor on its pressure at the day's mean: worked out once, for
/// the composition at the start of a course, where it is asked for at every step. Exact for a pure content.
/// </summary>
internal sealed class SwingFactors
{
    private readonly List<(Substance Part, double Warm, double Cool)> _factors = [];

    private SwingFactors()
    {
    }

    public static SwingFactors Of(Situation situation, PropertyFacts facts)
    {
        var half = situation.DailySwing.Kelvins / 2;
        IReadOnlyList<Vapour> At(double kelvins) => Vapours.Over(situation.Content, new Temperature(situation.Temperature.Kelvin + kelvins), facts);
        var (mean, warm, cool) = (At(0), At(half), At(-half));
        var factors = new SwingFactors();
        foreach (var v in mean)
            factors._factors.Add((v.Part, Times(v, warm), Times(v, cool)));
        return factors;
    }

    public IReadOnlyList<Vapour> AtWarmest(IReadOnlyList<Vapour> mean) => [.. mean.Select(v => Scaled(v, Find(v.Part).Warm))];

    public IReadOnlyList<Vapour> AtCoolest(IReadOnlyList<Vapour> mean) => [.. mean.Select(v => Scaled(v, Find(v.Part).Cool))];

    private (Substance Part, double Warm, double Cool) Find(Substance part)
    {
        foreach (var factor in _factors)
        {
            if (ReferenceEquals(factor.Part, part))
                return factor;
        }

        return (part, 1, 1);
    }

    private static Vapour Scaled(Vapour v, double times) => v with { Pressure = v.Pressure.Select(p => p * times) };

    private static double Times(Vapour mean, IReadOnlyList<Vapour> other)
    {
        foreach (var v in other)
        {
            if (ReferenceEquals(v.Part, mean.Part) && v.Pressure.Value is { } p && mean.Pressure.Value is { Pascals: > 0 } m)
                return p / m;
        }

        return 1;
    }
}
