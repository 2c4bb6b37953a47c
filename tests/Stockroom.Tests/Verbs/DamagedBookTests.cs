using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>A damaged book through the verbs: what is sound is shown and marked, what is not is named, nothing is written, exit 3.</summary>
public sealed class DamagedBookTests
{
    private static readonly string[][] Reading = [["today"], ["rounds"], ["list"], ["places"], ["place", "list"], ["ledger"], ["neighbours"]];

    private static readonly string[][] Refused =
    [
        ["export", "{0}/book.csv"], ["export", "{0}/book.json"], ["backup", "{0}/a.stockbackup"], ["label", "--all-due", "--out", "{0}/labels.pdf"],
        ["sheet", "catalogue", "--out", "{0}/sheet.pdf"], ["sheet", "rounds", "--out", "{0}/sheet.pdf"],
        ["add", "acetone", "--place", "left-shelf"], ["undo"], ["place", "add", "attic", "--kind", "room"], ["place", "limit", "store", "--mean", "19"],
    ];

    public static TheoryData<string> EachReading => [.. Reading.Select(v => string.Join('\t', v))];

    public static TheoryData<string> EachRefused => [.. Refused.Select(v => string.Join('\t', v))];

    [Theory]
    [MemberData(nameof(EachReading))]
    public void Read_JournalAltered_ShowsWhatIsSoundAndNamesWhatFails(string verb)
    {
        using var keeper = AlteredInLine3();
        var before = keeper.BookBytes();
        var plain = keeper.Run(verb.Split('\t'));
        Assert.Equal(3, plain.Code);
        Assert.StartsWith("DAMAGED BOOK", plain.OutLines[0], StringComparison.Ordinal);
        Assert.Contains("line 3 of its journal was altered: its text does not fit its hash; entries 1 to 2 in it can be believed, from 3 on none", plain.ErrorLine, StringComparison.Ordinal);
        Assert.Contains("stockroom repair NEW_FOLDER", plain.ErrorLine, StringComparison.Ordinal);
        var json = keeper.Run([.. verb.Split('\t'), "--json"]);
        Assert.Equal(3, json.Code);
        Assert.Contains("line 3", json.Json.GetProperty("damage")[0].GetString(), StringComparison.Ordinal);
        Assert.Equal(before, keeper.BookBytes());
    }

    [Theory]
    [MemberData(nameof(EachReading))]
    public void Read_SoundBook_SaysThatNothingIsDamaged(string verb)
    {
        using var keeper = Keeper.WithSmallBook();
        Assert.Equal(JsonValueKind.Null, keeper.Run([.. verb.Split('\t'), "--json"]).Done().Json.GetProperty("damage").ValueKind);
        Assert.DoesNotContain("DAMAGED", keeper.Run(verb.Split('\t')).Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_JournalAltered_ShowsTheRestAsLiteDbVouchesForIt()
    {
        using var keeper = AlteredInLine3();
        var numbers = keeper.Run("ledger", "--json").Json.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("number").GetInt64());
        Assert.Equal([1, 2, 3, 4, 5], numbers);
        Assert.Contains("entries 3 to 5 are shown from the LiteDB file", keeper.Run("list").Error, StringComparison.Ordinal);
        File.Delete(Path.Combine(keeper.Book, "book.litedb"));
        numbers = keeper.Run("ledger", "--json").Json.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("number").GetInt64());
        Assert.Equal([1, 2], numbers);
    }

    [Fact]
    public void Show_OneEntryAlteredInLiteDb_ShowsTheJournalsAndNamesTheEntry()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 g");
        var lite = Path.Combine(keeper.Book, "book.litedb");
        var bytes = File.ReadAllBytes(lite);
        "\"net_g\":900"u8.CopyTo(bytes.AsSpan(bytes.AsSpan().IndexOf("\"net_g\":100"u8)));
        File.WriteAllBytes(lite, bytes);
        var shown = keeper.Run("show", id, "--json");
        Assert.Equal(3, shown.Code);
        Assert.Equal(100m, shown.Json.GetProperty("net_g").GetDecimal());
        Assert.Contains("entry 6 in the LiteDB file is not the journal's", Assert.Single(shown.Json.GetProperty("damage").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.StartsWith("DAMAGED BOOK", keeper.Run("show", id).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Forecast_OneEntryAlteredInLiteDb_IsMarked()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 g", "--vessel", "glass reagent bottle 250 mL", "--closure", "plain polypropylene screw cap");
        Assert.Equal(JsonValueKind.Null, keeper.Run("forecast", id, "--json").Done().Json.GetProperty("damage").ValueKind);
        var lite = Path.Combine(keeper.Book, "book.litedb");
        var bytes = File.ReadAllBytes(lite);
        "\"net_g\":900"u8.CopyTo(bytes.AsSpan(bytes.AsSpan().IndexOf("\"net_g\":100"u8)));
        File.WriteAllBytes(lite, bytes);
        var shown = keeper.Run("forecast", id, "--json");
        Assert.Equal(3, shown.Code);
        Assert.Contains("entry 6 in the LiteDB file is not the journal's", Assert.Single(shown.Json.GetProperty("damage").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.StartsWith("DAMAGED BOOK", keeper.Run("forecast", id).Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(EachRefused))]
    public void WriteOrSendOut_JournalAltered_IsRefusedInOneLineThatPointsOn(string verb)
    {
        using var keeper = AlteredInLine3();
        var before = Keeper.FolderBytes(keeper.Folder);
        var line = keeper.Run([.. verb.Split('\t').Select(w => w.Replace("{0}", keeper.Folder, StringComparison.Ordinal))]).Refused(3);
        Assert.Contains("line 3", line, StringComparison.Ordinal);
        Assert.Contains("stockroom verify", line, StringComparison.Ordinal);
        Assert.Equal(before, Keeper.FolderBytes(keeper.Folder));
    }

    [Fact]
    public void Verify_JournalAltered_SaysWhere()
    {
        using var keeper = AlteredInLine3();
        var verify = keeper.Run("verify", "--json");
        Assert.Equal(3, verify.Code);
        Assert.False(verify.Json.GetProperty("holds").GetBoolean());
        Assert.Contains("line 3", verify.Json.GetProperty("findings")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Repair_JournalAltered_SavesWhatIsSoundAndTheNewBookGoesOn()
    {
        using var keeper = AlteredInLine3();
        var before = keeper.BookBytes();
        var saved = Path.Combine(keeper.Folder, "saved.stockbook");
        var report = keeper.Run("repair", saved, "--json");
        Assert.Equal(1, report.Code);
        Assert.StartsWith("line 3 of the journal", Assert.Single(report.Json.GetProperty("lost").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.Equal((5, 3), (report.Json.GetProperty("entries").GetInt32(), report.Json.GetProperty("from_litedb").GetInt32()));
        Assert.Equal(before, keeper.BookBytes());
        keeper.Run("verify", "--book", saved).Done();
        keeper.Run("add", "acetone", "--place", "left-shelf", "--book", saved).Done();
        Assert.Contains("is already there", keeper.Run("repair", saved).Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Repair_WhatNothingVouchesFor_IsNamedAndExit1()
    {
        using var keeper = AlteredInLine3();
        File.Delete(Path.Combine(keeper.Book, "book.litedb"));
        var report = keeper.Run("repair", Path.Combine(keeper.Folder, "saved.stockbook"));
        Assert.Equal(1, report.Code);
        Assert.StartsWith("2 entries saved in", report.OutLines[0], StringComparison.Ordinal);
        Assert.Equal(3, report.OutLines.Count(l => l.StartsWith("not saved: line ", StringComparison.Ordinal)));
    }

    private static Keeper AlteredInLine3()
    {
        var keeper = Keeper.WithSmallBook();
        var text = File.ReadAllText(keeper.Journal);
        Assert.Contains("left shelf", text, StringComparison.Ordinal);
        File.WriteAllText(keeper.Journal, text.Replace("left shelf", "lift shelf", StringComparison.Ordinal));
        return keeper;
    }
}
