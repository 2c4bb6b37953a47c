using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>Moisture of the room that what is inside may drink, so that a balance sees less go than goes.</summary>
/// <param name="KilogramsPerSecond">As much water as the room's air, as stated, drives in where nothing inside drives back.</param>
/// <param name="TakesUp">What is inside drinks it.</param>
/// <param name="Shares">Which shares of it may have come in; none where nothing drinks.</param>
internal sealed record Moisture(double KilogramsPerSecond, bool TakesUp, double[] Shares)
{
    private static readonly Moisture None = new(0, false, [0]);

    // The humidity of a room that is not read strays by two fifths of the stated, 30 to 70 per cent for 50. From memory: dwellings of temperate climates.
    private const double Off = 0.4;

    private const int Rungs = 6;
    private const double LeastRung = 0.2;

    /// <summary>
    /// What drinks may take none, or all in a room damper than stated; and far more where a cover slows the content and not the moisture, so
    /// that the one does not tell of the other.
    /// </summary>
    public static Moisture Of(Situation situation, PropertyFacts facts, YearNetwork network)
    {
        if (!HygroscopicContents.TakesUp(situation))
            return None;
        var rate = Rate(situation, facts);
        if (rate.Expected.KilogramsPerSecond <= 0)
            return None;
        var slowed = network.Year.Paths.Any(p => p.Finding.Barrier is not null);
        return new Moisture(rate.Expected.KilogramsPerSecond, true, slowed ? Ladder((1 + Off) * (rate.High / rate.Expected)) : [0, (1 + Off) / 2, 1 + Off]);
    }

    // The loss of pure water into dry air, times the humidity.
    private static Band<MassRate> Rate(Situation situation, PropertyFacts facts)
    {
        var water = situation with { Content = Content.Of(facts.Catalogue["water"]), Cover = null, CoverDepth = null, Humidity = new Fraction(0), DailySwing = default };
        return LossNetwork.At(new LossState(water, facts)).Weighable.Select(r => r * situation.Humidity.Value);
    }

    // None, then even steps of the logarithm.
    private static double[] Ladder(double most) => [0, .. Enumerable.Range(0, Rungs).Select(i => most * Math.Pow(LeastRung / most, i / (Rungs - 1.0)))];
}
