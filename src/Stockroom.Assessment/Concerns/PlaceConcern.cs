using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Concerns;

/// <summary>What stands where it should not, whatever its neighbours are.</summary>
public sealed class PlaceConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        stock.PlaceFindings.Select(f => new WrongItem(f.Severity, "place", f.Cause, f.Rule, f.Source, null, f.Containers));
}
