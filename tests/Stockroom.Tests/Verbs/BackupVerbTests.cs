namespace Stockroom.Tests.Verbs;

/// <summary>Backups and restores through the command line, on demand and on the book's own schedule.</summary>
public sealed class BackupVerbTests
{
    private const string Passphrase = "seven grey herons by the weir";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Restore_ABackup_GivesABookWithAnEqualExport(bool encrypted)
    {
        using var keeper = KeeperWithAcetone();
        var file = keeper.Beside("a.stockbackup");
        string[] secret = encrypted ? ["--passphrase-file", keeper.Write("secret", Passphrase + "\n")] : [];
        var made = keeper.Run(["backup", file, "--json", .. secret]).Done().Json;
        Assert.Equal((6, encrypted), (made.GetProperty("entries").GetInt32(), made.GetProperty("encrypted").GetBoolean()));
        var drill = keeper.Run(["restore", file, "--check", "--json", .. secret]).Done().Json;
        Assert.Equal(made.GetProperty("head").GetString(), drill.GetProperty("head").GetString());
        var back = keeper.Beside("back.stockbook");
        keeper.Run(["restore", file, back, .. secret]).Done();
        Assert.Equal(keeper.Export(keeper.Book), keeper.Export(back));
        keeper.Run("verify", "--book", back).Done();
        keeper.Run("add", "ethanol", "--place", "left-shelf", "--book", back).Done();
    }

    [Theory]
    [InlineData(null, "its passphrase is needed")]
    [InlineData("seven grey herons by the wier", "the passphrase is another, or the file was altered")]
    public void Restore_WithoutTheRightPassphrase_IsRefusedAndMakesNothing(string? passphrase, string why)
    {
        using var keeper = KeeperWithAcetone();
        keeper.Run("backup", keeper.Beside("a"), "--passphrase-file", keeper.Write("secret", Passphrase)).Done();
        string[] secret = passphrase is null ? [] : ["--passphrase-file", keeper.Write("wrong", passphrase)];
        foreach (var way in new[] { new[] { "--check" }, [keeper.Beside("back")] })
            Assert.Contains(why, keeper.Run(["restore", keeper.Beside("a"), .. way, .. secret]).Refused(3), StringComparison.Ordinal);
        Assert.False(Path.Exists(keeper.Beside("back")));
    }

    [Fact]
    public void Backup_OntoAFile_OverwritesNothing()
    {
        using var keeper = KeeperWithAcetone();
        var letter = keeper.Write("a.stockbackup", "a letter");
        Assert.Contains("is already there", keeper.Run("backup", letter).Refused(3), StringComparison.Ordinal);
        Assert.Equal("a letter", File.ReadAllText(letter));
        Assert.Contains("does not hold", keeper.Run("restore", letter, keeper.Beside("back")).Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Restore_IntoAFolderThatIsThere_IsRefusedAndChangesNothing()
    {
        using var keeper = KeeperWithAcetone();
        keeper.Run("backup", keeper.Beside("a")).Done();
        var before = keeper.BookBytes();
        Assert.Contains("is already there", keeper.Run("restore", keeper.Beside("a"), keeper.Book).Refused(3), StringComparison.Ordinal);
        Assert.Equal(before, keeper.BookBytes());
        Assert.Contains("a folder is needed", keeper.Run("restore", keeper.Beside("a")).Refused(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Restore_ABackupWithAByteChanged_IsRefused()
    {
        using var keeper = KeeperWithAcetone();
        keeper.Run("backup", keeper.Beside("a")).Done();
        var bytes = File.ReadAllBytes(keeper.Beside("a"));
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(keeper.Beside("b"), bytes);
        Assert.Contains("does not hold", keeper.Run("restore", keeper.Beside("b"), "--check").Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_Set_BacksUpAfterWorkWhenDueAndTellsItInOneLine()
    {
        using var keeper = KeeperWithAcetone();
        var to = keeper.Beside("backups");
        Assert.Contains("after each entry booked", keeper.Run("backup", "--to", to, "--every", "7", "--keep", "2").Done().Out, StringComparison.Ordinal);
        var exports = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var day = 0; day < 29; day++)
        {
            var added = keeper.Run("add", "ethanol", "--place", "left-shelf", "--json");
            Assert.Equal(0, added.Code);
            Assert.True(added.Json.TryGetProperty("entry", out _));
            Assert.Equal(day % 7 == 0, added.Error.Length > 0);
            if (day % 7 == 0)
            {
                Assert.StartsWith($"stockroom: backed up to '{to}", added.ErrorLine, StringComparison.Ordinal);
                exports[Directory.GetFiles(to).Order(StringComparer.Ordinal).Last()] = keeper.Export(keeper.Book);
            }

            Assert.Equal("", keeper.Run("list").Error);
            keeper.Clock.Advance(TimeSpan.FromDays(1));
        }

        var kept = Directory.GetFiles(to).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(exports.Keys.Order(StringComparer.Ordinal).TakeLast(2), kept);
        foreach (var file in kept)
        {
            var back = keeper.Beside("back-" + Path.GetFileName(file));
            keeper.Run("restore", file, back).Done();
            Assert.Equal(exports[file], keeper.Export(back));
        }

        keeper.Run("backup", "--off").Done();
        keeper.Clock.Advance(TimeSpan.FromDays(30));
        keeper.Run("add", "ethanol", "--place", "left-shelf").Done();
        Assert.Equal(kept, Directory.GetFiles(to).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Schedule_WhereNoBackupCanBeMade_TellsItAndTheEntryIsBooked()
    {
        using var keeper = KeeperWithAcetone();
        var to = keeper.Beside("backups");
        keeper.Run("backup", "--to", to).Done();
        File.WriteAllText(to, "a file in the folder's place");
        var added = keeper.Run("add", "ethanol", "--place", "left-shelf", "--json");
        Assert.Equal(0, added.Code);
        Assert.Equal(7, added.Json.GetProperty("entry").GetInt32());
        Assert.StartsWith("stockroom: no backup was made, though one is due: ", added.ErrorLine, StringComparison.Ordinal);
        File.Delete(to);
        Assert.StartsWith("stockroom: backed up to", keeper.Run("add", "ethanol", "--place", "left-shelf").ErrorLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_Encrypted_IsNeverMadeWithoutThePassphrase()
    {
        using var keeper = KeeperWithAcetone();
        var to = keeper.Beside("backups");
        keeper.Run("backup", "--to", to, "--encrypt").Done();
        Assert.Contains("no passphrase was given", keeper.Run("add", "ethanol", "--place", "left-shelf").ErrorLine, StringComparison.Ordinal);
        Assert.False(Directory.Exists(to));
        keeper.Passphrase = Passphrase;
        Assert.StartsWith("stockroom: backed up to", keeper.Run("add", "ethanol", "--place", "left-shelf").ErrorLine, StringComparison.Ordinal);
        var file = Assert.Single(Directory.GetFiles(to));
        Assert.Contains("encrypted", keeper.Run("restore", file, "--check").Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Schedule_WithTheClockSetBack_MakesOneAndKeepsTheOthers()
    {
        using var keeper = KeeperWithAcetone();
        var to = keeper.Beside("backups");
        keeper.Run("backup", "--to", to, "--every", "7", "--keep", "5").Done();
        keeper.Run("backup", "--due").Done();
        keeper.Clock.AdjustTime(keeper.Clock.GetUtcNow().AddDays(-3));
        Assert.StartsWith("backed up to", keeper.Run("backup", "--due").Done().Out, StringComparison.Ordinal);
        Assert.Equal("no backup is due\n", keeper.Run("backup", "--due").Done().Out);
        Assert.Equal(2, Directory.GetFiles(to).Length);
    }

    private static Keeper KeeperWithAcetone()
    {
        var keeper = Keeper.WithSmallBook();
        keeper.Add("acetone", "--place", "left-shelf", "--amount", "100 g");
        return keeper;
    }
}
