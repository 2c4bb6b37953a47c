using Stockroom.Book.Entries;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests;

/// <summary>
/// Power cuts and failing calls while files are attached: no entry ever names a content that is not there, and every
/// acknowledged one is there.
/// </summary>
public sealed class AttachmentTests
{
    private const int IoError = 5;
    private const int CutsInALife = 5;

    [Fact]
    public void Attach_PowerCutAtAnyMoment_LeavesNoEntryWithoutItsContent()
    {
        var tally = new Tally("power cuts while files are attached");
        for (var life = 0; tally.Total < Counts.Of(100, 1000); life++)
        {
            var calls = 0;
            var disk = new MemoryDisk(Counts.BlockSize);
            Live(disk, Counts.Trial(life), d => d.After = (_, _) => calls++, []);
            var random = Counts.Trial(-life - 1);
            var moments = Enumerable.Range(0, CutsInALife).Select(_ => random.Next(1, calls + 1)).ToList();
            var cuts = new List<(MemoryDisk Left, int Acknowledged)>();
            var (call, heads) = (0, new List<string>());
            disk = new MemoryDisk(Counts.BlockSize);
            Live(
                disk,
                Counts.Trial(life),
                d => d.After = (_, _) =>
                {
                    call++;
                    cuts.AddRange(moments.Where(m => m == call).Select(_ => (disk.AfterPowerCut(random), heads.Count)));
                },
                heads);
            foreach (var (left, acknowledged) in cuts)
                tally.Add(Judge(left, acknowledged, $"seed {Counts.Seed}, life {life}"));
        }

        tally.Print();
        Assert.True(tally["whole"] > 0 && tally["whole, and a content no entry names"] > 0);
    }

    [Fact]
    public void Attach_EveryCallInTurnFailsOnce_LeavesNoEntryWithoutItsContent()
    {
        var tally = new Tally("every nth call failed once while files are attached");
        for (var nth = 1; ; nth++)
        {
            var calls = 0;
            var disk = new MemoryDisk { BytesThatGetThrough = Counts.Trial(nth).Next(300) };
            var heads = new List<string>();
            try
            {
                Live(
                    disk,
                    Counts.Trial(nth),
                    d => d.Before = (_, _) =>
                    {
                        if (++calls == nth)
                            throw new IOException("rehearsed", IoError);
                    },
                    heads);
            }
            catch (BookUnavailableException e)
            {
                Assert.False(e.Message.Contains('\n', StringComparison.Ordinal), e.Message);
            }

            if (calls < nth)
                break;
            disk.Before = (_, _) => { };
            tally.Add(Judge(disk, heads.Count, $"call {nth}"));
        }

        tally.Print();
        Assert.True(tally.Total > 20, $"only {tally.Total} calls");
    }

    // The book is made whole first; what is watched is the attaching.
    private static void Live(MemoryDisk disk, Random random, Action<MemoryDisk> watch, List<string> heads)
    {
        using var book = BookInMemory.Make(disk);
        Steps.Begin(book);
        Steps.Next(book, random);
        watch(disk);
        for (var i = 0; i < 4; i++)
        {
            var content = new byte[random.Next(1, 20_000)];
            random.NextBytes(content);
            var id = book.Ledger.State.Present.First().Id;
            book.Attach("Ada", new Attached { Container = id, HappenedAt = StillClock.Now, Name = $"{i}.bin", Sha256 = "", Bytes = 0, MediaType = "" }, content);
            heads.Add(book.Ledger.HeadHash);
        }

        disk.After = (_, _) => { };
        disk.Before = (_, _) => { };
    }

    private static string Judge(MemoryDisk left, int acknowledged, string trial)
    {
        using (var book = BookInMemory.Open(left))
        {
            var attached = book.Ledger.Entries.OfType<Attached>().ToList();
            Assert.True(attached.Count == acknowledged || attached.Count == acknowledged + 1, $"{trial}: {acknowledged} were acknowledged, {attached.Count} are there");
            foreach (var entry in attached)
                Assert.Equal(entry.Bytes, book.ReadAttachment(entry.Sha256).Length);
        }

        var report = BookInMemory.Verify(left);
        Assert.True(report.Holds, $"{trial}: {string.Join("; ", report.Findings)}");
        return report.Notes.Any(n => n.Contains("named by no entry", StringComparison.Ordinal)) ? "whole, and a content no entry names" : "whole";
    }
}
