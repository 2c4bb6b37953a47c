using System.Text;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Storage.Attachments;
using Stockroom.Storage.Backups;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Tests.Disks;

namespace Stockroom.Storage.Tests.Attachments;

/// <summary>Files kept with containers: there before they are named, checked, backed up, restored and repaired.</summary>
public sealed class AttachmentTests : IDisposable
{
    private static readonly byte[] Photo = [0xFF, 0xD8, 0xFF, 0xE0, .. Encoding.ASCII.GetBytes("a photograph of a bottle")];
    private static readonly string PhotoHash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Photo));

    private readonly string _parent = Directory.CreateTempSubdirectory("stockroom-attachments-").FullName;

    private string Folder => Path.Combine(_parent, "a.stockbook");

    private string Kept => Path.Combine(Folder, "attachments", PhotoHash);

    public void Dispose() => Directory.Delete(_parent, recursive: true);

    [Fact]
    public void Attach_File_IsKeptUnderItsHashAndNamedByTheContainer()
    {
        var id = Make();
        var kept = Assert.Single(Containers()[id].Attachments);
        Assert.Equal(("bottle.jpg", PhotoHash, (long)Photo.Length, "image/jpeg", "front"), (kept.Name, kept.Sha256, kept.Bytes, kept.MediaType, kept.Note));
        Assert.Equal(Photo, File.ReadAllBytes(Kept));
        Assert.True(StockBookFolder.Verify(Folder).Holds);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Kept));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(Kept)!));
        }
    }

    [Fact]
    public void Attach_BeforeTheEntryIsWritten_FileNameAndFolderAreSynced()
    {
        var id = Make(attach: false);
        var calls = new List<string>();
        var disk = new RehearsedDisk { After = (call, name) => calls.Add($"{call} {name}") };
        using (var book = StockBookFolder.Open(disk, Folder, readOnly: false, TimeProvider.System))
        {
            calls.Clear();
            Attach(book, id);
        }

        var named = calls.IndexOf("Write journal.txt");
        string[] first = ["SyncFolder a.stockbook", $"Write {PhotoHash}.unfinished", $"Sync {PhotoHash}.unfinished", $"Rename {PhotoHash}.unfinished", "SyncFolder attachments"];
        Assert.Equal(first, calls.Take(named).Where(c => !c.StartsWith("Delete", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(false, "is missing")]
    [InlineData(true, "was altered")]
    public void Verify_AttachmentMissingOrAltered_DoesNotHoldAndNamesIt(bool altered, string says)
    {
        var id = Make();
        if (altered)
            Damage(Kept);
        else
            File.Delete(Kept);
        var report = StockBookFolder.Verify(Folder);
        Assert.False(report.Holds);
        Assert.True(report.RecordHolds);
        var finding = Assert.Single(report.Findings);
        Assert.Contains(says, finding, StringComparison.Ordinal);
        Assert.Contains($"'bottle.jpg' of {id}", finding, StringComparison.Ordinal);
        using var book = StockBookFolder.Open(Folder);
        Assert.Contains(says, Assert.Throws<BookUnavailableException>(() => book.ReadAttachment(PhotoHash)).Message, StringComparison.Ordinal);
        Assert.False(book.Verify().Holds);
    }

    [Fact]
    public void Verify_FileNoEntryNames_HoldsAndIsTold()
    {
        Make();
        File.WriteAllText(Path.Combine(Folder, "attachments", "holiday.jpg"), "sea");
        var report = StockBookFolder.Verify(Folder);
        Assert.True(report.Holds);
        Assert.Contains("'holiday.jpg'", Assert.Single(report.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Attach_SameContentAgainAfterItWasAltered_PutsItRight()
    {
        var id = Make();
        Damage(Kept);
        var other = Receive();
        using (var book = StockBookFolder.Open(Folder))
            Attach(book, other);
        Assert.True(StockBookFolder.Verify(Folder).Holds);
        Assert.NotEqual(id, other);
    }

    [Fact]
    public void Attach_TwiceToOneContainer_IsRefusedAndNothingChanges()
    {
        var id = Make();
        var before = File.ReadAllBytes(Path.Combine(Folder, "journal.txt"));
        using (var book = StockBookFolder.Open(Folder))
            Assert.Contains("already attached, as 'bottle.jpg'", Assert.Throws<BookRefusal>(() => Attach(book, id)).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(Folder, "journal.txt")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData((int)Attached.MostBytes + 1)]
    public void Attach_NothingOrTooMuch_IsRefusedAndLeavesNoFile(int length)
    {
        var id = Make(attach: false);
        using var book = StockBookFolder.Open(Folder);
        var message = Assert.Throws<BookRefusal>(() => book.Attach("Ada", Draft(id, "x.bin"), new byte[length])).Message;
        Assert.Contains($"'x.bin' has {length} bytes; a file attached has at least 1 and at most 20000000", message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(Folder, "attachments")));
    }

    [Fact]
    public void Attach_LargestAllowed_IsKept()
    {
        var id = Make(attach: false);
        using var book = StockBookFolder.Open(Folder);
        book.Attach("Ada", Draft(id, "x.bin"), new byte[Attached.MostBytes]);
        Assert.True(book.Verify().Holds);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("seven grey herons by the weir")]
    public void Backup_Restored_HasTheAttachments(string? passphrase)
    {
        Make();
        var (file, back) = (Path.Combine(_parent, "x.stockbackup"), Path.Combine(_parent, "back.stockbook"));
        BookBackup.Make(Folder, file, passphrase);
        BookBackup.Restore(file, back, passphrase);
        Assert.Equal(Photo, File.ReadAllBytes(Path.Combine(back, "attachments", PhotoHash)));
        Assert.True(StockBookFolder.Verify(back).Holds);
    }

    [Fact]
    public void Backup_AttachmentAlreadyLost_IsMadeAndSaysSo()
    {
        Make();
        Damage(Kept);
        var (file, back) = (Path.Combine(_parent, "x.stockbackup"), Path.Combine(_parent, "back.stockbook"));
        Assert.Equal([PhotoHash], BookBackup.Make(Folder, file).MissingAttachments);
        Assert.Equal([PhotoHash], BookBackup.Restore(file, back).MissingAttachments);
        Assert.Contains("is missing", Assert.Single(StockBookFolder.Verify(back).Findings), StringComparison.Ordinal);
    }

    [Fact]
    public void Repair_OneOfTwoAltered_SavesTheOtherAndNamesTheLost()
    {
        var id = Make();
        var sheet = "%PDF-1.7 a sheet"u8.ToArray();
        using (var book = StockBookFolder.Open(Folder))
            book.Attach("Ada", Draft(id, "sheet.pdf"), sheet);
        Damage(Kept);
        var report = StockBookFolder.Repair(Folder, Path.Combine(_parent, "new.stockbook"));
        Assert.Contains("'bottle.jpg'", Assert.Single(report.Lost), StringComparison.Ordinal);
        var saved = Assert.Single(Directory.GetFiles(Path.Combine(_parent, "new.stockbook", "attachments")));
        Assert.Equal(sheet, File.ReadAllBytes(saved));
    }

    // The first bytes are those of the published formats; the ending only counts where they tell nothing.
    [Theory]
    [InlineData("89504E470D0A1A0A00", "x.jpg", "image/png")]
    [InlineData("FFD8FFE1", "x", "image/jpeg")]
    [InlineData("255044462D312E37", "x.txt", "application/pdf")]
    [InlineData("524946460000000057454250", "x", "image/webp")]
    [InlineData("000000186674797068656963", "x", "image/heic")]
    [InlineData("68656C6C6F", "x.TXT", "text/plain")]
    [InlineData("68656C6C6F", "x.bin", "application/octet-stream")]
    public void MediaType_OfAFile_IsTold(string begin, string name, string type) => Assert.Equal(type, MediaTypes.Of(Convert.FromHexString(begin), name));

    [Theory]
    [InlineData("/home/keeper/../sheet.pdf", "sheet.pdf")]
    [InlineData("C:\\photos\\a.jpg", "a.jpg")]
    [InlineData("a\u001B[2J\u202Egpj.exe", "a[2Jgpj.exe")]
    [InlineData("\u0007", "file")]
    public void CleanName_OfAGivenName_HoldsNoFolderAndNoControl(string given, string name) => Assert.Equal(name, BookAttachments.CleanName(given));

    private ContainerId Make(bool attach = true)
    {
        using (var book = StockBookFolder.Create(Folder))
            book.Append(new Transaction("Ada", new PlaceMade { HappenedAt = DateTimeOffset.Now, Place = "prep", Name = "Prep", PlaceKind = PlaceKind.Room }));
        var id = Receive();
        if (attach)
        {
            using var book = StockBookFolder.Open(Folder);
            Attach(book, id);
        }

        return id;
    }

    private ContainerId Receive()
    {
        using var book = StockBookFolder.Open(Folder);
        var id = book.Ledger.State.NewId();
        book.Append(new Transaction("Ada", new Received { HappenedAt = DateTimeOffset.Now, Container = id, Content = "water", Lot = new Lot { How = LotOrigin.Bought }, To = "prep" }));
        return id;
    }

    private IReadOnlyDictionary<ContainerId, Container> Containers()
    {
        using var book = StockBookFolder.Open(Folder, readOnly: true);
        return book.Ledger.State.Containers;
    }

    private static void Attach(StockBook book, ContainerId id) => book.Attach("Ada", Draft(id, "photos/bottle.jpg") with { Note = "front" }, Photo);

    private static Attached Draft(ContainerId id, string name) => new() { HappenedAt = DateTimeOffset.Now, Container = id, Name = name, Sha256 = "", Bytes = 0, MediaType = "" };

    private static void Damage(string file)
    {
        var bytes = File.ReadAllBytes(file);
        bytes[5] ^= 1;
        File.WriteAllBytes(file, bytes);
    }
}
