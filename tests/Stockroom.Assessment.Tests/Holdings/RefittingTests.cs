using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Book;
using Stockroom.Book.Entries;

namespace Stockroom.Assessment.Tests.Holdings;

/// <summary>A cover taken off, put on or changed, or another closure, between two weighings is no loss and no gain of the content.</summary>
public sealed class RefittingTests
{
    // A depth of 10 mm in a 100 mL bottle weighs some 15 g: as a loss it would be the seal's ruin.
    [Theory]
    [InlineData("bromine", "water")]
    [InlineData("sodium", "paraffin oil")]
    [InlineData("phosphorus (white)", "water")]
    public void Weighings_AcrossACoverTakenOff_AreNoLossAndNoAlarm(string content, string cover)
    {
        var shelf = new Shelf();
        var id = Put(shelf, content, cover);
        shelf.Weigh(id, Days(-200), 180m);
        Cover(shelf, id, Days(-100), CoverAct.TakenOff);
        shelf.Weigh(id, Days(-99), 164m);
        var holding = shelf.Stock.Of(id);
        Assert.Equal(SealState.NotEnough, holding.Seal!.State);
        Assert.Null(holding.Forecast!.Weighed);
        Assert.DoesNotContain(shelf.Stock.Wrong, w => w.Kind == "seal");
    }

    [Fact]
    public void Weighings_AfterTheCoverCameOff_TellTheRateAlone()
    {
        var (shelf, bare) = (new Shelf(), new Shelf());
        var (id, other) = (Put(shelf, "bromine", "water"), Put(bare, "bromine", null));
        shelf.Weigh(id, Days(-300), 180m);
        shelf.Weigh(id, Days(-150), 179.99m);
        Cover(shelf, id, Days(-140), CoverAct.TakenOff);
        foreach (var (on, grams) in new[] { (-130, 164m), (-60, 163.4m), (-1, 162.9m) })
        {
            shelf.Weigh(id, Days(on), grams);
            bare.Weigh(other, Days(on), grams);
        }

        var (once, never) = (shelf.Stock.Of(id), bare.Stock.Of(other));
        Assert.Equal(3, once.Seal!.Measured!.Weighings);
        Assert.Equal(never.Seal!.Measured!.Rate.GramsPerYear, once.Seal.Measured.Rate.GramsPerYear, 1e-9);
        Assert.Equal(never.Forecast!.Weighed!.Rate.Expected.GramsPerYear, once.Forecast!.Weighed!.Rate.Expected.GramsPerYear, 1e-9);
    }

    [Theory]
    [InlineData(CoverAct.PutOn)]
    [InlineData(CoverAct.ToppedUp)]
    public void Weighings_AcrossMoreCover_AreNoRise(CoverAct act)
    {
        var shelf = new Shelf();
        var id = Put(shelf, "bromine", "water");
        shelf.Weigh(id, Days(-200), 164m);
        Cover(shelf, id, Days(-100), act, "water", 20);
        shelf.Weigh(id, Days(-99), 180m);
        Assert.Equal(SealState.NotEnough, shelf.Stock.Of(id).Seal!.State);
    }

    // Two covers changed long ago are as little a loss as the last.
    [Fact]
    public void Weighings_AcrossAnEarlierClosure_DoNotCompare()
    {
        var shelf = new Shelf();
        var id = Put(shelf, "acetone", null);
        shelf.Weigh(id, Days(-300), 150m);
        shelf.Book(new Sealed { Container = id, Closure = "ground-glass stopper, dry", HappenedAt = Shelf.Noon(Days(-250)) });
        shelf.Weigh(id, Days(-240), 120m);
        shelf.Book(new Sealed { Container = id, Closure = "screw cap, PTFE-faced liner", HappenedAt = Shelf.Noon(Days(-200)) });
        shelf.Weigh(id, Days(-190), 100m);
        Assert.Equal(SealState.NotEnough, shelf.Stock.Of(id).Seal!.State);
    }

    // Closed anew and weighed in one entry: the new closure lies on the balance already.
    [Fact]
    public void Weighings_WithTheNewClosure_BeginThere()
    {
        var shelf = new Shelf();
        var id = Put(shelf, "acetone", null);
        shelf.Weigh(id, Days(-300), 150m);
        shelf.Book(new Sealed { Container = id, Closure = "ground-glass stopper, dry", GrossGrams = 120m, HappenedAt = Shelf.Noon(Days(-250)) });
        shelf.Weigh(id, Days(-100), 119.9m);
        var measured = shelf.Stock.Of(id).Seal!.Measured!;
        Assert.Equal(0.1 / 150 * 365.25, measured.Rate.GramsPerYear, 0.02);
    }

    // The last gross mass was read with the cover on: less the tare it is not the content.
    [Fact]
    public void Amount_WeighedUnderACoverNowOff_IsNotGrossLessTare()
    {
        var shelf = new Shelf();
        var id = shelf.Put(Request("bromine", "water") with { TareGrams = 100m });
        shelf.Weigh(id, Days(-200), 180m);
        Cover(shelf, id, Days(-100), CoverAct.TakenOff);
        Assert.Equal(60, shelf.Stock.Of(id).Situation!.Amount.Grams, 1e-9);
        shelf.Weigh(id, Days(-90), 159m);
        Assert.Equal(59, shelf.Stock.Of(id).Situation!.Amount.Grams, 1e-9);
    }

    private static DateOnly Days(int days) => Shelf.Today.AddDays(days);

    private static void Cover(Shelf shelf, ContainerId id, DateOnly on, CoverAct act, string? cover = null, decimal? depth = null) =>
        shelf.Book(new Covered { Container = id, Act = act, Cover = cover, DepthMillimetres = depth, HappenedAt = Shelf.Noon(on) });

    private static ContainerId Put(Shelf shelf, string content, string? cover) => shelf.Put(Request(content, cover));

    private static IntakeRequest Request(string content, string? cover) => new()
    {
        Content = content, Amount = "60 g", Vessel = "ground-joint bottle 100 mL", Closure = "ground-glass stopper, dry", Place = "near-low", Cover = cover, CoverDepthMillimetres = cover is null ? null : 10,
    };
}
