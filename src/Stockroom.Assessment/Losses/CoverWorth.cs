using System.Globalization;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>What a cover changes of the loss: the same vessel with and without it.</summary>
public sealed record CoverWorth(string Cover, Band<MassRate> Bare, Band<MassRate> Covered, string Because)
{
    /// <summary>Null where no liquid lies over the content, or its loss is not known.</summary>
    public static CoverWorth? Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid } cover || situation.Content.IsUnknown)
            return null;
        var covered = LossNetwork.At(new LossState(situation, facts));
        var bare = LossNetwork.At(new LossState(situation with { Cover = null, CoverDepth = null }, facts));
        if (!covered.IsKnown || !bare.IsKnown)
            return null;
        var (from, to) = (bare.Total.Expected.GramsPerYear, covered.Total.Expected.GramsPerYear);
        var words = from <= 1e-9
            ? $"it loses nothing that could be slowed; the {cover.Name} {cover.Serves}"
            : to > 0.8 * from
                ? $"{Grams(from)} g a year bare, {Grams(to)} under the {cover.Name}: the closure governs and the cover changes little; it {cover.Serves}"
                : $"{Grams(from)} g a year bare, {Grams(to)} under the {cover.Name} ({Grams(covered.Total.Low.GramsPerYear)} to {Grams(covered.Total.High.GramsPerYear)}); it {cover.Serves}";
        return new CoverWorth(cover.Name, bare.Total, covered.Total, words);
    }

    // Three digits that count, never in powers of ten.
    private static string Grams(double grams) => grams is > 0 and < 1e-6
        ? "under 0.000001"
        : decimal.Parse(grams.ToString("G3", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);
}
