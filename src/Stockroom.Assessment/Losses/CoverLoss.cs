using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// What a liquid cover loses by itself: by the same ways as a content that fills the vessel to the same level, over the seasons and the days
/// of the place. That the level falls, and the way out grows with it, is not counted: it fails a little later than said.
/// </summary>
internal sealed class CoverLoss
{
    // Where nobody has measured: only the height of the level hangs on it.
    private static readonly Length UsualDepth = Length.FromMillimetres(10);

    private CoverLoss(YearNetwork network, Density density) => (Network, Density) = (network, density);

    public YearNetwork Network { get; }

    public Density Density { get; }

    /// <summary>The mean of a year.</summary>
    public Band<MassRate> Rate => Network.Year.Total;

    /// <summary>Null where there is no liquid cover, or the catalogue does not know what it is.</summary>
    public static CoverLoss? Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Cover is not { Kind: CoverKind.Liquid, Content: { } name } || facts.Catalogue.Resolve(name).Content is not { } content)
            return null;
        var filled = new LossState(situation with { CoverDepth = situation.CoverDepth ?? UsualDepth }, facts).Filled;
        var asContent = situation with { Content = content, Cover = null, CoverDepth = null };
        var density = new LossState(asContent, facts).Density;
        var level = asContent with { Amount = new Mass(density.KilogramsPerCubicMetre * Math.Min(filled.CubicMetres, situation.Vessel.Volume.CubicMetres)) };
        return new CoverLoss(YearNetwork.Of(level, facts), density);
    }
}
