using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Time.Testing;
using Stockroom.Storage.Backups;

namespace Stockroom.Storage.Tests.Backups;

public sealed class BackupTests
{
    private const string Passphrase = "seven grey herons by the weir";

    [Theory]
    [InlineData(null)]
    [InlineData(Passphrase)]
    public void Restore_ABackup_IsTheSameBookByteForByte(string? passphrase)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var before = disk.Bytes();
        var made = BookBackup.Make(disk.Folder, disk.Beside("a.stockbackup"), passphrase);
        Assert.Equal((11, passphrase is not null), (made.Entries, made.IsEncrypted));
        Assert.Equal(before, disk.Bytes());
        Assert.Equal(made, BookBackup.Check(disk.Beside("a.stockbackup"), passphrase));
        BookBackup.Restore(disk.Beside("a.stockbackup"), disk.Beside("back.stockbook"), passphrase);
        using var book = StockBookFolder.Open(disk.Beside("back.stockbook"));
        Assert.Empty(book.Messages);
        Assert.Equal(made.HeadHash, book.Ledger.HeadHash);
        Assert.Equal(before[disk.Journal], File.ReadAllBytes(Path.Combine(book.Folder, "journal.txt")));
        Assert.True(book.Verify().Holds);
        BookOnDisk.Receive(book);
    }

    [Fact]
    public void Make_WithoutAPassphrase_IsAZipAnyUnpackerReads()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        BookBackup.Make(disk.Folder, disk.Beside("a.stockbackup"));
        using var zip = ZipFile.OpenRead(disk.Beside("a.stockbackup"));
        Assert.Equal(["manifest.json", "book.json", "journal.txt"], zip.Entries.Select(e => e.Name));
        using var journal = new StreamReader(zip.GetEntry("journal.txt")!.Open());
        Assert.Equal(File.ReadAllText(disk.Journal), journal.ReadToEnd());
    }

    [Fact]
    public void Make_WithAPassphrase_ShowsNothingAndCanBeReadByTheStandardsAlone()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        BookBackup.Make(disk.Folder, disk.Beside("a.stockbackup"), Passphrase);
        var file = File.ReadAllBytes(disk.Beside("a.stockbackup"));
        Assert.Equal(-1, file.AsSpan().IndexOf("Prep room"u8));
        var end = Array.IndexOf(file, (byte)'\n') + 1;
        var words = Encoding.ASCII.GetString(file, 0, end - 1).Split(", ");
        Assert.Equal(["stock book backup 1", "AES-256-GCM", "PBKDF2-HMAC-SHA256", "600000"], words[..4]);

        // RFC 8018 and NIST SP 800-38D as the framework implements them, without the code under test.
        var key = Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(Passphrase), Convert.FromHexString(words[4]), 600_000, HashAlgorithmName.SHA256, 32);
        var plain = new byte[file.Length - end - 16];
        using var aes = new AesGcm(key, 16);
        aes.Decrypt(Convert.FromHexString(words[5]), file.AsSpan(end + 16), file.AsSpan(end, 16), plain, file.AsSpan(0, end));
        Assert.Equal("PK"u8.ToArray(), plain[..2]);
    }

    [Theory]
    [InlineData(null, BookFault.Passphrase, "its passphrase is needed")]
    [InlineData("seven grey herons by the wier", BookFault.Damaged, "the passphrase is another, or the file was altered")]
    public void Restore_WithoutTheRightPassphrase_IsRefusedAndMakesNothing(string? passphrase, BookFault fault, string why)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        BookBackup.Make(disk.Folder, disk.Beside("a.stockbackup"), Passphrase);
        var refusal = Assert.Throws<BookUnavailableException>(() => BookBackup.Restore(disk.Beside("a.stockbackup"), disk.Beside("back"), passphrase));
        Assert.Equal(fault, refusal.Fault);
        Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(disk.Beside("back")));
    }

    [Fact]
    public void Make_ShortPassphrase_IsRefusedAndLeavesNoFile()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        Assert.Equal(BookFault.Passphrase, Assert.Throws<BookUnavailableException>(() => BookBackup.Make(disk.Folder, disk.Beside("a"), "1234567")).Fault);
        Assert.Single(Directory.GetFileSystemEntries(disk.Beside("")));
    }

    [Fact]
    public void Make_OfADamagedBook_IsRefusedAndLeavesNoFile()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(disk.Journal, File.ReadAllText(disk.Journal).Replace("Ada", "Eve", StringComparison.Ordinal));
        Assert.Contains("nothing was backed up: line 1 ", Assert.Throws<BookUnavailableException>(() => BookBackup.Make(disk.Folder, disk.Beside("a"))).Message, StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(disk.Beside("")));
    }

    [Fact]
    public void Make_OntoAFile_OverwritesNothing()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(disk.Beside("a"), "a letter");
        Assert.Equal(BookFault.AlreadyThere, Assert.Throws<BookUnavailableException>(() => BookBackup.Make(disk.Folder, disk.Beside("a"))).Fault);
        Assert.Equal("a letter", File.ReadAllText(disk.Beside("a")));
    }

    [Fact]
    public void Restore_ALetter_IsRefusedInOneLine()
    {
        using var disk = new BookOnDisk();
        Directory.CreateDirectory(disk.Beside(""));
        File.WriteAllText(disk.Beside("letter.txt"), "Dear diary");
        var refusal = Assert.Throws<BookUnavailableException>(() => BookBackup.Restore(disk.Beside("letter.txt"), disk.Beside("back")));
        Assert.DoesNotContain('\n', refusal.Message);
    }

    [Fact]
    public void Schedule_DayByDay_MakesWhatIsDueKeepsTheNewestAndEachRestoresToItsDay()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose(transactions: 2);
        new BackupSchedule(disk.Beside("backups"), EveryDays: 7, Keep: 3).Set(disk.Folder);
        var schedule = BackupSchedule.Of(disk.Folder)!;
        var clock = new FakeTimeProvider(BookOnDisk.Now.ToUniversalTime());
        File.WriteAllText(Path.Combine(Directory.CreateDirectory(disk.Beside("backups")).FullName, "harbour-holiday.stockbackup"), "not one of ours");
        var entries = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var day = 0; day < 40; day++)
        {
            using (var book = StockBookFolder.Open(disk.Folder, clock: clock))
                BookOnDisk.Receive(book);
            var (made, _) = schedule.RunIfDue(disk.Folder, null, clock);
            Assert.Equal(day % 7 == 0, made is not null);
            if (made is not null)
                entries[made] = 3 + ((day + 1) * 2);
            clock.Advance(TimeSpan.FromDays(1));
        }

        var kept = Directory.GetFiles(disk.Beside("backups")).Order(StringComparer.Ordinal).ToList();
        Assert.Equal([.. entries.Keys.Order(StringComparer.Ordinal).TakeLast(3), disk.Beside("backups/harbour-holiday.stockbackup")], kept);
        foreach (var file in kept[..3])
        {
            var back = disk.Beside("back-" + Path.GetFileName(file));
            BookBackup.Restore(file, back);
            using var book = StockBookFolder.Open(back, readOnly: true);
            Assert.Empty(book.Messages);
            Assert.Equal(entries[file], book.Ledger.Entries.Count);
        }
    }

    [Fact]
    public void Schedule_IntoTheBookItself_IsRefused()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        Assert.Throws<BookUnavailableException>(() => new BackupSchedule(Path.Combine(disk.Folder, "backups"), 7, 3).Set(disk.Folder));
        Assert.Null(BackupSchedule.Of(disk.Folder));
    }

    [Fact]
    public void Schedule_TwoBooksOfOneName_NeitherCountsNorTakesAwayTheOthers()
    {
        using var one = new BookOnDisk();
        using var two = new BookOnDisk();
        one.MakeAndClose();
        two.MakeAndClose();
        var schedule = new BackupSchedule(one.Beside("backups"), EveryDays: 1, Keep: 1);
        var clock = new FakeTimeProvider(BookOnDisk.Now.ToUniversalTime());
        for (var day = 0; day < 3; day++)
        {
            Assert.NotNull(schedule.RunIfDue(one.Folder, null, clock).Made);
            Assert.NotNull(schedule.RunIfDue(two.Folder, null, clock).Made);
            clock.Advance(TimeSpan.FromDays(1));
        }

        var heads = Directory.GetFiles(one.Beside("backups")).Select(f => BookBackup.Check(f).Book).Order(StringComparer.Ordinal);
        Assert.Equal(new[] { one, two }.Select(d => StockBookFolder.Open(d.Folder, readOnly: true).Identity.Book).Order(StringComparer.Ordinal), heads);
    }

    [Theory]
    [InlineData("", 7, 3)]
    [InlineData("a\0b", 7, 3)]
    [InlineData("backups", int.MaxValue, 3)]
    [InlineData("backups", 7, int.MaxValue)]
    public void Schedule_ThatCannotBe_IsRefusedAsTypedAndAsFoundInTheSettings(string to, int days, int keep)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        Assert.Throws<BookUnavailableException>(() => new BackupSchedule(to, days, keep).Set(disk.Folder));
        Assert.Null(BackupSchedule.Of(disk.Folder));
        File.WriteAllText(Path.Combine(disk.Folder, "settings.json"), $$$"""{"backup":{"to":{{{System.Text.Json.JsonSerializer.Serialize(to)}}},"every_days":{{{days}}},"keep":{{{keep}}}}}""");
        Assert.Throws<BookUnavailableException>(() => BackupSchedule.Of(disk.Folder));
    }

    [Fact]
    public void Schedule_OntoAFile_IsRefused()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        File.WriteAllText(disk.Beside("letter"), "Dear diary");
        Assert.Contains("is a file", Assert.Throws<BookUnavailableException>(() => new BackupSchedule(disk.Beside("letter"), 7, 3).Set(disk.Folder)).Message, StringComparison.Ordinal);
    }

    // Without Unicode's tables, an accent typed apart from its letter would be another passphrase than the letter typed whole.
    [Fact]
    public void Make_PassphraseWithACombiningAccent_IsRefusedAndTheWholeLetterOpensIt()
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        var file = disk.Beside("a.stockbackup");
        Assert.Equal(BookFault.Passphrase, Assert.Throws<BookUnavailableException>(() => BookBackup.Make(disk.Folder, file, "pa\u0308sswords")).Fault);
        Assert.False(File.Exists(file));
        BookBackup.Make(disk.Folder, file, "p\u00E4sswords");
        Assert.Equal(11, BookBackup.Check(file, "p\u00E4sswords").Entries);
        Assert.Contains("combining accents", Assert.Throws<BookUnavailableException>(() => BookBackup.Check(file, "pa\u0308sswords")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void BackupOrRestore_ToNoName_IsRefused(string name)
    {
        using var disk = new BookOnDisk();
        disk.MakeAndClose();
        BookBackup.Make(disk.Folder, disk.Beside("a"));
        Assert.Throws<BookUnavailableException>(() => BookBackup.Make(disk.Folder, name));
        Assert.Throws<BookUnavailableException>(() => BookBackup.Check(name));
        Assert.Throws<BookUnavailableException>(() => BookBackup.Restore(disk.Beside("a"), name));
        Assert.Throws<BookUnavailableException>(() => StockBookFolder.Repair(disk.Folder, name));
        Assert.Throws<BookUnavailableException>(() => StockBookFolder.Open(name));
    }
}
