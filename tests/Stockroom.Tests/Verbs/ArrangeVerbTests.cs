using System.Text.Json;

namespace Stockroom.Tests.Verbs;

public sealed class ArrangeVerbTests
{
    [Fact]
    public void Arrange_OfTheDemo_PartsWhatWasPlantedInTwoMoves()
    {
        using var keeper = Keeper.WithDemo();
        var answer = keeper.Run("arrange", "--json");
        Assert.Equal(1, answer.Code);
        var moves = answer.Json.GetProperty("moves").EnumerateArray().ToList();
        Assert.Equal(2, moves.Count);

        var ammonia = Only(moves, keeper.IdOf("ammonia solution 25%"));
        Assert.Equal("acid-tray", ammonia.GetProperty("from").GetString());
        Assert.StartsWith("alkali", ammonia.GetProperty("to").GetString(), StringComparison.Ordinal);
        Assert.Contains("bromine", ammonia.GetProperty("because").GetString(), StringComparison.Ordinal);

        var acid = Only(moves, keeper.IdOf("sulfuric acid 37%"));
        Assert.Equal("fire-upper", acid.GetProperty("from").GetString());
        Assert.Equal("sulfuric-tray", acid.GetProperty("to").GetString());
        Assert.Contains("stands above", acid.GetProperty("because").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Arrange_OfTheDemo_LeavesTheOrphanAndNamesTheCabinetThatWouldDo()
    {
        using var keeper = Keeper.WithDemo();
        var json = keeper.Run("arrange", "--json").Json;
        var orphan = keeper.IdOf("unknown corrosive liquid");
        Assert.Equal(orphan, Assert.Single(json.GetProperty("left").EnumerateArray()).GetProperty("id").GetString());
        var extra = Assert.Single(json.GetProperty("extra_places").EnumerateArray());
        Assert.Equal("ventilated cabinet", extra.GetProperty("kind").GetString());
        Assert.Equal("prep", extra.GetProperty("inside").GetString());
        Assert.Equal(orphan, Assert.Single(extra.GetProperty("for").EnumerateArray()).GetString());
    }

    [Fact]
    public void Arrange_OfTheDemo_SaysWhatMovesPassTheUntouchableEther()
    {
        using var keeper = Keeper.WithDemo();
        var untouched = Assert.Single(keeper.Run("arrange", "--json").Json.GetProperty("hands_off").EnumerateArray());
        Assert.Equal(keeper.IdOf("diisopropyl ether"), untouched.GetProperty("id").GetString());
        Assert.Contains("sulfuric acid 37%", untouched.GetProperty("because").GetString(), StringComparison.Ordinal);
    }

    // The plan is made, as a keeper would; then only what was left is still found, and nothing more is proposed.
    [Fact]
    public void Arrange_AfterItsMovesWereMade_ProposesNoMore()
    {
        using var keeper = Keeper.WithDemo();
        MakeTheMoves(keeper);
        var again = keeper.Run("arrange", "--json");
        Assert.Empty(again.Json.GetProperty("moves").EnumerateArray());
        var orphan = keeper.IdOf("unknown corrosive liquid");
        var findings = keeper.Run("neighbours", "--json").Json.GetProperty("findings").EnumerateArray().SelectMany(f => f.GetProperty("pairs").EnumerateArray());
        Assert.All(findings, p => Assert.Contains(orphan, new[] { p.GetProperty("a").GetString(), p.GetProperty("b").GetString() }));
    }

    [Fact]
    public void Arrange_OfTheDemo_ReadsAsSentences()
    {
        using var keeper = Keeper.WithDemo();
        var answer = keeper.Run("arrange");
        Assert.StartsWith("2 moves, in an order in which no step makes anything worse; 1 without a safe place", answer.Out, StringComparison.Ordinal);
        Assert.Contains("1. Move ", answer.Out, StringComparison.Ordinal);
        Assert.Contains("Would help: One more ventilated cabinet in prep room", answer.Out, StringComparison.Ordinal);
        Assert.Contains("Hands off: ", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Arrange_OfAStoreThatStandsAsItShould_IsDone()
    {
        using var keeper = Keeper.WithSmallBook();
        keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 mL");
        var answer = keeper.Run("arrange").Done();
        Assert.StartsWith("everything stands as it should", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Arrange_OfAPinnedContainer_MovesTheOther()
    {
        using var keeper = Keeper.WithSmallBook();
        var acid = keeper.Add("nitric acid 65%", "--place", "left-shelf", "--amount", "100 mL");
        var acetone = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 mL");
        foreach (var (pinned, other) in new[] { (acid, acetone), (acetone, acid) })
        {
            keeper.Run("mark", pinned, "pinned", "--because", "fixed to the wall").Done();
            var move = Assert.Single(keeper.Run("arrange", "--json").Done().Json.GetProperty("moves").EnumerateArray());
            Assert.Equal(other, move.GetProperty("id").GetString());
            keeper.Run("mark", pinned, "pinned", "--lift").Done();
        }
    }

    // What a place rule finds, the arrangement puts right: here a corrosive liquid above eye level.
    [Fact]
    public void Arrange_OfWhatAPlaceRuleFinds_PutsItRight()
    {
        using var keeper = Keeper.WithSmallBook();
        keeper.Run("place", "limit", "left-shelf", "--height", "1.8").Done();
        keeper.Run("place", "limit", "right-shelf", "--height", "0.6").Done();
        var acid = keeper.Add("nitric acid 65%", "--place", "left-shelf", "--amount", "100 mL");
        Assert.Equal(1, keeper.Run("neighbours").Code);
        var move = Assert.Single(keeper.Run("arrange", "--json").Done().Json.GetProperty("moves").EnumerateArray());
        Assert.Equal((acid, "right-shelf"), (move.GetProperty("id").GetString(), move.GetProperty("to").GetString()));
        MakeTheMoves(keeper);
        Assert.Equal(0, keeper.Run("neighbours").Code);
    }

    [Fact]
    public void Arrange_OfAPlaceThatHoldsTooMuch_MovesWhatIsTooMuch()
    {
        using var keeper = Keeper.WithSmallBook();
        keeper.Run("place", "limit", "left-shelf", "--max-containers", "1").Done();
        keeper.Add("sodium chloride", "--place", "left-shelf", "--amount", "100 g");
        keeper.Add("sucrose", "--place", "left-shelf", "--amount", "100 g");
        Assert.Single(keeper.Run("arrange", "--json").Done().Json.GetProperty("moves").EnumerateArray());
        MakeTheMoves(keeper);
        Assert.Equal(0, keeper.Run("neighbours").Code);
    }

    // The sea table asks for more than contact does, so more has to move or finds no place.
    [Fact]
    public void Arrange_UnderAClassTable_HeedsIt()
    {
        using var keeper = Keeper.WithDemo();
        var contact = keeper.Run("arrange", "--json").Json;
        var sea = keeper.Run("arrange", "--table", "sea", "--json").Json;
        Assert.True(sea.GetProperty("moves").GetArrayLength() + sea.GetProperty("left").GetArrayLength() > contact.GetProperty("moves").GetArrayLength() + contact.GetProperty("left").GetArrayLength());
    }

    [Fact]
    public void ArrangeFor_AContainer_NamesTheBestPlacesFirst()
    {
        using var keeper = Keeper.WithDemo();
        MakeTheMoves(keeper);
        var answer = keeper.Run("arrange", "--for", keeper.IdOf("acetone"), "--json").Done();
        var places = answer.Json.GetProperty("places").EnumerateArray().ToList();
        Assert.StartsWith("fire-", places[0].GetProperty("id").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("acid-tray", places.Select(p => p.GetProperty("id").GetString()));
        Assert.Contains("acid-tray", answer.Json.GetProperty("unsafe").EnumerateArray().Select(p => p.GetProperty("id").GetString()));
    }

    [Fact]
    public void ArrangeContent_NotYetBooked_NamesPlacesForIt()
    {
        using var keeper = Keeper.WithDemo();
        MakeTheMoves(keeper);
        var answer = keeper.Run("arrange", "--content", "nitric acid 65%", "--json").Done();
        Assert.Equal(JsonValueKind.Null, answer.Json.GetProperty("id").ValueKind);
        Assert.Equal("nitric-tray", answer.Json.GetProperty("places")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void ArrangeFor_TheOrphan_FindsNoPlaceAndExitsWithAttention()
    {
        using var keeper = Keeper.WithDemo();
        var answer = keeper.Run("arrange", "--for", keeper.IdOf("unknown corrosive liquid"), "--json");
        Assert.Equal(1, answer.Code);
        Assert.Empty(answer.Json.GetProperty("places").EnumerateArray());
        Assert.NotEmpty(answer.Json.GetProperty("unsafe").EnumerateArray());
    }

    [Fact]
    public void Arrange_ForAndContentTogether_AreRefused()
    {
        using var keeper = Keeper.WithSmallBook();
        Assert.Contains("give one of them", keeper.Run("arrange", "--for", "K4T7X", "--content", "acetone").Refused(2), StringComparison.Ordinal);
    }

    private static void MakeTheMoves(Keeper keeper)
    {
        foreach (var move in keeper.Run("arrange", "--json").Json.GetProperty("moves").EnumerateArray())
            keeper.Run("move", move.GetProperty("id").GetString()!, move.GetProperty("to").GetString()!).Done();
    }

    private static JsonElement Only(IEnumerable<JsonElement> moves, string id) => moves.Single(m => m.GetProperty("id").GetString() == id);
}
