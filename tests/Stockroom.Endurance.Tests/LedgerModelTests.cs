using CsCheck;
using Stockroom.Book;
using Stockroom.Book.Encoding;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;

namespace Stockroom.Endurance.Tests;

/// <summary>Random sequences of bookings, closings and power cuts against a book that is kept nowhere.</summary>
public sealed class LedgerModelTests
{
    private const int Reopen = 10;
    private const int PowerCut = 11;

    [Fact]
    public void Book_RandomSequences_IsAlwaysEqualToTheOneInMemory()
    {
        var tally = new Tally("random sequences against the model");
        Gen.Select(Gen.Int[0, PowerCut], Gen.Int[0, 1 << 20]).List[1, 40].Sample(
            steps =>
            {
                Run(steps);
                lock (tally)
                    tally.Add("equal");
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: Counts.Of(200, 2000));
        tally.Print();
        Assert.True(tally.Total >= Counts.Of(200, 2000));
    }

    private static void Run(List<(int Kind, int Seed)> steps)
    {
        var disk = new MemoryDisk();
        var model = new MemoryStockBook(new StillClock());
        var book = BookInMemory.Make(disk);
        try
        {
            Steps.Begin(book);
            Steps.Begin(model);
            foreach (var (kind, seed) in steps)
            {
                if (kind >= Reopen)
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

    // Without what differs from book to book: where the chain begins.
    private static List<string> Texts(Ledger ledger) => [.. ledger.Entries.Select(e => EntryCodec.Encode(e with { Previous = "" }))];
}
