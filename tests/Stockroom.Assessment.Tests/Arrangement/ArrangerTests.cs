using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Tests.Neighbours;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Arrangement;

public sealed class ArrangerTests
{
    private static readonly Spot[] TwoCabinets = [Build.Spot("left", 1), Build.Spot("right", 1)];

    [Fact]
    public void NothingAtAll_IsArranged_WithoutAWord()
    {
        var plan = Build.Plan(Build.Of([]));
        Assert.Empty(plan.Moves);
        Assert.Empty(plan.Left);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void OneThing_WhereItMayStand_IsNotMoved()
    {
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "acetone", "left-1")));
        Assert.Empty(plan.Moves);
        Assert.Empty(plan.Left);
    }

    // Acid with cyanide: hydrogen cyanide; a cabinet each (common practice).
    [Fact]
    public void TwoThatNeedACabinetEach_InOne_OneIsMoved()
    {
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "hydrochloric acid 37%", "left-1"), Build.Thing("B", "potassium cyanide", "left-1")));
        var move = Assert.Single(plan.Moves);
        Assert.Equal("right-1", move.To);
        Assert.Contains("hydrogen cyanide", move.Because, StringComparison.Ordinal);
        Assert.Empty(plan.Left);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void FewAgainstMany_TheFewAreMoved()
    {
        var plan = Build.Plan(Build.Of(
            TwoCabinets,
            Build.Thing("A", "hydrochloric acid 37%", "left-1"),
            Build.Thing("B", "potassium cyanide", "left-1"),
            Build.Thing("C", "sodium cyanide", "left-1"),
            Build.Thing("D", "potassium cyanide", "left-1")));
        Assert.Equal(["A: left-1 > right-1"], plan.Steps());
    }

    [Fact]
    public void Pinned_IsNotMoved_TheOtherIs()
    {
        var plan = Build.Plan(Build.Of(
            TwoCabinets,
            Build.Thing("A", "hydrochloric acid 37%", "left-1") with { Pinned = "shown with its case" },
            Build.Thing("B", "potassium cyanide", "left-1"),
            Build.Thing("C", "sodium cyanide", "left-1")));
        Assert.Equal(["B: left-1 > right-1", "C: left-1 > right-1"], plan.Steps());
    }

    [Fact]
    public void TwoPinned_AtOdds_OneIsLeftAndSaysSo()
    {
        var plan = Build.Plan(Build.Of(
            TwoCabinets,
            Build.Thing("A", "hydrochloric acid 37%", "left-1") with { Pinned = "shown with its case" },
            Build.Thing("B", "potassium cyanide", "left-1") with { Pinned = "locked there" }));
        Assert.Empty(plan.Moves);
        Assert.Contains("pinned", Assert.Single(plan.Left).Because, StringComparison.Ordinal);
        Assert.Empty(plan.ExtraPlaces);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void HandsOff_IsNeitherMovedNorPassedInSilence()
    {
        var plan = Build.Plan(Build.Of(
            TwoCabinets,
            Build.Thing("A", "diisopropyl ether", "left-1") with { HandsOff = "white crystals under the cap" },
            Build.Thing("B", "sulfuric acid 98%", "left-1")));
        Assert.Equal(["B: left-1 > right-1"], plan.Steps());
        var untouched = Assert.Single(plan.HandsOff);
        Assert.Equal(("A", 1), (untouched.Key, untouched.MovesNear));
        Assert.Contains("White crystals under the cap", untouched.Because, StringComparison.Ordinal);
        Assert.Contains("sulfuric acid 98%", untouched.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void HandsOff_WithNothingToDoNearIt_IsStillNamed()
    {
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "diisopropyl ether", "left-1") with { HandsOff = "crystals" }));
        Assert.Contains("No move begins or ends", Assert.Single(plan.HandsOff).Because, StringComparison.Ordinal);
    }

    // Of two equally good cabinets the one without the untouchable is taken.
    [Fact]
    public void HandsOff_IsNotGivenNewNeighbours_WhereAnotherPlaceDoes()
    {
        Spot[] spots = [Build.Spot("a", 1), Build.Spot("b", 1), Build.Spot("c", 1)];
        var plan = Build.Plan(Build.Of(
            spots,
            Build.Thing("A", "sodium chloride", "b-1") with { HandsOff = "the bottle is cracked" },
            Build.Thing("B", "sulfuric acid 98%", "a-1"),
            Build.Thing("C", "acetone", "a-1"),
            Build.Thing("D", "ethanol 96%", "a-1")));
        Assert.Equal(["B: a-1 > c-1"], plan.Steps());
    }

    // Hydrogen and oxygen want 20 ft between them: 29 CFR 1910.253(b)(4)(iii).
    [Fact]
    public void TwoThatMustStandFarApart_InOneRoomWithoutADistance_OneIsLeft()
    {
        var plan = Build.Plan(Build.Of([Build.Spot("left", 1, order: 1), Build.Spot("right", 1, order: 2)], Build.Thing("A", "hydrogen", "left-1"), Build.Thing("B", "oxygen", "right-1")));
        Assert.Empty(plan.Moves);
        Assert.Single(plan.Left);
        var extra = Assert.Single(plan.ExtraPlaces);
        Assert.Equal("prep room", extra.Inside);
        Assert.Contains("not next to another", extra.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoThatMustStandFarApart_WithAThirdCabinetBeyond_OneGoesThere()
    {
        var plan = Build.Plan(Build.Of(
            [Build.Spot("left", 1, order: 1), Build.Spot("right", 1, order: 2), Build.Spot("end", 1, order: 4)],
            Build.Thing("A", "hydrogen", "left-1") with { Pinned = "chained there" },
            Build.Thing("B", "oxygen", "right-1")));
        Assert.Equal(["B: right-1 > end-1"], plan.Steps());
    }

    [Fact]
    public void NoCabinetToSpare_LeavesOneAndNamesTheCabinetThatWouldDo()
    {
        var plan = Build.Plan(Build.Of([Build.Spot("only", 1)], Build.Thing("A", "hydrochloric acid 37%", "only-1"), Build.Thing("B", "potassium cyanide", "only-1")));
        Assert.Empty(plan.Moves);
        var left = Assert.Single(plan.Left);
        Assert.Equal([left.Key], Assert.Single(plan.ExtraPlaces).For);
        Assert.Contains("cabinet", plan.ExtraPlaces[0].Kind, StringComparison.Ordinal);
    }

    // A tray each is enough, so a tray is what is missing.
    [Fact]
    public void OwnTrayNeeded_WithOneTrayThere_NamesATray()
    {
        var (mild, other) = Pairs.NeedingATrayEach();
        var plan = Build.Plan(Build.Of([Build.Spot("only", 1), Build.Spot("only", 1, "tray")], Build.Thing("A", mild, "tray"), Build.Thing("B", other, "only-1")));
        Assert.Empty(plan.Moves);
        Assert.Equal("tray", Assert.Single(plan.ExtraPlaces).Kind);
    }

    [Fact]
    public void OwnTrayNeeded_WithASecondTray_OneIsPutThere()
    {
        var (mild, other) = Pairs.NeedingATrayEach();
        var plan = Build.Plan(Build.Of([Build.Spot("only", 1, "tray a"), Build.Spot("only", 1, "tray b")], Build.Thing("A", mild, "tray a"), Build.Thing("B", other, "tray a")));
        Assert.Single(plan.Moves);
        Assert.Empty(plan.Left);
    }

    // 49 CFR 177.848(e)(3), by analogy: a corrosive liquid not above what burns or feeds a fire.
    [Fact]
    public void NeverAbove_IsPutRight_AndNotProposed()
    {
        Spot[] spots = [Build.Spot("only", 1, "tray a"), Build.Spot("only", 2, "tray b"), Build.Spot("only", 1, "tray c")];
        var (corrosive, below) = Pairs.NeverAbove();
        var plan = Build.Plan(Build.Of(spots, Build.Thing("A", corrosive, "tray b"), Build.Thing("B", below, "tray a") with { Pinned = "heavy" }));
        Assert.Equal(["A: tray b > tray c"], plan.Steps());
    }

    // Iodine attacks metals by its vapour (common practice); a sealed ampoule breathes nothing out.
    [Fact]
    public void Vapour_InSharedAir_IsMovedUnlessSealedOrVentilated()
    {
        Shelving Store(bool isSealed, PlaceKind kind) => Build.Of(
            [Build.Spot("a", 1, "tray a", kind: kind), Build.Spot("a", 1, "tray b", kind: kind), Build.Spot("b", 1)],
            Build.Thing("A", "iodine", "tray a") with { IsFlameSealed = isSealed },
            Build.Thing("B", "copper", "tray b") with { Pinned = "shown there" });

        Assert.Equal(["A: tray a > b-1"], Build.Plan(Store(false, PlaceKind.Cabinet)).Steps());
        Assert.Empty(Build.Plan(Store(true, PlaceKind.Cabinet)).Moves);
        Assert.Empty(Build.Plan(Store(false, PlaceKind.VentilatedCabinet)).Moves);
    }

    // A can with absorbent counts as a tray of its own, but no more than that.
    [Fact]
    public void OwnPacking_CountsAsATray_AndNotAsACabinet()
    {
        var (mild, other) = Pairs.NeedingATrayEach();
        Spot[] spots = [Build.Spot("a", 1, "tray"), Build.Spot("b", 1)];
        Assert.Empty(Build.Plan(Build.Of(spots, Build.Thing("A", mild, "tray") with { IsInOwnPacking = true }, Build.Thing("B", other, "tray"))).Moves);
        Assert.Single(Build.Plan(Build.Of(spots, Build.Thing("A", mild, "tray"), Build.Thing("B", other, "tray"))).Moves);
        Assert.Single(Build.Plan(Build.Of(
            spots, Build.Thing("A", "potassium cyanide", "tray") with { IsInOwnPacking = true }, Build.Thing("B", "nitric acid 65%", "tray") with { IsInOwnPacking = true })).Moves);
    }

    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 0)]
    public void Ban_OfTheSpotItStandsIn_MovesItOnlyWhereItMustLeave(bool mustLeave, int moves)
    {
        var bans = new Dictionary<string, Ban>(StringComparer.Ordinal) { ["left-1"] = new("corrosive liquid above eye level", mustLeave) };
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "nitric acid 65%", "left-1") with { Bans = bans }));
        Assert.Equal(moves, plan.Moves.Count);
        Assert.All(plan.Moves, m => Assert.Contains("must not stand on left-1: corrosive liquid above eye level", m.Because, StringComparison.Ordinal));
    }

    [Fact]
    public void Ban_OfEveryOtherSpot_LeavesIt()
    {
        var bans = new Dictionary<string, Ban>(StringComparer.Ordinal) { ["right-1"] = new("next to a hot thing", false) };
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "acetone", "left-1") with { Bans = bans }, Build.Thing("B", "nitric acid 65%", "left-1") with { Pinned = "built in" }));
        Assert.Equal("A", Assert.Single(plan.Left).Key);
    }

    [Fact]
    public void Unplaced_IsGivenAPlace()
    {
        var plan = Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "acetone", null), Build.Thing("B", "nitric acid 65%", "left-1")));
        var move = Assert.Single(plan.Moves);
        Assert.Equal(("A", (string?)null, "right-1"), (move.Key, move.From, move.To));
        Assert.Contains("has no place yet", move.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Unplaced_WithNoPlaceAtAll_IsLeft()
    {
        var plan = Build.Plan(Build.Of([], Build.Thing("A", "acetone", null)));
        Assert.Equal("A", Assert.Single(plan.Left).Key);
    }

    [Fact]
    public void Orphan_InOpenShelving_IsLeftWithTheCabinetThatWouldDo()
    {
        var orphan = new Thing("A", "unknown liquid", Profiles.Orphan(MatterState.Liquid)) { Spot = "left-1" };
        var plan = Build.Plan(new Shelving([orphan, Build.Thing("B", "acetone", "right-1") with { Pinned = "built in" }], [Build.Spot("left", 1, kind: PlaceKind.OpenShelf), Build.Spot("right", 1)], []));
        Assert.Equal("A", Assert.Single(plan.Left).Key);
        Assert.Equal("ventilated cabinet", Assert.Single(plan.ExtraPlaces).Kind);
    }

    // Two unknowns are each other's enemy; one known content is not its own.
    [Fact]
    public void TwoOrphans_InOneCabinet_AreParted()
    {
        Thing Orphan(string key) => new(key, "unknown liquid", Profiles.Orphan(MatterState.Liquid)) { Spot = "left-1" };
        Assert.Single(Build.Plan(Build.Of(TwoCabinets, Orphan("A"), Orphan("B"))).Moves);
        Assert.Empty(Build.Plan(Build.Of(TwoCabinets, Build.Thing("A", "acetone", "left-1"), Build.Thing("B", "acetone", "left-1"))).Moves);
    }

    [Fact]
    public void Search_Cancelled_StopsAtOnce()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(() => Arranger.Propose(
            Build.Of(TwoCabinets, Build.Thing("A", "hydrochloric acid 37%", "left-1"), Build.Thing("B", "potassium cyanide", "left-1"), Build.Thing("C", "sodium", "left-1")), cancel: cancelled.Token));
    }
}
