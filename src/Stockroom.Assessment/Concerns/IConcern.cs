using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Concerns;

/// <summary>One way in which a stock can be wrong: a file of its own, listed in <see cref="ConcernList"/>.</summary>
public interface IConcern
{
    IEnumerable<WrongItem> Find(StockAssessment stock);
}
