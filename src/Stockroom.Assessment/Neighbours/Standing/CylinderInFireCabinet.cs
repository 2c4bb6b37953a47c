using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>A gas cylinder does not stand in a fire cabinet, where a fire bursts it among the solvents. Source: 29 CFR 1910.101, CGA P-1, from memory.</summary>
internal sealed class CylinderInFireCabinet : IPlaceRule
{
    private static readonly string[] Cylinders = ["lecture bottle", "gas cylinder"];

    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => h.Cabinet()?.Kind == PlaceKind.FireCabinet && Cylinders.Any(c => h.Container.Vessel?.StartsWith(c, StringComparison.Ordinal) == true))
        select PlaceWords.Finding(
            "gas cylinder in a fire cabinet",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} in {place.Holdings[0].Cabinet()!.Name} as a gas cylinder: in a fire it would burst among the solvents. Chain it up outside the cabinet.",
            "explosion", "from memory: 29 CFR 1910.101 and CGA P-1, cylinders apart from flammable liquids", Severity.Warning, place.Place, place.Holdings);
}
