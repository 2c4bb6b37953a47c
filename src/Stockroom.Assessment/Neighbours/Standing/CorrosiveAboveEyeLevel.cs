using System.Globalization;
using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>Corrosive liquids stand below eye level. Source: common practice, National Research Council, Prudent Practices, 5.E; the figure from memory.</summary>
internal sealed class CorrosiveAboveEyeLevel : IPlaceRule
{
    internal const decimal EyeLevelMetres = 1.5m;

    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => h.Profile.IsCorrosiveLiquid && !h.IsFlameSealed && h.Limits.HeightMetres > EyeLevelMetres)
        let height = place.Holdings[0].Limits.HeightMetres!.Value.ToString("0.##", CultureInfo.InvariantCulture)
        select PlaceWords.Finding(
            "corrosive liquid above eye level",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} {height} m up on {place.Place.Name}: what leaks or slips there comes down on a face. Keep corrosive liquids below {EyeLevelMetres.ToString("0.##", CultureInfo.InvariantCulture)} m.",
            "corrosion", "common practice: corrosives below eye level; National Research Council, Prudent Practices in the Laboratory (2011), 5.E, from memory",
            Severity.Warning, place.Place, place.Holdings);
}
