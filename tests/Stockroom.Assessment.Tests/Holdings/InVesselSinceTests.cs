using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;

namespace Stockroom.Assessment.Tests.Holdings;

/// <summary>Since when a content has stood in its vessel, as the book knows it: never later than is true, or not at all.</summary>
public sealed class InVesselSinceTests
{
    private static readonly DateOnly Came = new(2026, 5, 1);
    private static readonly DateOnly Made = new(2025, 9, 1);

    [Theory]
    [InlineData(LotOrigin.Bought, false, null)]
    [InlineData(LotOrigin.Found, false, null)]
    [InlineData(LotOrigin.Bought, true, "2025-09-01")]
    [InlineData(LotOrigin.Made, false, "2026-05-01")]
    [InlineData(LotOrigin.Made, true, "2025-09-01")]
    [InlineData(LotOrigin.Split, true, "2026-05-01")]
    public void Situation_ByOrigin_FailsToTheSafeSide(LotOrigin how, bool dated, string? since)
    {
        var shelf = new Shelf();
        var other = shelf.Put("toluene", "100 mL");
        var id = shelf.State.NewId();
        shelf.Book(new Received
        {
            Container = id, Content = "toluene", NetGrams = 80, Vessel = "HDPE bottle 125 mL", Closure = "HDPE screw cap", To = "near-low", HappenedAt = Shelf.Noon(Came),
            Lot = new Lot { How = how, From = how == LotOrigin.Split ? other : null, MadeOn = dated ? Made : null },
        });
        Assert.Equal(since, shelf.Stock.Of(id).Situation!.InVesselSince?.ToString("yyyy-MM-dd", null));
    }
}
