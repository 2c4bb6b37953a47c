using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>What add, move, weigh, correct and undo book, and what they refuse.</summary>
public sealed class WritingVerbTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithSmallBook();

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void Add_Volume_KeepsItAsTypedBesideTheMassBooked()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf", "--amount", "20 mL", "--vessel", "glass vial 40 mL", "--closure", "screw cap, PTFE-faced liner");
        var shown = Show(id);
        Assert.Equal("20 mL", shown.GetProperty("quantity").GetString());
        Assert.InRange(shown.GetProperty("net_g").GetDouble(), 15.7, 15.9); // CRC Handbook: 0.7900 g/mL at 20 C
        Assert.Equal(20m * shown.GetProperty("density_g_ml").GetDecimal(), shown.GetProperty("net_g").GetDecimal());
        Assert.NotEqual("", shown.GetProperty("density_source").GetString());
    }

    [Fact]
    public void Add_Acknowledged_PrintsTheNumberOfTheEntryThatIsInTheJournal()
    {
        var answer = _keeper.Run("add", "acetone", "--place", "left-shelf", "--opened", "2026-06-15", "--json").Done();
        Assert.Equal(6, answer.Json.GetProperty("entry").GetInt32());
        Assert.Equal([6, 7], answer.Json.GetProperty("entries").EnumerateArray().Select(e => e.GetInt32()));
        Assert.Contains(answer.Json.GetProperty("id").GetString()!, File.ReadAllLines(_keeper.Journal)[^1], StringComparison.Ordinal);
        Assert.Equal(6, File.ReadAllLines(_keeper.Journal).Length);
        Assert.StartsWith("entry 8: ", _keeper.Run("add", "water", "--place", "left-shelf").Done().Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("left cabinet")]
    [InlineData("store > left cabinet")]
    [InlineData("left")]
    public void Add_PlaceByIdNameOrPath_IsFound(string place) =>
        Assert.Equal("left", Show(_keeper.Add("water", "--place", place)).GetProperty("place").GetString());

    [Fact]
    public void Add_Orphan_KeepsWhatIsSeenAndWhoFoundIt()
    {
        var shown = Show(_keeper.Add("orphan", "--place", "left-shelf", "--seen", "brown crystals, label gone", "--found-by", "Piet Holm"));
        Assert.True(shown.GetProperty("orphan").GetBoolean());
        Assert.Equal("brown crystals, label gone", shown.GetProperty("seen").GetString());
        Assert.Equal("Piet Holm", shown.GetProperty("found_by").GetString());
        Assert.Equal("found", shown.GetProperty("lot").GetProperty("how").GetString());
        Assert.Equal(JsonValueKind.Null, shown.GetProperty("net_g").ValueKind);
        Assert.NotEmpty(shown.GetProperty("hazard_statements").EnumerateArray());
    }

    [Fact]
    public void Add_Mix_KeepsItsComposition()
    {
        var shown = Show(_keeper.Add("drain cleaner", "--mix", "sodium hydroxide=10%; water=90%", "--place", "left-shelf"));
        Assert.Equal([10m, 90m], shown.GetProperty("composition").EnumerateArray().Select(p => p.GetProperty("percent").GetDecimal()));
        Assert.Contains(shown.GetProperty("categories").EnumerateArray(), c => c.GetString()!.StartsWith("Skin Corr. 1", StringComparison.Ordinal)); // CLP Annex VI: from 5 % Skin Corr. 1A
        Assert.Equal("made", shown.GetProperty("lot").GetProperty("how").GetString());
    }

    [Fact]
    public void Place_NameOf200Characters_IsKeptWholeAndShown()
    {
        var name = "shelf " + new string('x', 194);
        _keeper.Run("place", "add", name, "--kind", "shelf", "--inside", "left", "--id", "long").Done();
        var id = _keeper.Add("acetone", "--place", "long", "--amount", "5 g");
        Assert.EndsWith(name, Show(id).GetProperty("place_path").GetString(), StringComparison.Ordinal);
        Assert.Contains(name, _keeper.Run("places").Done().Out, StringComparison.Ordinal);
        Assert.InRange(_keeper.Run("label", id, "--out", Path.Combine(_keeper.Folder, "x.pdf")).Code, 0, 1);
    }

    [Fact]
    public void Move_ToWhereItStands_IsRefused()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf");
        Assert.Contains("already stands in 'left shelf'", Unchanged("move", id, "left-shelf"), StringComparison.Ordinal);
        _keeper.Run("move", id, "right-shelf").Done();
        Assert.Equal("right-shelf", Show(id).GetProperty("place").GetString());
    }

    [Theory]
    [InlineData("2026-06-01", "received on 2026-06-10")]
    [InlineData("2026-06-18", "lies in the future")]
    public void Move_OnAnImpossibleDay_IsRefused(string day, string words)
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf", "--on", "2026-06-10");
        Assert.Contains(words, Unchanged("move", id, "right-shelf", "--on", day), StringComparison.Ordinal);
        Assert.Contains(words, Unchanged("weigh", id, "120", "--on", day), StringComparison.Ordinal);
    }

    [Fact]
    public void Weigh_LessThanTheEmptyVessel_IsRefused()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf", "--tare", "80");
        Assert.Contains("less than its tare of 80 g", Unchanged("weigh", id, "79.9"), StringComparison.Ordinal);
        _keeper.Run("weigh", id, "132.75 g", "--readability", "0.01").Done();
        Assert.Equal(132.75m, Show(id).GetProperty("last_gross_g").GetDecimal());
    }

    [Theory]
    [InlineData("-5")]
    [InlineData("0")]
    [InlineData("heavy")]
    [InlineData("10000000000")]
    [InlineData("79228162514264337593543950336")]
    public void Weigh_MassThatCannotBe_IsRefused(string grams)
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf");
        Assert.Contains("gross mass", Unchanged("weigh", "--", id, grams), StringComparison.Ordinal);
    }

    [Fact]
    public void HandsOff_WithoutForce_IsNeitherMovedNorWeighed()
    {
        using var keeper = Keeper.WithDemo();
        var before = File.ReadAllBytes(keeper.Journal);
        foreach (var typed in (string[][])[["move", "MM451", "sink-shelf"], ["weigh", "MM451", "200"]])
            Assert.Contains("marked hands off (white crystals under the cap): do not move, open or weigh it", keeper.Run(typed).Refused(2), StringComparison.Ordinal);
        Assert.Contains("needs a reason", keeper.Run("move", "MM451", "sink-shelf", "--force", " ").Refused(2), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(keeper.Journal));
        keeper.Run("move", "MM451", "sink-shelf", "--force", "taken by the disposal squad").Done();
        Assert.Contains("taken by the disposal squad", keeper.Run("ledger", "MM451", "--json").Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_LastTransaction_TakesItBackAndIsItselfAnEntry()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf");
        _keeper.Run("move", id, "right-shelf").Done();
        _keeper.Run("undo", "--because", "wrong bottle").Done();
        Assert.Equal("left-shelf", Show(id).GetProperty("place").GetString());
        _keeper.Run("undo").Done();
        Assert.Contains("there is no container", _keeper.Run("show", id).Refused(2), StringComparison.Ordinal);
        Assert.Equal(["undone", "undone"], AllKinds().TakeLast(2));
        Assert.NotEqual(id, _keeper.Add("acetone", "--place", "left-shelf"));
    }

    [Fact]
    public void Undo_WhenSomethingRestsOnIt_IsRefused()
    {
        var received = _keeper.Run("add", "acetone", "--place", "left-shelf", "--json").Done().Json;
        var id = received.GetProperty("id").GetString()!;
        _keeper.Run("move", id, "right-shelf").Done();
        var transaction = received.GetProperty("transaction").GetInt64();
        Assert.Contains($"transaction {transaction} cannot be undone: entry 7 (moved, 2026-06-15) rests on it", Unchanged("undo", "--transaction", $"{transaction}"), StringComparison.Ordinal);
        Assert.Contains("transaction 1 cannot be undone", Unchanged("undo", "--transaction", "1"), StringComparison.Ordinal);
        _keeper.Run("undo").Done();
        _keeper.Run("undo", "--transaction", $"{transaction}").Done();
        Assert.Contains("already undone", Unchanged("undo", "--transaction", $"{transaction}"), StringComparison.Ordinal);
        Assert.Contains("there is no transaction 99 to undo", Unchanged("undo", "--transaction", "99"), StringComparison.Ordinal);
        Assert.Contains("'last' is not the number of a transaction", Unchanged("undo", "--transaction", "last"), StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_OfAnEmptyBook_IsRefused()
    {
        for (var n = 0; n < 5; n++)
            _keeper.Run("undo").Done();
        Assert.Contains("there is nothing to undo", Unchanged("undo"), StringComparison.Ordinal);
    }

    [Fact]
    public void Correct_Entry_ChangesTheStateAndKeepsTheEntry()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf");
        var number = _keeper.Run("weigh", id, "312.75", "--json").Done().Json.GetProperty("entry").GetInt32();
        _keeper.Run("correct", $"{number}", "gross_g=132.75", "--because", "digits swapped").Done();
        Assert.Equal(132.75m, Show(id).GetProperty("last_gross_g").GetDecimal());
        Assert.Contains("weighed: 312.75 g gross", _keeper.Run("ledger", id).Done().Out, StringComparison.Ordinal);
        Assert.Equal("corrected", AllKinds()[^1]);
    }

    [Theory]
    [InlineData("gross_g=-1")]
    [InlineData("gross_g=heavy")]
    [InlineData("colour=blue")]
    [InlineData("number=1")]
    [InlineData("id=MM451")]
    public void Correct_ToWhatCannotBe_IsRefused(string change)
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf");
        var number = _keeper.Run("weigh", id, "312.75", "--json").Done().Json.GetProperty("entry").GetInt32();
        Unchanged("correct", $"{number}", change);
    }

    [Theory]
    [InlineData("content=unobtainium", "is not in the catalogue")]
    [InlineData("vessel=bathtub", "is not a vessel")]
    [InlineData("closure=cork of dreams", "is not a closure")]
    [InlineData("cover=lava", "is not a cover")]
    [InlineData("quantity=5 elephants", "is not a unit")]
    [InlineData("quantity=-1 mL", "must be above zero")]
    public void Correct_ReceiptToWhatNothingIsKnownOf_IsRefusedAsOnTheWayIn(string change, string words)
    {
        var number = _keeper.Run("add", "acetone", "--place", "left-shelf", "--amount", "20 mL", "--json").Done().Json.GetProperty("entry").GetInt32();
        Assert.Contains(words, Unchanged("correct", $"{number}", change), StringComparison.Ordinal);
    }

    [Fact]
    public void Correct_ReceiptBySynonymOrWithoutAValue_BooksTheCataloguesNameOrTakesItAway()
    {
        var receipt = _keeper.Run("add", "acetone", "--place", "left-shelf", "--vessel", "glass vial 20 mL", "--json").Done().Json;
        _keeper.Run("correct", $"{receipt.GetProperty("entry").GetInt32()}", "content=propan-2-ol", "vessel=").Done();
        var shown = Show(receipt.GetProperty("id").GetString()!);
        Assert.Equal(_keeper.Run("facts", "propan-2-ol", "--json").Done().Json.GetProperty("name").GetString(), shown.GetProperty("content").GetString());
        Assert.Equal(System.Text.Json.JsonValueKind.Null, shown.GetProperty("vessel").ValueKind);
    }

    [Fact]
    public void Correct_OneFieldTwice_IsRefused()
    {
        var number = _keeper.Run("add", "acetone", "--place", "left-shelf", "--json").Done().Json.GetProperty("entry").GetInt32();
        Assert.Contains("'net_g' stands twice", Unchanged("correct", $"{number}", "net_g=1", "net_g=2"), StringComparison.Ordinal);
    }

    [Fact]
    public void AsOf_EarlierDay_ShowsTheBookAsItWas()
    {
        var id = _keeper.Add("acetone", "--place", "left-shelf", "--on", "2026-05-01");
        _keeper.Run("move", id, "right-shelf", "--on", "2026-06-01").Done();
        string[] Places(string day) => [.. _keeper.Run("list", "--as-of", day, "--json").Done().Json.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("place").GetString()!)];
        Assert.Empty(Places("2026-04-30"));
        Assert.Equal(["left-shelf"], Places("2026-05-31"));
        Assert.Equal(["right-shelf"], Places("2026-06-01"));
        string[] Kinds(string day) => [.. _keeper.Run("ledger", id, "--as-of", day, "--json").Done().Json.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("kind").GetString()!)];
        Assert.Equal(["received"], Kinds("2026-05-31"));
        Assert.Equal(["received", "moved"], Kinds("2026-06-01"));
    }

    private string Unchanged(params string[] typed)
    {
        var before = File.ReadAllBytes(_keeper.Journal);
        var line = _keeper.Run(typed).Refused(2);
        Assert.Equal(before, File.ReadAllBytes(_keeper.Journal));
        return line;
    }

    private JsonElement Show(string id) => _keeper.Run("show", id, "--json").Done().Json;

    private List<string?> AllKinds() => [.. _keeper.Run("ledger", "--json").Done().Json.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("kind").GetString())];
}
