using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Neighbours;
using Stockroom.Book;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Tests.Holdings;

/// <summary>Outer packing that holds what leaks counts as a tray; what lies over a content counts among its families.</summary>
public sealed class PackingAndCoverTests
{
    // Iron and copper with hydrochloric acid need a tray each: 40 CFR 264 Appendix V group 2; the acid's air is shut in by the fan.
    [Theory]
    [InlineData(null, null, Separation.SameTray)]
    [InlineData("can with absorbent", null, Separation.SameTray)]
    [InlineData("can with absorbent", "capped can with absorbent", Separation.OwnTray)]
    [InlineData("bag", "bag", Separation.SameTray)]
    [InlineData("capped tube", "can with absorbent", Separation.SameTray)]
    public void Stand_InACanWithAbsorbent_IsAsInATrayOfItsOwn(string? one, string? other, Separation expected)
    {
        var shelf = new Shelf();
        var a = Put(shelf, "hydrochloric acid 37%", one);
        var b = Put(shelf, "iron", other);
        Assert.Equal(expected, Nearness.Between(shelf.Stock.Of(a).Stand, shelf.Stock.Of(b).Stand));
    }

    [Fact]
    public void Stand_CanBesideATray_IsOwnTray()
    {
        var shelf = new Shelf();
        shelf.Place("t", "tray", "near-low", new PlaceLimits { LeakTight = true });
        var a = Put(shelf, "hydrochloric acid 37%", "can with absorbent");
        var b = Put(shelf, "iron", null, "t");
        Assert.Equal(Separation.OwnTray, Nearness.Between(shelf.Stock.Of(a).Stand, shelf.Stock.Of(b).Stand));
    }

    // Water over phosphorus would set off sodium; the oil over sodium is what an oxidiser burns.
    [Theory]
    [InlineData("phosphorus (white)", "water", "sodium", null, "water-based liquid beside something that water sets off")]
    [InlineData("bromine", "sulfuric acid 98%", "sodium chlorate", null, "strong oxidiser salt with an acid")]
    public void Find_CoverAgainstNeighbour_IsFound(string content, string cover, string other, string? otherCover, string rule)
    {
        var shelf = new Shelf();
        Covered(shelf, content, cover);
        Covered(shelf, other, otherCover);
        var with = shelf.Stock.Holdings.ToList();
        var reasons = new PairJudge().Judge(with[0].Profile, with[1].Profile).Reasons.Select(r => r.Cause).ToList();
        Assert.Contains(rule, reasons);
        var bare = new PairJudge().Judge(Neighbours.Profiles.Of(content), Neighbours.Profiles.Of(other)).Reasons.Select(r => r.Cause);
        Assert.DoesNotContain(rule, bare);
    }

    [Fact]
    public void Find_SameContentUnderDifferentCovers_IsNoConflict()
    {
        var shelf = new Shelf();
        Covered(shelf, "sodium", "paraffin oil");
        Covered(shelf, "sodium", "argon");
        Covered(shelf, "sodium", null);
        Covered(shelf, "potassium", "paraffin oil");
        Assert.Empty(shelf.Stock.Findings);
    }

    [Fact]
    public void Profile_UnderALiquidCover_IsOneThatRuns()
    {
        var shelf = new Shelf();
        var id = Covered(shelf, "phosphorus (white)", "water");
        Assert.True(shelf.Stock.Of(id).Profile.IsLiquid);
        Assert.Contains(shelf.Stock.Of(id).Profile.Families, f => f.Because.StartsWith("its cover, water", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cabinet", null, true)]
    [InlineData("cabinet", 9, true)]
    [InlineData("cabinet", 10, false)]
    [InlineData("ventilated cabinet", null, false)]
    [InlineData("ventilated cabinet", 2, true)]
    public void Air_OfACabinet_IsSharedUnlessChangedTenTimesAnHour(string kind, int? changes, bool shared)
    {
        var shelf = new Shelf();
        shelf.Place("c", kind, "room", new PlaceLimits { AirChangesPerHour = changes });
        var a = Put(shelf, "hydrochloric acid 37%", null, "c");
        var b = Put(shelf, "ammonia solution 25%", null, "c");
        Assert.Equal(shared, Nearness.SharesAir(shelf.Stock.Of(a).Stand, shelf.Stock.Of(b).Stand));
    }

    private static ContainerId Put(Shelf shelf, string content, string? packing, string place = "near-low") => shelf.Put(new IntakeRequest
    {
        Content = content, Amount = "50 g", Vessel = "glass reagent bottle 100 mL", Closure = "screw cap, PTFE-faced liner", Place = place, Packing = packing,
    });

    private static ContainerId Covered(Shelf shelf, string content, string? cover) => shelf.Put(new IntakeRequest
    {
        Content = content, Amount = "20 g", Vessel = "glass reagent bottle 100 mL", Closure = "screw cap, PTFE-faced liner", Place = "near-low",
        Cover = cover, CoverDepthMillimetres = cover is null or "argon" ? null : 20,
    });
}
