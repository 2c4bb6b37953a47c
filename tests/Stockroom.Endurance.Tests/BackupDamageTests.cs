using Stockroom.Book.Entries;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;
using Stockroom.Storage.Backups;
using Stockroom.Storage.Repairs;

namespace Stockroom.Endurance.Tests;

/// <summary>Backups with a bit flipped or their end lost: refused, or the book that was backed up. Repairs of damaged books: never more than was booked.</summary>
public sealed class BackupDamageTests
{
    private const string Passphrase = "seven grey herons by the weir";

    private static readonly string File = Path.Combine(Path.GetDirectoryName(BookInMemory.Folder)!, "a.stockbackup");
    private static readonly string Back = Path.Combine(Path.GetDirectoryName(BookInMemory.Folder)!, "back.stockbook");

    [Fact]
    public void Backup_OneBitFlipped_IsRefusedOrTheSameBook() => Try("bit flips in a backup", null, Counts.Of(150, 600), Flip);

    [Fact]
    public void Backup_Truncated_IsRefused() => Try("truncated backups", null, Counts.Of(50, 200), (whole, random) => whole[..random.Next(whole.Length)]);

    // Each trial derives a key, which is meant to take time: so there are fewer.
    [Fact]
    public void EncryptedBackup_OneBitFlipped_IsRefused() => Try("bit flips in an encrypted backup", Passphrase, Counts.Of(40, 600), Flip);

    [Fact]
    public void Repair_AnyFileDamaged_SavesNothingThatWasNotBooked()
    {
        var (disk, _) = BookInMemory.Filled(Counts.Trial(9), transactions: 14, killed: false);
        using var whole = BookInMemory.Open(disk.Copy());
        var hashes = whole.Ledger.Entries.Select(Book.Encoding.EntryCodec.HashOf).ToList();
        var tally = new Tally("repairs of a damaged journal and LiteDB file");
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var random = Counts.Trial(trial);
            var damaged = disk.Copy();
            damaged[BookInMemory.Journal] = random.Next(2) == 0 ? Flip(damaged[BookInMemory.Journal], random) : damaged[BookInMemory.Journal][..random.Next(damaged[BookInMemory.Journal].Length)];
            if (random.Next(2) == 0)
                damaged[BookInMemory.Lite] = Enumerable.Range(0, 40).Aggregate(damaged[BookInMemory.Lite], (bytes, _) => Flip(bytes, random));
            var report = BookRepair.Into(damaged, BookInMemory.Folder, Back, new StillClock());
            using var repaired = StockBookFolder.Open(damaged, Back, readOnly: false, new StillClock());
            Assert.Equal(hashes.Take((int)report.Entries), repaired.Ledger.Entries.Select(Book.Encoding.EntryCodec.HashOf));
            Assert.True(repaired.Verify().Holds);
            tally.Add(report.Entries == hashes.Count ? "saved whole" : "saved in part");
        }

        tally.Print();
        Assert.True(tally["saved whole"] > 0 && tally["saved in part"] > 0);
    }

    private static byte[] Flip(byte[] whole, Random random)
    {
        var bit = random.Next(whole.Length * 8);
        whole[bit / 8] ^= (byte)(1 << (bit % 8));
        return whole;
    }

    private static void Try(string what, string? passphrase, int trials, Func<byte[], Random, byte[]> damage)
    {
        var (disk, _) = BookInMemory.Filled(Counts.Trial(8), transactions: 14, killed: false);
        string head;
        using (var book = BookInMemory.Open(disk))
        {
            var photo = new Attached { Container = book.Ledger.State.Present.First().Id, HappenedAt = StillClock.Now, Name = "photo.bin", Sha256 = "", Bytes = 0, MediaType = "" };
            book.Attach("Ada", photo, [.. Enumerable.Range(0, 3_000).Select(n => (byte)(n * 7 % 251))]);
            head = book.Ledger.HeadHash;
        }

        BookBackup.Make(disk, BookInMemory.Folder, File, passphrase, new StillClock());
        var tally = new Tally(what);
        for (var trial = 0; trial < trials; trial++)
        {
            var damaged = disk.Copy();
            damaged[File] = damage(damaged[File], Counts.Trial(trial));
            tally.Add(Restore(damaged, passphrase, head, $"seed {Counts.Seed}, {what}, trial {trial}"));
        }

        tally.Print();
        Assert.True(tally["refused"] > 0, "nothing was noticed");
    }

    private static string Restore(MemoryDisk damaged, string? passphrase, string head, string trial)
    {
        try
        {
            BookBackup.Restore(damaged, File, Back, passphrase, new StillClock());
        }
        catch (BookUnavailableException e)
        {
            Assert.False(e.Message.Contains('\n', StringComparison.Ordinal), $"{trial}: {e.Message}");
            Assert.False(damaged.FolderExists(Back), trial);
            return "refused";
        }
        catch (Exception e)
        {
            Assert.Fail($"{trial}: a crash: {e}");
        }

        using var book = StockBookFolder.Open(damaged, Back, readOnly: false, new StillClock());
        Assert.True(book.Ledger.HeadHash == head, $"{trial}: A SILENT WRONG ANSWER");
        Assert.True(book.Verify().Holds, trial);
        return "the same book";
    }
}
