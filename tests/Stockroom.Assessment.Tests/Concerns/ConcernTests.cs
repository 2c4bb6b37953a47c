using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Tests.Holdings;
using Stockroom.Book.Entries;

namespace Stockroom.Assessment.Tests.Concerns;

/// <summary>Each concern below, at and above what sets it off.</summary>
public sealed class ConcernTests
{
    [Fact]
    public void Assembly_EveryConcern_StandsInTheList()
    {
        var written = typeof(IConcern).Assembly.GetTypes().Where(t => t.IsAssignableTo(typeof(IConcern)) && !t.IsAbstract);
        Assert.Empty(written.Except(ConcernList.All.Select(c => c.GetType())).Select(t => t.Name));
    }

    [Fact]
    public void Shelf_OfHarmlessThings_IsNotWrong()
    {
        var shelf = new Shelf();
        foreach (var content in (string[])["sodium chloride", "sucrose", "calcium sulfate dihydrate", "silica gel"])
            shelf.Put(content, "100 g", vessel: "HDPE bottle 500 mL", closure: "HDPE screw cap");
        Assert.Empty(shelf.Stock.Wrong);
    }

    [Fact]
    public void HandsOff_MarkedAndLifted_IsDangerOnlyBetween()
    {
        var shelf = new Shelf();
        var id = shelf.Put("sodium chloride", "100 g");
        Assert.Empty(shelf.Stock.Wrong);
        shelf.Book(new Marked { Container = id, HandsOff = true, Reason = "crystals at the cap", HappenedAt = Shelf.Noon(Shelf.Today) });
        var wrong = Assert.Single(shelf.Stock.Wrong);
        Assert.Equal(("hands off", Severity.Danger, "crystals at the cap", id), (wrong.Kind, wrong.Severity, wrong.Because, wrong.Containers[0]));
        shelf.Book(new Marked { Container = id, HandsOff = false, Reason = "taken care of", HappenedAt = Shelf.Noon(Shelf.Today) });
        Assert.Empty(shelf.Stock.Wrong);
    }

    // Bromine of 29.8 g in 10 mL: full at about 61 C, so sound in the cool and in danger of bursting by its pressure in a warm window.
    [Theory]
    [InlineData("29.8 g", 26, null)]
    [InlineData("29.8 g", 46, Severity.Danger)]
    [InlineData("30.5 g", 26, Severity.Warning)]
    [InlineData("30.5 g", 46, Severity.Danger)]
    [InlineData("15 g", 46, null)]
    public void Ampoule_ByFillAndWarmestDay_IsWrongWhenItsGlassDoesNotBearIt(string amount, double warmest, Severity? severity)
    {
        var shelf = new Shelf((decimal)warmest);
        shelf.Put("bromine", amount, vessel: "glass ampoule 10 mL", closure: "flame seal");
        var wrong = shelf.Stock.Wrong.SingleOrDefault(w => w.Kind == "ampoule");
        Assert.Equal(severity, wrong?.Severity);
        Assert.Equal(severity is null ? 0 : 1, shelf.Stock.Wrong.Count);
    }

    [Fact]
    public void Ampoule_OfWhatMakesGas_IsNeverSealed()
    {
        var shelf = new Shelf();
        shelf.Put("hydrogen peroxide 30%", "2 mL", vessel: "glass ampoule 10 mL", closure: "flame seal");
        Assert.Contains(shelf.Stock.Wrong, w => w.Kind == "ampoule" && w.Severity == Severity.Danger && w.What.Contains("must never be sealed", StringComparison.Ordinal));
    }

    // 40 CFR 264 Appendix V, group 4-A with 4-B; no more than a cabinet between is asked for.
    [Theory]
    [InlineData("near-low", true)]
    [InlineData("near-high", true)]
    [InlineData("far-low", false)]
    public void Neighbours_AcidAndSolvent_AreWrongInOneCabinet(string place, bool wrong)
    {
        var shelf = new Shelf();
        var acid = shelf.Put("sulfuric acid 98%", "300 mL", place);
        shelf.Put("acetone", "300 mL");
        var found = shelf.Stock.Wrong.Where(w => w.Kind == "neighbours").ToList();
        Assert.Equal(wrong, found.Count > 0);
        Assert.All(found, w => Assert.Contains(acid, w.Containers));
        Assert.All(found, w => Assert.True(w.Source.Length > 10));
    }

    [Fact]
    public void Neighbours_OneAcidOverManySolvents_IsOneFindingWithTheAcidFirst()
    {
        var shelf = new Shelf();
        foreach (var solvent in (string[])["acetone", "toluene", "n-hexane"])
            shelf.Put(solvent, "300 mL");
        var acid = shelf.Put("sulfuric acid 98%", "300 mL", "near-high");
        var wrong = Assert.Single(shelf.Stock.Wrong, w => w.Kind == "neighbours" && w.Containers.Count == 4);
        Assert.Equal(acid, wrong.Containers[0]);
    }

    // The same bottle, weighed over five months: by its closure about half a gram to thirty grams a year could go.
    [Theory]
    [InlineData(0.0, false)]
    [InlineData(1.0, false)]
    [InlineData(25.0, true)]
    public void Seal_ByWhatWasWeighed_IsWrongAboveWhatItsClosureExplains(double lossGrams, bool failing)
    {
        var shelf = new Shelf();
        var id = shelf.Put("n-hexane", "420 mL", vessel: "ground-joint bottle 500 mL", closure: "ground-glass stopper, dry");
        for (var n = 0; n < 4; n++)
            shelf.Weigh(id, Shelf.Today.AddDays(-150 + (50 * n)), 620m - ((decimal)lossGrams * n / 3));
        Assert.Equal(failing, shelf.Stock.Wrong.Any(w => w.Kind == "seal"));
        Assert.All(shelf.Stock.Wrong, w => Assert.Equal("seal", w.Kind));
    }

    [Fact]
    public void Seal_OfABottleThatGainsMass_IsSaidAsSomethingGettingIn()
    {
        var shelf = new Shelf();
        var id = shelf.Put("sulfuric acid 98%", "300 mL");
        for (var n = 0; n < 4; n++)
            shelf.Weigh(id, Shelf.Today.AddDays(-150 + (50 * n)), 900m + (2m * n));
        Assert.Contains(shelf.Stock.Wrong, w => w.Kind == "seal" && w.What.Contains("something gets in", StringComparison.Ordinal));
    }

    // Halogens behind polyolefins: common practice; PTFE-faced caps and flame seals are what they stand under.
    [Theory]
    [InlineData("bromine", "plain polypropylene screw cap", true)]
    [InlineData("bromine", "screw cap, PTFE-faced liner", false)]
    [InlineData("sodium chloride", "plain polypropylene screw cap", false)]
    [InlineData("acetone", "screw cap, PTFE-faced liner", false)]
    public void Material_ThatDoesNotStandTheContent_IsWrong(string content, string closure, bool wrong)
    {
        var shelf = new Shelf();
        shelf.Put(content, "20 g", vessel: "glass reagent bottle 100 mL", closure: closure);
        Assert.Equal(wrong, shelf.Stock.Wrong.Any(w => w.Kind == "material"));
    }

    [Fact]
    public void Orphan_Alone_IsWrongUntilItIsKnownAndBringsNoNeighbour()
    {
        var shelf = new Shelf();
        var id = shelf.Put(new IntakeRequest { Content = "orphan", Seen = "brown liquid", FoundBy = "Piet Holm", Place = "near-low" });
        shelf.Put("acetone", "300 mL", "far-low");
        var wrong = Assert.Single(shelf.Stock.Wrong);
        Assert.Equal(("orphan", id), (wrong.Kind, wrong.Containers[0]));
        Assert.Contains("found by Piet Holm", wrong.Because, StringComparison.Ordinal);
        shelf.Put("acetone", "300 mL", "near-high");
        Assert.Contains(shelf.Stock.Wrong, w => w.Kind == "neighbours" && w.Containers.Contains(id));
    }

    [Fact]
    public void Wrong_OfAnyKind_SaysWhyByWhomAndWhoFirst()
    {
        var shelf = new Shelf(46);
        shelf.Put("bromine", "30.5 g", vessel: "glass ampoule 10 mL", closure: "flame seal");
        shelf.Put("bromine", "20 g", vessel: "glass reagent bottle 100 mL", closure: "plain polypropylene screw cap");
        shelf.Put("ammonia solution 25%", "300 mL");
        shelf.Put(new IntakeRequest { Content = "orphan", Seen = "brown liquid", Place = "near-low" });
        var wrong = shelf.Stock.Wrong;
        Assert.All(wrong, w => Assert.True(w.Because.Length > 5 && w.Source.Length > 5 && w.What.Length > 10 && w.Containers.Count > 0));
        Assert.Equal(wrong.OrderByDescending(w => w.Severity).Select(w => w.Severity), wrong.Select(w => w.Severity));
    }
}
