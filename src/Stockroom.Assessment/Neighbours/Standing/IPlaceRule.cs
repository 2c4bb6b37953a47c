using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>
/// One rule about where a thing may stand by itself: a file of its own, listed in <see cref="PlaceRuleList"/>. A rule speaks only where what it
/// needs is known: the height, the kind, that a lamp falls there. Where nobody said, it is silent.
/// </summary>
public interface IPlaceRule
{
    IEnumerable<PlaceFinding> Find(StockAssessment stock);
}
