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

    // Hydrochloric acid of 37 % in an open bottle fumes down to some 20 % (common practice): past 30 % within the year, never past 15 %.
    [Fact]
    public void Mark_OfALeastStrength_IsShownForecastAndDue()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add(
            "hydrochloric acid 37%", "--place", "left-shelf", "--amount", "50 mL", "--vessel", "glass reagent bottle 100 mL", "--closure", "none", "--on", "2025-06-15", "--least-strength", "30 %");
        var shown = keeper.Run("show", id, "--json").Done().Json;
        Assert.Equal(30, shown.GetProperty("least_strength_percent").GetDecimal());
        Assert.Contains(shown.GetProperty("reaches").EnumerateArray(), r => r.GetProperty("limit").GetString() == "hydrogen chloride below 30 %" || r.GetProperty("limit").GetString() == "hydrochloric acid below 30 %");
        Assert.Contains("replace it, or assay it", shown.GetProperty("due").EnumerateArray().Select(d => d.GetString()));
        Assert.Contains("least strength: 30 %, set by the keeper", keeper.Run("show", id).Done().Out, StringComparison.Ordinal);
        keeper.Run("mark", id, "least-strength", "--percent", "15", "--because", "for cleaning").Done();
        var weaker = keeper.Run("show", id, "--json").Done().Json;
        Assert.Equal(15, weaker.GetProperty("least_strength_percent").GetDecimal());
        Assert.DoesNotContain("replace it, or assay it", weaker.GetProperty("due").EnumerateArray().Select(d => d.GetString()));
        Assert.Contains("least strength: 15 %, for cleaning", keeper.Run("ledger", id).Done().Out, StringComparison.Ordinal);
        Assert.Contains("never below use", keeper.Run("forecast", id).Done().Out, StringComparison.Ordinal);
        keeper.Run("mark", id, "least-strength", "--lift").Done();
        Assert.Equal(JsonValueKind.Null, keeper.Run("show", id, "--json").Done().Json.GetProperty("least_strength_percent").ValueKind);
    }

    [Theory]
    [InlineData("is set with a percentage", "least-strength")]
    [InlineData("is set with a percentage", "pinned", "--percent", "30")]
    [InlineData("is set with a percentage", "least-strength", "--percent", "30", "--lift")]
    [InlineData("more than 0 and less than 100", "least-strength", "--percent", "100")]
    [InlineData("more than 0 and less than 100", "least-strength", "--percent", "0")]
    [InlineData("is not a least strength in per cent", "least-strength", "--percent", "half")]
    [InlineData("has no least strength of its own", "least-strength", "--lift")]
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
