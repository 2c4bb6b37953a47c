using Stockroom.Assessment.Neighbours;
using static Stockroom.Assessment.Tests.Neighbours.Shelves;

namespace Stockroom.Assessment.Tests.Neighbours;

// The scale is the house's own: same tray, own tray (each leak-tight, neither above the other), own cabinet, far apart
// (a cabinet that is not the next one, or another room).
public sealed class NearnessTests
{
    [Fact]
    public void Between_OneTray_IsSameTray() => Assert.Equal(Separation.SameTray, Nearness.Between(At("C1", 1, "T1"), At("C1", 1, "T1")));

    [Fact]
    public void Between_OneShelfWithoutTrays_IsSameTray() => Assert.Equal(Separation.SameTray, Nearness.Between(At("C1", 1), At("C1", 1)));

    [Fact]
    public void Between_OnlyOneInATray_IsSameTray() => Assert.Equal(Separation.SameTray, Nearness.Between(At("C1", 1, "T1"), At("C1", 1)));

    [Fact]
    public void Between_TwoLeakTightTraysOnOneShelf_IsOwnTray() => Assert.Equal(Separation.OwnTray, Nearness.Between(At("C1", 1, "T1"), At("C1", 1, "T2")));

    [Fact]
    public void Between_ATrayThatLeaks_IsSameTray() =>
        Assert.Equal(Separation.SameTray, Nearness.Between(At("C1", 1, "T1"), At("C1", 1, "T2") with { TrayIsLeakTight = false }));

    [Fact]
    public void Between_TraysOnShelvesAboveEachOther_IsSameTray() => Assert.Equal(Separation.SameTray, Nearness.Between(At("C1", 2, "T1"), At("C1", 1, "T2")));

    [Fact]
    public void Between_NextCabinet_IsOwnCabinet() => Assert.Equal(Separation.OwnCabinet, Nearness.Between(At("C1", 1, order: 1), At("C2", 1, order: 2)));

    [Fact]
    public void Between_CabinetsOfUnknownOrder_IsOwnCabinet() => Assert.Equal(Separation.OwnCabinet, Nearness.Between(At("C1", 1), At("C9", 1, order: 9)));

    [Fact]
    public void Between_CabinetThatIsNotTheNext_IsFarApart() => Assert.Equal(Separation.FarApart, Nearness.Between(At("C1", 1, order: 1), At("C3", 1, order: 3)));

    [Fact]
    public void Between_OtherRoom_IsFarApart() => Assert.Equal(Separation.FarApart, Nearness.Between(At("C1", 1), OtherRoom("C1")));

    [Fact]
    public void Between_NoPlace_IsNotKnown() => Assert.Null(Nearness.Between(new Stand(), At("C1", 1)));

    [Fact]
    public void Words_ParsedAgain_GiveTheSeparation()
    {
        foreach (var separation in Enum.GetValues<Separation>())
        {
            Assert.True(SeparationWords.TryParse(SeparationWords.Of(separation), out var again));
            Assert.Equal(separation, again);
        }

        Assert.False(SeparationWords.TryParse("next door", out _));
    }
}
