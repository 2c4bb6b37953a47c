using Stockroom.Book.Encoding;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests;

/// <summary>The disk refuses a call, once or from then on; what was acknowledged stands and what was refused is not there.</summary>
public sealed class FaultTests
{
    private const int IoError = 5;
    private const int DiskFull = 28;
    private const int Stale = 116;

    [Fact]
    public void Book_EveryCallInTurnFailsOnce_KeepsExactlyWhatWasAcknowledged()
    {
        var tally = new Tally("every nth call failed once");
        for (var nth = 1; ; nth++)
        {
            var calls = 0;
            var end = Live(
                (_, _) =>
                {
                    if (++calls == nth)
                        throw new IOException("rehearsed", IoError);
                },
                nth);
            if (calls < nth)
                break;
            tally.Add(end);
        }

        tally.Print();
        Assert.True(tally.Total > 100, $"only {tally.Total} calls");
    }

    [Fact]
    public void Book_DiskFullFromEveryWriteOn_KeepsExactlyWhatWasAcknowledgedAndGoesOnWhenThereIsRoom()
    {
        var tally = new Tally("disk full at each write");
        for (var nth = 1; ; nth++)
        {
            var writes = 0;
            var end = Live(
                (call, _) =>
                {
                    if (call is DiskCall.Write or DiskCall.SetLength && ++writes >= nth)
                        throw new IOException("rehearsed", DiskFull);
                },
                nth);
            if (writes < nth)
                break;
            tally.Add(end);
        }

        tally.Print();
        Assert.True(tally.Total > 30, $"only {tally.Total} writes");
    }

    // As on a network share: from the nth call on nothing works, files already open included, and after a while all does.
    [Fact]
    public void Book_ItsDiskGoneForAWhileFromEveryCallOn_KeepsExactlyWhatWasAcknowledgedAndGoesOnWhenItIsBack()
    {
        var tally = new Tally("disk gone for 2 to 20 calls from each call on");
        for (var nth = 1; ; nth++)
        {
            var (calls, away) = (0, Counts.Trial(-nth).Next(2, 21));
            var end = Live(
                (_, _) =>
                {
                    if (++calls >= nth && calls < nth + away)
                        throw new IOException("Stale file handle", Stale);
                },
                nth,
                mayHoldOneMore: true);
            if (calls < nth)
                break;
            tally.Add(end);
        }

        tally.Print();
        Assert.True(tally.Total > 100, $"only {tally.Total} calls");
    }

    // Makes, books, closes and opens as long as the disk allows; then looks at what is there on a disk that works again.
    // Where a line was written, could not be synced and could not be taken back either, the book may hold it afterwards: that
    // was said in place of "nothing was booked".
    private static string Live(Action<DiskCall, string> fault, int nth, bool mayHoldOneMore = false)
    {
        var trial = $"seed {Counts.Seed}, call {nth}";
        var random = Counts.Trial(nth);
        var disk = new MemoryDisk { BytesThatGetThrough = random.Next(300), Before = fault };
        var heads = new List<string>();
        var isMade = false;
        var (refusals, untold) = (0, false);
        for (var session = 0; session < 4; session++)
        {
            try
            {
                using var book = isMade ? BookInMemory.Open(disk) : BookInMemory.Make(disk);
                isMade = true;
                for (var i = 0; i < 4; i++)
                {
                    if (book.Ledger.Entries.IsEmpty)
                        Steps.Begin(book);
                    else
                        Steps.Next(book, random);
                    heads.Add(book.Ledger.HeadHash);
                }
            }
            catch (BookUnavailableException e)
            {
                Assert.False(e.Message.Contains('\n', StringComparison.Ordinal), e.Message);
                refusals++;
                untold |= e.Message.StartsWith("it cannot be told whether", StringComparison.Ordinal);
                if (!isMade && disk.FileExists(BookInMemory.Identity))
                    isMade = true;
                else if (!isMade)
                    disk = new MemoryDisk { BytesThatGetThrough = disk.BytesThatGetThrough, Before = fault };
            }
        }

        disk.Before = (_, _) => { };
        if (!isMade)
        {
            Assert.Empty(heads);
            return "no book was made";
        }

        using var again = BookInMemory.Open(disk);
        Assert.True(
            (heads.Count == 0 ? again.Ledger.Entries.IsEmpty : again.Ledger.HeadHash == heads[^1]) || (mayHoldOneMore && untold && Before(again.Ledger) == heads.LastOrDefault()),
            $"{trial}: {heads.Count} transactions were acknowledged, {again.Ledger.LastTransaction} are there; {string.Join("; ", again.Messages)}");
        Assert.True(again.Verify().Holds, trial);
        if (again.Ledger.Entries.IsEmpty)
            Steps.Begin(again);
        Steps.Next(again, random);
        return refusals == 0 ? "went on unhindered" : untold ? "refused in one line that could not tell whether it was booked, then went on" : "refused in one line, then went on";
    }

    // Head of the ledger before its last transaction.
    private static string? Before(Ledger ledger) =>
        ledger.Entries.LastOrDefault(e => e.Transaction < ledger.LastTransaction) is { } entry ? EntryCodec.HashOf(entry) : null;
}
