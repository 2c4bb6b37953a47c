using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What is fatal stands locked up, where the keeper has said that a place is not. Source: a university's laboratory practice, from memory.</summary>
internal sealed class PoisonUnlocked : IPlaceRule
{
    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => h.Limits.IsLocked == false && h.HasCategory("Acute Tox. 1", "Acute Tox. 2"))
        select PlaceWords.Finding(
            "poison in a place that is not locked",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} on {place.Place.Name}, which is not locked: it can kill. Keep it under lock and key.",
            "toxic product", "common practice of university laboratories: severe poisons locked up", Severity.Warning, place.Place, place.Holdings);
}
