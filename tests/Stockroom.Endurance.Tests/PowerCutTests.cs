using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests;

/// <summary>The power goes at a random call of a book's life: making, booking, closing, opening, building LiteDB anew.</summary>
public sealed class PowerCutTests
{
    private const int CutsInALife = 5;

    [Fact]
    public void Book_PowerCutAtAnyMoment_IsBeforeOrAfterAndLosesNothingAcknowledged()
    {
        var tally = new Tally($"power cuts, blocks of {Counts.BlockSize} B");
        for (var life = 0; tally.Total < Counts.Of(100, 1000); life++)
        {
            var calls = 0;
            var disk = new MemoryDisk(Counts.BlockSize) { After = (_, _) => calls++ };
            Live(disk, Counts.Trial(life), []);
            var random = Counts.Trial(-life - 1);
            var moments = Enumerable.Range(0, CutsInALife).Select(_ => random.Next(1, calls + 1)).ToList();
            var heads = new List<string>();
            var cuts = new List<(MemoryDisk Left, int Acknowledged)>();
            var call = 0;
            disk = new MemoryDisk(Counts.BlockSize);
            disk.After = (_, _) =>
            {
                call++;
                cuts.AddRange(moments.Where(m => m == call).Select(_ => (disk.AfterPowerCut(random), heads.Count)));
            };
            Live(disk, Counts.Trial(life), heads);
            foreach (var (left, acknowledged) in cuts)
                tally.Add(Judge(left, heads, acknowledged, $"seed {Counts.Seed}, life {life}"));
        }

        tally.Print();
        Assert.True(tally["after, never acknowledged"] + tally["at the last acknowledged"] > tally.Total / 2, "too few cuts fell into the book's life");
    }

    /// <summary>A book's life; each head that was acknowledged is noted, the empty book's first.</summary>
    private static void Live(MemoryDisk disk, Random random, List<string> heads)
    {
        var book = BookInMemory.Make(disk);
        try
        {
            heads.Add(book.Ledger.HeadHash);
            Steps.Begin(book);
            heads.Add(book.Ledger.HeadHash);
            for (var i = 0; i < 16; i++)
            {
                if (random.Next(6) == 0)
                {
                    book.Dispose();
                    if (random.Next(3) == 0)
                    {
                        disk.Delete(BookInMemory.Lite);
                        disk.SyncFolder(BookInMemory.Folder);
                    }

                    book = BookInMemory.Open(disk);
                }

                Steps.Next(book, random);
                heads.Add(book.Ledger.HeadHash);
            }
        }
        finally
        {
            book.Dispose();
        }
    }

    private static string Judge(MemoryDisk left, List<string> heads, int acknowledged, string trial)
    {
        StockBook book;
        try
        {
            book = BookInMemory.Open(left);
        }
        catch (BookUnavailableException e) when (acknowledged == 0 && e.Fault is BookFault.Missing or BookFault.NotABook)
        {
            return "before there was a book";
        }
        catch (BookUnavailableException e)
        {
            Assert.Fail($"{trial}: {acknowledged - 1} transactions were acknowledged and the book is refused: {e.Message}");
            throw;
        }

        int at;
        using (book)
        {
            at = heads.IndexOf(book.Ledger.HeadHash);
            Assert.True(at == acknowledged || at == acknowledged - 1, $"{trial}: {acknowledged - 1} transactions were acknowledged, {at} are there; {string.Join("; ", book.Messages)}");
            Assert.True(book.Verify().Holds, trial);
            if (at == 0)
                Steps.Begin(book);
            Steps.Next(book, new Random(1));
        }

        using var again = BookInMemory.Open(left);
        Assert.Empty(again.Messages);
        Assert.True(again.Verify().Holds, trial);
        return at == acknowledged ? "after, never acknowledged" : "at the last acknowledged";
    }
}
