using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using static Stockroom.Assessment.Tests.Neighbours.Shelves;

namespace Stockroom.Assessment.Tests.Neighbours;

// Separation needed: acid and solvent, acid and cyanide by 40 CFR 264 Appendix V groups 4 and 5; the haze, the bloom on
// lead and the rest as written in the tables beside each rule; what counts as apart is the house's own scale.
public sealed class NeighbourFinderTests
{
    [Fact]
    public void Find_AcidAboveSolvent_SaysSoInOneSentence()
    {
        var finding = Assert.Single(Find(Item("A", "hydrochloric acid 37%", At("C1", 3)), Item("B", "n-hexane", At("C1", 1))));
        Assert.Equal(Separation.OwnCabinet, finding.Separation);
        Assert.StartsWith("Hydrochloric acid 37% stands above n-hexane in C1: strong acid with a flammable liquid", finding.Cause, StringComparison.Ordinal);
        Assert.Contains("a cabinet each", finding.Cause, StringComparison.Ordinal);
        var pair = Assert.Single(finding.Pairs);
        Assert.True(pair.AIsAbove);
        Assert.Equal(Separation.SameTray, pair.Stand);
    }

    [Fact]
    public void Find_OffenderMovedAway_FindingVanishes()
    {
        var hexane = Item("B", "n-hexane", At("C1", 1));
        Assert.NotEmpty(Find(Item("A", "hydrochloric acid 37%", At("C1", 3)), hexane));
        Assert.Empty(Find(Item("A", "hydrochloric acid 37%", At("C2", 3)), hexane));
    }

    [Fact]
    public void Find_HarmlessBottleMovedAnywhere_MakesNone()
    {
        ShelfItem[] stock = [Item("A", "hydrochloric acid 37%", At("C1", 1)), Item("B", "n-hexane", At("C2", 1)), Item("D", "sodium hydroxide", At("C3", 1))];
        foreach (var cabinet in new[] { "C1", "C2", "C3" })
            Assert.Empty(Find([.. stock, Item("S", "sodium chloride", At(cabinet, 2))]));
    }

    [Fact]
    public void Find_AmmoniaBesideHydrochloricAcid_IsAMatterOfSharedAir()
    {
        ShelfItem Acid(Stand stand) => Item("A", "hydrochloric acid 37%", stand);
        ShelfItem Ammonia(Stand stand) => Item("B", "ammonia solution 25%", stand);
        var inTrays = Find(Acid(At("C1", 1, "T1")), Ammonia(At("C1", 1, "T2")));
        Assert.Contains(inTrays, f => f.ByAir && f.Would.Contains("fuming"));
        Assert.Empty(Find(Acid(At("C1", 1)), Ammonia(At("C2", 1))));
    }

    [Fact]
    public void Find_VapourInAVentilatedCabinetOrFromASealedAmpoule_IsNoFinding()
    {
        var copper = Item("B", "copper", At("C1", 1, "T2"));
        Assert.Contains(Find(Item("A", "iodine", At("C1", 1, "T1")), copper), f => f.ByAir);
        Assert.Empty(Find(Item("A", "iodine", At("C1", 1, "T1"), sealedByFlame: true), copper));
        Assert.Empty(Find(Item("A", "iodine", At("C1", 1, "T1", ventilated: true)), Item("B", "copper", At("C1", 1, "T2", ventilated: true))));
    }

    [Fact]
    public void Find_SealedAmpouleBesideItsEnemy_IsStillAFindingForTheDayItBreaks()
    {
        var finding = Assert.Single(Find(Item("A", "bromine", At("C1", 1), sealedByFlame: true), Item("B", "sodium", At("C1", 1), sealedByFlame: true)));
        Assert.False(finding.ByAir);
        Assert.Equal(Separation.OwnCabinet, finding.Separation);
    }

    [Fact]
    public void Find_FortyBottlesAgainstOne_IsOneFinding()
    {
        var solvents = new[] { "acetone", "ethanol", "toluene", "n-hexane", "ethyl acetate" };
        var items = Enumerable.Range(0, 40).Select(i => Item($"S{i:00}", solvents[i % solvents.Length], At("C1", 1))).Append(Item("N", "nitric acid 65%", At("C1", 1)));
        var finding = Assert.Single(Find([.. items]));
        Assert.Equal(40, finding.Pairs.Count);
        Assert.Contains("nitric acid 65%", finding.Cause, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Find_TwoUnrelatedTroublesOfOneKind_AreTwoFindings()
    {
        var findings = Find(
            Item("A", "nitric acid 65%", At("C1", 1)), Item("B", "acetone", At("C1", 1)),
            Item("D", "nitric acid 65%", At("C2", 1)), Item("E", "acetone", At("C2", 1)));
        Assert.Equal(2, findings.Count);
    }

    [Fact]
    public void Find_SameKnownContentTwice_IsNoConflict() =>
        Assert.Empty(Find(Item("A", "nitric acid 65%", At("C1", 1)), Item("B", "nitric acid 65%", At("C1", 1))));

    [Fact]
    public void Find_TwoOrphans_AreEnemies()
    {
        var finding = Assert.Single(Find(
            new ShelfItem("A", "brown bottle", Profiles.Orphan(MatterState.Liquid, "unknown corrosive liquid"), At("C1", 1)),
            new ShelfItem("B", "brown bottle", Profiles.Orphan(MatterState.Liquid, "unknown corrosive liquid"), At("C1", 1))));
        Assert.Contains("nobody knows", finding.Cause, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_OrphanAmongOrdinaryStock_IsOneFindingThatNamesIt()
    {
        var findings = Find(
            new ShelfItem("U", "brown bottle", Profiles.Orphan(MatterState.Liquid, "unknown corrosive liquid"), At("C1", 1)),
            Item("A", "ethanol", At("C1", 1)), Item("B", "toluene", At("C1", 1)), Item("D", "sodium chloride", At("C1", 1)));
        var finding = Assert.Single(findings);
        Assert.StartsWith("Unknown corrosive liquid", finding.Cause, StringComparison.Ordinal);

        // Sodium chloride too: what is not known is never shown as no hazard.
        Assert.Equal(3, finding.Pairs.Count);
    }

    [Fact]
    public void Find_RadioactiveSamplesAmongElements_MakeNone() =>
        Assert.Empty(Find(Item("U", "uranium", At("C1", 1)), Item("T", "thorium", At("C1", 1)), Item("A", "gold", At("C1", 1)), Item("B", "iron", At("C1", 1)), Item("D", "ethanol", At("C1", 2))));

    [Fact]
    public void Find_CorrosiveLiquidAboveAnOxidiser_IsFoundOnlyWhenAbove()
    {
        var finding = Assert.Single(Find(Item("A", "sodium hydroxide 50%", At("C1", 2)), Item("B", "potassium nitrate", At("C1", 1))));
        Assert.Equal("49 CFR 177.848", finding.Source.Source);
        Assert.Empty(Find(Item("A", "sodium hydroxide 50%", At("C1", 1)), Item("B", "potassium nitrate", At("C1", 2))));
    }

    [Fact]
    public void Find_OxygenBesideFuelGasInTheNextCabinet_StillStandsTooNear()
    {
        // 29 CFR 1910.253(b)(4)(iii): 20 ft.
        Assert.Single(Find(Item("A", "oxygen", At("C1", 1, order: 1)), Item("B", "hydrogen", At("C2", 1, order: 2))));
        Assert.Empty(Find(Item("A", "oxygen", At("C1", 1, order: 1)), Item("B", "hydrogen", At("C3", 1, order: 3))));
        Assert.Empty(Find(Item("A", "oxygen", At("C1", 1)), Item("B", "hydrogen", OtherRoom("C2"))));
    }

    [Fact]
    public void Find_WorstComesFirst()
    {
        var findings = Find(
            Item("A", "iron", At("C1", 1)), Item("B", "iron(III) chloride 40%", At("C1", 1)),
            Item("D", "potassium cyanide", At("C2", 1)), Item("E", "hydrochloric acid 37%", At("C2", 1)));
        Assert.Equal(Separation.OwnCabinet, findings[0].Separation);
        Assert.Equal("acid with a cyanide", findings[0].Rule);
        Assert.Equal(Separation.OwnTray, findings[^1].Separation);
    }

    [Fact]
    public void WithoutPlace_ThingThatStandsNowhere_IsNamedAndNotJudged()
    {
        var lost = Item("A", "bromine", new Stand());
        ShelfItem[] items = [lost, Item("B", "sodium", At("C1", 1))];
        Assert.Empty(Find(items));
        Assert.Same(lost, Assert.Single(NeighbourFinder.WithoutPlace(items)));
    }
}
