using Stockroom.Assessment.Holdings;

namespace Stockroom.Assessment.Concerns;

/// <summary>Things that nobody may touch, until someone who can has dealt with them.</summary>
public sealed class HandsOffConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        where holding.Container.HandsOff is not null
        select new WrongItem(
            Severity.Danger,
            "hands off",
            $"Hands off {holding.Content.Name} on {holding.PlaceName}: do not move, open or weigh it; keep away and get help",
            holding.Container.HandsOff!,
            "marked by the keeper",
            null,
            [holding.Id]);
}
