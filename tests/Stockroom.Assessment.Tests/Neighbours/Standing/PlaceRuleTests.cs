using System.Reflection;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Assessment.Tests.Holdings;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Tests.Neighbours.Standing;

/// <summary>Each place rule below, at and above what sets it off, and silent where nobody said. Figures: common practice and the law named beside each rule.</summary>
public sealed class PlaceRuleTests
{
    [Fact]
    public void List_EveryRule_IsInIt()
    {
        var rules = typeof(IPlaceRule).Assembly.GetTypes().Where(t => t.IsClass && !t.IsAbstract && typeof(IPlaceRule).IsAssignableFrom(t));
        Assert.Equal(rules.Select(r => r.Name).Order(), PlaceRuleList.All.Select(r => r.GetType().Name).Order());
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData("1.49", false)]
    [InlineData("1.5", false)]
    [InlineData("1.51", true)]
    public void Corrosive_OnAShelfOfAHeight_IsFlaggedAboveEyeLevel(string? height, bool flagged)
    {
        var shelf = Shelf("x", "shelf", new PlaceLimits { HeightMetres = height is null ? null : decimal.Parse(height, System.Globalization.CultureInfo.InvariantCulture) });
        shelf.Put("sulfuric acid 98%", "400 mL", "x");
        shelf.Put("sodium chloride", "100 g", "x");
        Expect(shelf, flagged, "corrosive liquid above eye level", containers: 1);
    }

    [Theory]
    [InlineData("mercury", null, true)]
    [InlineData("mercury", "can with absorbent", false)]
    [InlineData("perchloric acid 70%", null, true)]
    [InlineData("perchloric acid 20%", null, false)]
    [InlineData("sulfuric acid 98%", null, false)]
    public void Tray_Missing_IsFlaggedForWhatAlwaysNeedsOne(string content, string? packing, bool flagged)
    {
        var shelf = Shelf("x", "shelf");
        Put(shelf, content, "x", packing);
        Expect(shelf, flagged, "liquid without a tray");
    }

    [Theory]
    [InlineData("x", true, true)]
    [InlineData("t", true, false)]
    [InlineData("x", false, false)]
    public void Tray_BesideIt_ShowsThatCorrosivesBelongInOne(string place, bool leakTight, bool flagged)
    {
        var shelf = Shelf("x", "shelf");
        shelf.Place("t", "tray", "x", new PlaceLimits { LeakTight = leakTight });
        shelf.Put("sulfuric acid 98%", "400 mL", place);
        Expect(shelf, flagged, "liquid without a tray");
    }

    [Theory]
    [InlineData("lead", true, true)]
    [InlineData("lead", false, false)]
    [InlineData("lead", null, false)]
    [InlineData("tin", true, false)]
    public void Lead_InWood_IsFlagged(string content, bool? wooden, bool flagged)
    {
        var shelf = Shelf("x", "display case", new PlaceLimits { IsWooden = wooden });
        shelf.Put(content, "10 g", "x", "glass vial 20 mL");
        Expect(shelf, flagged, "lead in a wooden case");
    }

    [Theory]
    [InlineData("refrigerator", null, "diethyl ether", true)]
    [InlineData("refrigerator", true, "diethyl ether", false)]
    [InlineData("refrigerator", false, "acetone", true)]
    [InlineData("refrigerator", null, "hydrogen peroxide 30%", false)]
    [InlineData("cabinet", null, "diethyl ether", false)]
    public void Refrigerator_NotMadeForFlammables_IsFlagged(string kind, bool? made, string content, bool flagged)
    {
        var shelf = Shelf("x", kind, new PlaceLimits { IsForFlammables = made });
        shelf.Put(content, "100 mL", "x");
        Expect(shelf, flagged, "flammable in an ordinary refrigerator");
    }

    [Theory]
    [InlineData(true, "acetone", true)]
    [InlineData(true, "benzoyl peroxide 75%", true)]
    [InlineData(true, "sodium chloride", false)]
    [InlineData(null, "acetone", false)]
    public void Heat_NextToWhatItSetsOff_IsFlagged(bool? hot, string content, bool flagged)
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { IsNearHeat = hot });
        shelf.Put(content, "100 g", "x");
        Expect(shelf, flagged, "set off by heat, next to a hot thing");
    }

    // Diethyl ether boils at 34.6 C, gallium melts at 29.8 C: CRC Handbook.
    [Theory]
    [InlineData("diethyl ether", 34, false)]
    [InlineData("diethyl ether", 35, true)]
    [InlineData("gallium", 29, false)]
    [InlineData("gallium", 30, true)]
    public void Warmest_PassesAPoint_IsFlagged(string content, int warmest, bool flagged)
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { MaxCelsius = warmest });
        shelf.Put(content, "20 g", "x");
        Expect(shelf, flagged, content == "gallium" ? "warmer than its melting point" : "warmer than its boiling point");
    }

    [Theory]
    [InlineData("bromine", "screw cap, PTFE-faced liner", true)]
    [InlineData("bromine", "flame seal", false)]
    [InlineData("copper", "screw cap, PTFE-faced liner", false)]
    public void Showcase_HoldsWhatFumes_IsFlaggedUnlessSealed(string content, string closure, bool flagged)
    {
        var shelf = Shelf("x", "display case");
        shelf.Put(content, "3 g", "x", closure == "flame seal" ? "glass ampoule 10 mL" : "glass vial 20 mL", closure);
        Expect(shelf, flagged, "open to the air of a show-case");
    }

    [Theory]
    [InlineData(false, "sodium cyanide", true)]
    [InlineData(true, "sodium cyanide", false)]
    [InlineData(null, "sodium cyanide", false)]
    [InlineData(false, "sodium chloride", false)]
    public void Poison_WhereItIsNotLocked_IsFlagged(bool? locked, string content, bool flagged)
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { IsLocked = locked });
        shelf.Put(content, "20 g", "x");
        Expect(shelf, flagged, "poison in a place that is not locked");
    }

    // Uranium-238 has 12.4 kBq/g (NUBASE2020) and is exempt up to 10 kBq; potassium 31 Bq/g of K-40, exempt up to 1 MBq (2013/59/Euratom).
    [Theory]
    [InlineData("uranium", "5 g", false, true)]
    [InlineData("uranium", "0.1 g", false, false)]
    [InlineData("uranium", "5 g", true, false)]
    [InlineData("uranium", "5 g", null, false)]
    [InlineData("thorium", "1 g", false, true)]
    [InlineData("potassium chloride", "20 g", false, false)]
    [InlineData("rhenium", "20 g", false, false)]
    public void Radioactive_WhereItIsNotLocked_IsFlaggedAboveTheExemptActivity(string content, string amount, bool? locked, bool flagged)
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { IsLocked = locked });
        shelf.Put(content, amount, "x");
        Expect(shelf, flagged, "radioactive in a place that is not locked");
    }

    [Theory]
    [InlineData("silver nitrate", "glass reagent bottle 50 mL", "window", true)]
    [InlineData("silver nitrate", "amber glass bottle 60 mL", "window", false)]
    [InlineData("silver nitrate", "HDPE bottle 60 mL", "window", false)]
    [InlineData("silver nitrate", "glass reagent bottle 50 mL", null, false)]
    [InlineData("silver nitrate", "glass reagent bottle 50 mL", "room", false)]
    [InlineData("sodium chloride", "glass reagent bottle 50 mL", "window", false)]
    public void Light_OnWhatItSpoils_IsFlaggedInClearGlass(string content, string vessel, string? light, bool flagged)
    {
        var shelf = Shelf("x", "open shelf", new PlaceLimits { Light = light is null ? null : PlaceLimits.ParseLight(light) });
        shelf.Put(content, "20 g", "x", vessel);
        Expect(shelf, flagged, "spoiled by light");
    }

    [Theory]
    [InlineData("lecture bottle 440 mL", "fire cabinet", true)]
    [InlineData("lecture bottle 440 mL", "cabinet", false)]
    public void Cylinder_InAFireCabinet_IsFlagged(string vessel, string kind, bool flagged)
    {
        var shelf = Shelf("x", kind);
        shelf.Put("propane", "100 g", "x", vessel, "valve");
        Expect(shelf, flagged, "gas cylinder in a fire cabinet");
    }

    [Theory]
    [InlineData("1 kg", false)]
    [InlineData("1001 g", true)]
    public void Keeper_LimitOfLoad_IsKept(string amount, bool flagged)
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { MaxLoadKilograms = 1 });
        shelf.Put("sodium chloride", amount, "x", "HDPE bottle 2000 mL");
        Expect(shelf, flagged, "more than the place may hold");
    }

    [Fact]
    public void Keeper_LimitsOfNumberAndVolume_AreKept()
    {
        var shelf = Shelf("x", "cabinet", new PlaceLimits { MaxContainers = 1, MaxFlammableLitres = 0.5m, MaxLitres = 0.9m });
        shelf.Put("acetone", "450 mL", "x");
        Expect(shelf, false, "more than the place may hold");
        shelf.Put("water", "500 mL", "x", "HDPE bottle 500 mL");
        Assert.Equal(2, Found(shelf, "more than the place may hold").Count);
        shelf.Put("ethanol", "100 mL", "x");
        Assert.Equal(3, Found(shelf, "more than the place may hold").Count);
    }

    // 60 US gallons are 227.1 L, 10 are 37.85 L.
    [Theory]
    [InlineData("fire cabinet", 227, false, false)]
    [InlineData("fire cabinet", 228, true, false)]
    [InlineData("open shelf", 37, false, false)]
    [InlineData("open shelf", 38, false, true)]
    public void Flammables_PastTheLegalVolume_AreFlagged(string kind, int litres, bool cabinet, bool room)
    {
        var shelf = Shelf("x", kind);
        shelf.Put(new IntakeRequest { Content = "acetone", Amount = $"{litres} L", Place = "x" });
        Assert.Equal((cabinet ? 1 : 0) + (room ? 1 : 0), Found(shelf, "too much flammable liquid in one place").Count);
    }

    [Fact]
    public void Find_OrdinaryShelfOfWhichLittleIsKnown_IsSilent()
    {
        var shelf = Shelf("x", "cabinet");
        foreach (var content in (string[])["hydrochloric acid 10%", "sodium hydroxide 10%", "ethanol", "acetone", "silver nitrate", "hydrogen peroxide 30%", "lead", "sodium cyanide"])
            shelf.Put(content, "50 g", "x");
        Assert.Empty(shelf.Stock.PlaceFindings);
    }

    private static Shelf Shelf(string id, string kind, PlaceLimits? limits = null)
    {
        var shelf = new Shelf(warmest: 26);
        shelf.Place(id, kind, kind == "shelf" ? "near" : "room", limits);
        return shelf;
    }

    private static void Put(Shelf shelf, string content, string place, string? packing) => shelf.Put(new IntakeRequest
    {
        Content = content, Amount = "50 g", Vessel = "glass reagent bottle 100 mL", Closure = "screw cap, PTFE-faced liner", Place = place, Packing = packing,
    });

    private static List<PlaceFinding> Found(Shelf shelf, string rule) => [.. shelf.Stock.PlaceFindings.Where(f => f.Rule == rule)];

    private static void Expect(Shelf shelf, bool flagged, string rule, int containers = 1)
    {
        var found = Found(shelf, rule);
        Assert.Equal(flagged ? 1 : 0, found.Count);
        Assert.All(found, f =>
        {
            Assert.Equal(containers, f.Containers.Count);
            Assert.EndsWith(".", f.Cause, StringComparison.Ordinal);
            Assert.NotEmpty(f.Source);
        });
    }
}
