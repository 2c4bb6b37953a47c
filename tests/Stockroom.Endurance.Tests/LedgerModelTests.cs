using CsCheck;
using Stockroom.Book;
using Stockroom.Book.Encoding;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;
using Stockroom.Storage.Backups;
using Stockroom.Storage.Exports;

namespace Stockroom.Endurance.Tests;

/// <summary>Random sequences of bookings, closings, power cuts and backups against a book that is kept nowhere.</summary>
public sealed class LedgerModelTests
{
    private const int Reopen = 10;
    private const int PowerCut = 11;
    private const int Backup = 12;

    [Fact]
    public void Book_RandomSequences_IsAlwaysEqualToTheOneInMemory()
    {
        var tally = new Tally("random sequences against the model");
        var restored = new Tally("backup generations restored");
        Gen.Select(Gen.Int[0, Backup], Gen.Int[0, 1 << 20]).List[1, 40].Sample(
            steps =>
            {
                var generations = Run(steps);
                lock (tally)
                {
                    tally.Add("equal");
                    for (var i = 0; i < generations; i++)
                        restored.Add("equal to the book of their day");
                }
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: Counts.Of(200, 2000));
        tally.Print();
        restored.Print();
        Assert.True(restored.Total > tally.Total / 2, $"only {restored.Total} backups were made");
        Assert.True(tally.Total >= Counts.Of(200, 2000));
    }

    private static int Run(List<(int Kind, int Seed)> steps)
    {
        var generations = new List<(string File, List<string> Entries, byte[] Export)>();
        var disk = new MemoryDisk();
        var model = new MemoryStockBook(new StillClock());
        var book = BookInMemory.Make(disk);
        try
        {
            Steps.Begin(book);
            Steps.Begin(model);
            foreach (var (kind, seed) in steps)
            {
                if (kind == Backup)
                {
                    var file = Path.Combine(Path.GetDirectoryName(BookInMemory.Folder)!, $"generation-{generations.Count}");
                    BookBackup.Make(disk, BookInMemory.Folder, file, null, new StillClock());
                    generations.Add((file, Whole(book.Ledger), BookExport.Of(book).Document));
                }
                else if (kind >= Reopen)
                {
                    if (kind == PowerCut)
                        disk = disk.AfterPowerCut(new Random(seed));
                    else
                        book.Dispose();
                    book = BookInMemory.Open(disk);
                }
                else
                {
                    var transaction = Steps.Draw(model.Ledger, new Random(seed), kind);
                    Assert.Equal(Refusal(model, transaction), Refusal(book, transaction));
                }

                Assert.Equal(Texts(model.Ledger), Texts(book.Ledger));
            }

            Assert.True(book.Verify().Holds);
            foreach (var (file, entries, export) in generations)
            {
                BookBackup.Restore(disk, file, file + ".stockbook", null, new StillClock());
                using var restored = StockBookFolder.Open(disk, file + ".stockbook", readOnly: true, new StillClock());
                Assert.Equal(entries, Whole(restored.Ledger));
                Assert.Equal(export, BookExport.Of(restored).Document);
            }

            return generations.Count;
        }
        finally
        {
            book.Dispose();
        }
    }

    private static string? Refusal(IStockBook book, Transaction transaction)
    {
        try
        {
            book.Append(transaction);
            return null;
        }
        catch (BookRefusal refusal)
        {
            return refusal.Message;
        }
    }

    private static List<string> Whole(Ledger ledger) => [.. ledger.Entries.Select(EntryCodec.Encode), ledger.HeadHash];

    // Without what differs from book to book: where the chain begins.
    private static List<string> Texts(Ledger ledger) => [.. ledger.Entries.Select(e => EntryCodec.Encode(e with { Previous = "" }))];
}
