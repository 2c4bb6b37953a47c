using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Tests.Holdings;

public sealed class StockAssessmentTests
{
    private readonly Shelf _shelf = new();

    [Fact]
    public void Situation_OfABottle_ComesFromItsRecordAndItsPlace()
    {
        var id = _shelf.Put("acetone", "400 mL");
        _shelf.Book(new Opened { Container = id, HappenedAt = Shelf.Noon(new DateOnly(2026, 1, 5)) });
        _shelf.Weigh(id, new DateOnly(2026, 2, 1), 640.25m);
        var situation = _shelf.Stock.Of(id).Situation!;
        Assert.Equal(new DateOnly(2026, 1, 5), situation.Opened);
        Assert.Equal(20, situation.Temperature.Celsius, 1e-9);
        Assert.Equal(4, situation.DailySwing.Kelvins, 1e-9);
        Assert.Equal(26, situation.Warmest!.Value.Celsius, 1e-9);
        Assert.Equal(640.25, Assert.Single(situation.Weighings).Gross.Grams, 1e-9);
        Assert.Equal(Shelf.Today.AddYears(-1), situation.AmountOn);
    }

    [Theory]
    [InlineData(null, "flame seal", "10 g", "its vessel is not known")]
    [InlineData("glass vial 20 mL", null, "10 g", "its closure is not known")]
    [InlineData("glass vial 20 mL", "flame seal", null, "how much there is was never booked")]
    public void Situation_WithSomethingMissing_SaysWhatAndForecastsNothing(string? vessel, string? closure, string? amount, string problem)
    {
        var holding = Judged(_shelf.Put(new IntakeRequest { Content = "acetone", Amount = amount, Vessel = vessel, Closure = closure, Place = "near-low" }));
        Assert.Null(holding.Situation);
        Assert.Null(holding.Forecast);
        Assert.Equal(problem, holding.SituationProblem);
    }

    [Fact]
    public void Situation_OfAnOrphan_IsNone()
    {
        var holding = Judged(_shelf.Put(new IntakeRequest { Content = "orphan", Seen = "red liquid", Vessel = "glass vial 20 mL", Closure = "flame seal", Place = "near-low" }));
        Assert.True(holding.Content.IsUnknown);
        Assert.Null(holding.Situation);
        Assert.Contains(holding.Label.WordsBeside, w => w.Contains("unknown", StringComparison.OrdinalIgnoreCase));
    }

    // With a tare the last weigh-in is what is left; a draw after it makes the balance the later word.
    [Fact]
    public void Amount_WithTareAndWeighIn_IsWhatWasWeighed()
    {
        var id = _shelf.Put(new IntakeRequest { Content = "acetone", Amount = "300 g", TareGrams = 200m, Vessel = "glass reagent bottle 500 mL", Closure = "screw cap, PTFE-faced liner", Place = "near-low" });
        Assert.Equal(300, _shelf.Stock.Of(id).Situation!.Amount.Grams, 1e-9);
        _shelf.Weigh(id, new DateOnly(2026, 3, 1), 480m);
        Assert.Equal((280, new DateOnly(2026, 3, 1)), (Math.Round(_shelf.Stock.Of(id).Situation!.Amount.Grams, 6), _shelf.Stock.Of(id).Situation!.AmountOn));
    }

    [Fact]
    public void Stand_OfAPlace_KnowsRoomCabinetShelfOrderAndTray()
    {
        _shelf.Place("tray", "tray", "near-high", new PlaceLimits { LeakTight = true });
        var stand = Judged(_shelf.Put("acetone", "100 mL", "tray")).Stand;
        Assert.Equal(("room", "near", "near-high", "tray"), (stand.Room?.Id, stand.Cabinet?.Id, stand.Shelf?.Id, stand.Tray?.Id));
        Assert.Equal((1, 1, true), (stand.CabinetOrder, stand.ShelfOrder, stand.TrayIsLeakTight));
        var low = Judged(_shelf.Put("acetone", "100 mL")).Stand;
        Assert.Equal((0, null), (low.ShelfOrder, low.Tray));
    }

    [Fact]
    public void Stand_OfAShelfWithoutAHeight_HasNoOrder()
    {
        _shelf.Place("odd", "shelf", "near");
        Assert.Null(Judged(_shelf.Put("acetone", "100 mL", "odd")).Stand.ShelfOrder);
    }

    [Fact]
    public void Assessment_SameBookFactsAndDay_GivesTheSame()
    {
        _shelf.Put("nitric acid 65%", "300 mL", "near-high");
        var ether = _shelf.Put("diethyl ether", "300 mL");
        _shelf.Book(new Opened { Container = ether, HappenedAt = Shelf.Noon(Shelf.Today.AddYears(-1)) });
        Assert.Equal(Words(_shelf.Stock), Words(_shelf.Stock));
        Assert.NotEmpty(_shelf.Stock.Wrong);
        Assert.NotEmpty(_shelf.Stock.Due);
    }

    [Fact]
    public void Assessment_ARetiredContainer_IsNoLongerJudged()
    {
        var acid = _shelf.Put("nitric acid 65%", "300 mL", "near-high");
        _shelf.Put("acetone", "300 mL");
        Assert.NotEmpty(_shelf.Stock.Wrong);
        _shelf.Book(new Retired { Container = acid, Reason = "used up", HappenedAt = Shelf.Noon(Shelf.Today) });
        Assert.Empty(_shelf.Stock.Wrong);
        Assert.Equal("nitric acid 65%", _shelf.Stock.Of(acid).Content.Name);
    }

    [Fact]
    public void Of_AnIdThatIsNotThere_IsRefused() =>
        Assert.Contains("there is no container", Assert.Throws<BookRefusal>(() => _shelf.Stock.Of(ContainerId.AtOrAfter(500))).Message, StringComparison.Ordinal);

    private Holding Judged(ContainerId id) => _shelf.Stock.Of(id);

    private static string Words(StockAssessment stock) => string.Join('\n', stock.Wrong.Select(w => $"{w.Severity} {w.What} {w.Because} {w.Source} {string.Join(' ', w.Containers)}")
        .Concat(stock.Due.Select(d => d.ToString())).Concat(stock.Holdings.Select(h => $"{h.Id} {h.Forecast?.LossRate}")));
}
