using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// No highly flammable liquid or flammable gas in a refrigerator that is not made for it. Source: NFPA 45, annex A.11.3.2.2, as a university's
/// laboratory manual gives it.
/// </summary>
internal sealed class OrdinaryRefrigerator : IPlaceRule
{
    public IEnumerable<PlaceFinding> Find(StockAssessment stock) =>
        from place in PlaceWords.By(stock, h => IsOrdinary(h) && !h.IsFlameSealed && h.HasCategory("Flam. Liq. 1", "Flam. Liq. 2", "Flam. Gas 1", "Flam. Gas 1A", "Flam. Gas 1B"))
        let cabinet = place.Holdings[0].Cabinet()!
        select PlaceWords.Finding(
            "flammable in an ordinary refrigerator",
            $"{PlaceWords.Subject(place.Holdings, "stands", "stand")} in {cabinet.Name}, which nobody has said is made for flammables: its lamp or thermostat can set fire to the vapour. Take it out, or say so of the place if it is.",
            "explosion", "NFPA 45, A.11.3.2.2, as a university laboratory manual gives it: only refrigerators made for flammables", Severity.Danger, place.Place, place.Holdings);

    private static bool IsOrdinary(Holding holding) =>
        holding.Cabinet()?.Kind == PlaceKind.Refrigerator && holding.Limits.IsForFlammables != true;
}
