namespace Stockroom.Tests.Verbs;

/// <summary>What can go wrong around a book, through the verbs: exit 3, one line, nothing lost, and it goes on when the cause is gone.</summary>
public sealed class FaultVerbTests
{
    private static readonly string[] Adding = ["add", "acetone", "--place", "left-shelf"];

    [Theory]
    [InlineData("list")]
    [InlineData("verify")]
    [InlineData("repair {0}/new.stockbook")]
    [InlineData("backup {0}/a.stockbackup")]
    [InlineData("add acetone --place left-shelf")]
    public void Book_OfANewerFormat_IsRefusedAndLeftAsItIs(string verb)
    {
        using var keeper = Keeper.WithSmallBook();
        var identity = Path.Combine(keeper.Book, "book.json");
        var text = File.ReadAllText(identity);
        File.WriteAllText(identity, text.Replace("\"format\":1", "\"format\":9", StringComparison.Ordinal));
        var before = Keeper.FolderBytes(keeper.Folder);
        Assert.Contains("is of format 9; this program knows 1: use a newer program", keeper.Run(Words(verb, keeper)).Refused(3), StringComparison.Ordinal);
        Assert.Equal(before, Keeper.FolderBytes(keeper.Folder));
        File.WriteAllText(identity, text);
        keeper.Run(Adding).Done();
    }

    [Theory]
    [InlineData("list")]
    [InlineData("repair {0}/new.stockbook")]
    [InlineData("backup {0}/a.stockbackup")]
    [InlineData("add acetone --place left-shelf")]
    public void Book_WithAnEntryOfAKindOnlyANewerProgramKnows_IsRefusedAndLeftAsItIs(string verb)
    {
        using var keeper = Keeper.WithSmallBook();
        var last = File.ReadLines(keeper.Journal).Last();
        var head = keeper.Run("verify", "--json").Json.GetProperty("head").GetString();
        const string When = "\"recorded_at\":\"2026-06-15T09:30:00+00:00\",\"by\":\"Ada\"";
        var line = $"{{\"transaction\":6,\"previous\":\"{last[..64]}\",{When},\"entries\":[{{\"number\":6,\"transaction\":6,\"kind\":\"irradiated\",\"happened_at\":\"2026-06-15T09:30:00+00:00\",{When},\"previous\":\"{head}\"}}]}}";
        File.AppendAllText(keeper.Journal, $"{Book.Encoding.EntryCodec.HashOf(line)} {line}\n");
        var before = Keeper.FolderBytes(keeper.Folder);
        var refusal = keeper.Run(Words(verb, keeper)).Refused(3);
        Assert.Contains("written by a newer program ('irradiated' is not a kind of entry this version knows)", refusal, StringComparison.Ordinal);
        Assert.Equal(before, Keeper.FolderBytes(keeper.Folder));
    }

    [Fact]
    public void Clock_SetBackByDays_RefusesUntilItIsRight()
    {
        using var keeper = Keeper.WithSmallBook();
        var before = keeper.BookBytes();
        var right = keeper.Clock.GetUtcNow();
        keeper.Clock.AdjustTime(right.AddDays(-3));
        var line = keeper.Run(Adding).Refused(3);
        Assert.Contains("the clock says 2026-06-12 09:30, but entry 5 was booked on 2026-06-15 09:30", line, StringComparison.Ordinal);
        Assert.Contains("STOCKROOM_CLOCK=right", line, StringComparison.Ordinal);
        Assert.Equal(before, keeper.BookBytes());
        Assert.Equal(0, keeper.Run("list").Code);
        keeper.Clock.AdjustTime(right);
        keeper.Run(Adding).Done();
    }

    [Fact]
    public void Clock_SetBackByMinutes_BooksAtTheTimeOfTheLastEntryAndTellsIt()
    {
        using var keeper = Keeper.WithSmallBook();
        keeper.Clock.AdjustTime(keeper.Clock.GetUtcNow().AddMinutes(-10));
        var added = keeper.Run(Adding);
        Assert.Equal(0, added.Code);
        Assert.Contains("entries carry the time of that one", added.ErrorLine, StringComparison.Ordinal);
        var times = keeper.Run("ledger", "--json").Json.GetProperty("entries").EnumerateArray().Select(e => e.GetProperty("recorded_at").GetDateTimeOffset()).ToList();
        Assert.Equal(times.Order(), times);
        Assert.Equal(times[^2], times[^1]);
    }

    [Fact]
    public void Folder_GoneInTheMiddleOfAStream_StopsThereAndGoesOnWhenItIsBack()
    {
        using var keeper = Keeper.WithSmallBook();
        var away = keeper.Beside("away");
        using var lines = new Lines(
            ("acetone --place left-shelf", () => { }),
            ("ethanol --place left-shelf", () => Directory.Move(keeper.Book, away)),
            ("toluene --place left-shelf", () => { }));
        var answer = keeper.RunReading(lines, "add", "--journal", "-");
        Assert.Equal(3, answer.Code);
        Assert.Contains("acetone", Assert.Single(answer.OutLines), StringComparison.Ordinal);
        Assert.Contains("nothing was booked", answer.ErrorLine, StringComparison.Ordinal);
        Assert.Contains("its journal is gone", answer.ErrorLine, StringComparison.Ordinal);
        Assert.Contains("there is no stock book", keeper.Run("list").Refused(3), StringComparison.Ordinal);
        Directory.Move(away, keeper.Book);
        Assert.Equal(0, keeper.Run("add", "ethanol", "--place", "left-shelf").Code);
        Assert.Equal(["acetone", "ethanol"], keeper.Run("list", "--json").Json.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("content").GetString()).Order());
        Assert.Equal(0, keeper.Run("verify").Code);
    }

    // 0600 and 0700: POSIX.1-2017 file modes; what a collection holds, and where, is nobody else's business.
    [Fact]
    public void Files_WhateverMakesThem_AreTheirOwnersAlone()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var keeper = Keeper.WithSmallBook();
        Directory.Delete(keeper.Book, recursive: true);
        keeper.Run("demo", "--report", "--book", keeper.Beside("demo.stockbook")).Done();
        keeper.Run("place", "add", "store", "--kind", "room");
        keeper.Add("acetone", "--place", "store");
        keeper.Run("backup", "--to", keeper.Beside("deep/backups")).Done();
        keeper.Run("backup", "--due").Done();
        keeper.Run("backup", keeper.Beside("a.stockbackup")).Done();
        keeper.Run("restore", keeper.Beside("a.stockbackup"), keeper.Beside("back.stockbook")).Done();
        keeper.Run("repair", keeper.Beside("repaired.stockbook")).Done();
        foreach (var file in new[] { "book.csv", "book.json" })
            keeper.Run("export", keeper.Beside(file)).Done();
        Assert.InRange(keeper.Run("label", "--all-due", "--out", keeper.Beside("labels.pdf")).Code, 0, 1);
        var made = Directory.GetFileSystemEntries(keeper.Folder, "*", SearchOption.AllDirectories);
        Assert.True(made.Length > 25, $"{made.Length} files and folders");
        foreach (var path in made)
        {
            var owners = Directory.Exists(path) ? UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute : UnixFileMode.UserRead | UnixFileMode.UserWrite;
            Assert.True(File.GetUnixFileMode(path) == owners, $"{path}: {File.GetUnixFileMode(path)}");
        }
    }

    [Fact]
    public void Snapshot_Altered_IsToldAndNothingIsWrong()
    {
        using var keeper = Keeper.WithSmallBook();
        keeper.Add("acetone", "--place", "left-shelf");
        var snapshot = Path.Combine(keeper.Book, "snapshot.txt");
        File.WriteAllText(snapshot, File.ReadAllText(snapshot).Replace("acetone", "alcohol", StringComparison.Ordinal));
        var verify = keeper.Run("verify", "--json");
        Assert.Equal(0, verify.Code);
        Assert.Contains("it was altered or cut short", Assert.Single(verify.Json.GetProperty("notes").EnumerateArray()).GetString(), StringComparison.Ordinal);
        Assert.Contains("acetone", keeper.Run("list").Done().Out, StringComparison.Ordinal);
        Assert.Contains("is not used", keeper.Run(Adding).ErrorLine, StringComparison.Ordinal);
        keeper.Run(Adding).Done();
        Assert.Empty(keeper.Run("verify", "--json").Json.GetProperty("notes").EnumerateArray());
    }

    private static string[] Words(string verb, Keeper keeper) => [.. verb.Split(' ').Select(w => w.Replace("{0}", keeper.Folder, StringComparison.Ordinal))];

    /// <summary>Standard input that does something before it gives a line.</summary>
    private sealed class Lines(params (string Text, Action Before)[] lines) : TextReader
    {
        private int _at;

        public override string? ReadLine()
        {
            if (_at == lines.Length)
                return null;
            lines[_at].Before();
            return lines[_at++].Text;
        }
    }
}
