using System.Text.Json;

namespace Stockroom.Tests.Verbs;

public sealed class MarkVerbTests
{
    [Theory]
    [InlineData("pinned", "pinned")]
    [InlineData("hands-off", "hands_off")]
    public void Mark_SetAndLifted_ShowsAndIsGone(string mark, string member)
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 mL");
        keeper.Run("mark", id, mark, "--because", "cracked neck").Done();
        Assert.Equal("cracked neck", keeper.Run("show", id, "--json").Done().Json.GetProperty(member).GetString());
        keeper.Run("mark", id, mark, "--lift", "--because", "poured over").Done();
        Assert.Equal(JsonValueKind.Null, keeper.Run("show", id, "--json").Done().Json.GetProperty(member).ValueKind);
    }

    [Fact]
    public void Mark_OfPinned_DoesNotForbidTheKeeperToMoveIt()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 mL");
        keeper.Run("mark", id, "pinned", "--because", "shown there").Done();
        keeper.Run("move", id, "right-shelf").Done();
    }

    [Theory]
    [InlineData("the reason for pinning it is missing", "pinned")]
    [InlineData("the reason for hands off is missing", "hands-off")]
    [InlineData("is not pinned", "pinned", "--lift")]
    public void Mark_ThatCannotBe_IsRefusedInOneLine(string expected, params string[] words)
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 mL");
        Assert.Contains(expected, keeper.Run(["mark", id, .. words]).Refused(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Mark_OfAnUnknownSort_NamesThoseThereAre()
    {
        using var keeper = Keeper.WithSmallBook();
        Assert.Contains("pinned or hands-off", keeper.Run("mark", "K4T7X", "fragile").Refused(2), StringComparison.Ordinal);
    }
}
