using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Tests.Disks;

public sealed class FaultTests
{
    private const int DiskFullOnUnix = 28;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(200)]
    public void Append_DiskFullInTheJournal_BooksNothingAndLeavesNoHalfLine(int through)
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk { BytesThatGetThrough = through };
        using (var book = folder.Make(disk))
        {
            BookOnDisk.Receive(book);
            var before = folder.Bytes();
            FailOnce(disk, DiskCall.Write, "journal.txt", DiskFullOnUnix);
            var refusal = Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
            Assert.Equal(BookFault.DiskFull, refusal.Fault);
            Assert.Contains("nothing was booked", refusal.Message, StringComparison.Ordinal);
            Assert.Equal(before, folder.Bytes());
            BookOnDisk.Receive(book);
            Assert.True(book.Verify().Holds);
        }

        using var again = folder.Open();
        Assert.Equal(5, again.Ledger.Entries.Count);
        Assert.Empty(again.Messages);
    }

    [Fact]
    public void Append_JournalCannotBeSynced_BooksNothing()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk();
        using var book = folder.Make(disk);
        var before = folder.Bytes();
        FailOnce(disk, DiskCall.Sync, "journal.txt", 5);
        Assert.Equal(BookFault.Disk, Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book)).Fault);
        Assert.Equal(before, folder.Bytes());
        Assert.Single(book.Ledger.Entries);
        BookOnDisk.Receive(book);
        Assert.True(book.Verify().Holds);
    }

    [Fact]
    public void Append_AFailedWriteCannotBeTakenBack_BooksNothingUntilItCanAndThenGoesOn()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk { BytesThatGetThrough = 90 };
        using (var book = folder.Make(disk))
        {
            disk.Before = ShareIsGone;
            Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
            Assert.Contains("cannot be taken off yet", Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book)).Message, StringComparison.Ordinal);
            disk.Before = (_, _) => { };
            BookOnDisk.Receive(book);
            Assert.True(book.Verify().Holds);
        }

        using var again = folder.Open();
        Assert.Empty(again.Messages);
        Assert.Equal(3, again.Ledger.Entries.Count);
    }

    [Fact]
    public void Append_AFailedWriteNeverTakenBack_IsCutOffOnTheNextOpening()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk { BytesThatGetThrough = 90 };
        using (var book = folder.Make(disk))
        {
            disk.Before = ShareIsGone;
            Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
        }

        using var again = folder.Open();
        Assert.Single(again.Ledger.Entries);
        Assert.Contains(again.Messages, m => m.Contains("90 bytes, never acknowledged", StringComparison.Ordinal));
    }

    [Fact]
    public void Append_TheFolderMovedAwayAndBack_BooksNothingWhileItIsGoneAndThenGoesOn()
    {
        using var folder = new BookOnDisk();
        using (var book = folder.Make())
        {
            Directory.Move(folder.Folder, folder.Beside("away"));
            var refusal = Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
            Assert.Contains("its journal is gone", refusal.Message, StringComparison.Ordinal);
            Directory.Move(folder.Beside("away"), folder.Folder);
            BookOnDisk.Receive(book);
            File.AppendAllText(folder.Journal, "\n");
            Assert.Contains("another program wrote into it", Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book)).Message, StringComparison.Ordinal);
            File.WriteAllBytes(folder.Journal, File.ReadAllBytes(folder.Journal)[..^1]);
        }

        using var again = folder.Open();
        Assert.Equal(3, again.Ledger.Entries.Count);
    }

    [Fact]
    public void Append_LiteDbCannotTakeIt_IsBookedToldAndReplayedOnTheNextOpening()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk();
        using (var book = folder.Make(disk))
        {
            FailOnce(disk, DiskCall.Write, "book.litedb-log", DiskFullOnUnix);
            BookOnDisk.Receive(book);
            Assert.Contains("transaction 2 is safe in the journal", Assert.Single(book.Messages), StringComparison.Ordinal);
            Assert.Throws<BookUnavailableException>(() => BookOnDisk.Receive(book));
        }

        using var again = folder.Open();
        Assert.Equal(3, again.Ledger.Entries.Count);
        Assert.Contains("replayed", Assert.Single(again.Messages), StringComparison.Ordinal);
        Assert.True(again.Verify().Holds);
    }

    [Fact]
    public void Append_KilledAfterAnyCall_KeepsTheWholeTransaction()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk();
        var moments = new List<Dictionary<string, byte[]>>();
        string after;
        using (var book = folder.Make(disk))
        {
            BookOnDisk.Receive(book);
            disk.After = (_, _) => moments.Add(folder.Bytes());
            BookOnDisk.Receive(book, "iodine");
            after = book.Ledger.HeadHash;
            disk.After = (_, _) => { };
        }

        Assert.True(moments.Count >= 4, $"{moments.Count} calls");
        foreach (var moment in moments)
        {
            folder.PutBack(moment);
            using var book = folder.Open();
            // The journal's line is written in the first of these calls; cut short in the middle is the journal's own test.
            Assert.Equal(after, book.Ledger.HeadHash);
            Assert.True(book.Verify().Holds);
        }
    }

    [Fact]
    public void Make_KilledAfterAnyCall_IsAWholeBookOrNone()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk();
        var moments = new List<Dictionary<string, byte[]>>();
        disk.After = (_, _) => moments.Add(folder.Bytes());
        StockBookFolder.Create(disk, folder.Folder, TimeProvider.System).Dispose();
        Assert.True(moments.Count >= 5);
        var whole = 0;
        foreach (var moment in moments)
        {
            folder.PutBack(moment);
            if (!File.Exists(Path.Combine(folder.Folder, "book.json")))
                continue;
            using var book = folder.Open();
            Assert.Empty(book.Ledger.Entries);
            whole++;
        }

        Assert.True(whole > 0 && whole < moments.Count);
    }

    [Fact]
    public void Checkpoint_KilledAfterAnyCall_LosesNothing()
    {
        using var folder = new BookOnDisk();
        var disk = new RehearsedDisk();
        var moments = new List<Dictionary<string, byte[]>>();
        var book = folder.Make(disk);
        for (var i = 0; i < 5; i++)
            BookOnDisk.Receive(book);
        var head = book.Ledger.HeadHash;
        disk.After = (_, file) => moments.Add(folder.Bytes());
        book.Dispose();
        Assert.True(moments.Count >= 4, $"{moments.Count} calls while closing");
        foreach (var moment in moments)
        {
            folder.PutBack(moment);
            using var again = folder.Open();
            Assert.Equal(head, again.Ledger.HeadHash);
            Assert.True(again.Verify().Holds);
        }
    }

    [Fact]
    public void Append_EveryCallInTurnFails_NothingAcknowledgedIsLostAndNothingHalfIsThere()
    {
        for (var nth = 1; ; nth++)
        {
            using var folder = new BookOnDisk();
            var disk = new RehearsedDisk { BytesThatGetThrough = 100 };
            var acknowledged = 0;
            var calls = 0;
            using (var book = folder.Make(disk))
            {
                disk.Before = (_, _) =>
                {
                    if (++calls == nth)
                        throw new IOException("rehearsed", DiskFullOnUnix);
                };
                for (var i = 0; i < 3; i++)
                {
                    try
                    {
                        BookOnDisk.Receive(book);
                        acknowledged++;
                    }
                    catch (BookUnavailableException)
                    {
                        // Refused in words; what was acknowledged before must stand.
                    }
                }

                disk.Before = (_, _) => { };
            }

            using var again = folder.Open();
            Assert.Equal(1 + (2 * acknowledged), again.Ledger.Entries.Count);
            Assert.True(again.Verify().Holds);
            if (calls < nth)
            {
                Assert.True(nth > 10, $"only {nth} calls");
                return;
            }
        }
    }

    [Fact]
    public void Explain_WhatTheDiskAnswers_SaysItInTheKeepersWords()
    {
        Assert.Equal(BookFault.DiskFull, DiskFaults.Explain(new IOException("x", DiskFullOnUnix), "y").Fault);
        Assert.Equal(BookFault.ReadOnly, DiskFaults.Explain(new IOException("x", 30), "y").Fault);
        Assert.Equal(BookFault.ReadOnly, DiskFaults.Explain(new UnauthorizedAccessException("x"), "y").Fault);
        Assert.Equal(BookFault.Disk, DiskFaults.Explain(new IOException("two\nlines", 5), "y").Fault);
        Assert.DoesNotContain('\n', DiskFaults.Explain(new IOException("two\nlines", 5), "y").Message);
    }

    [Fact]
    public void Open_AFolderThatMayNotBeWritten_IsRefusedInOneLineAndCanBeRead()
    {
        using var folder = new BookOnDisk();
        folder.MakeAndClose();
        var disk = new RehearsedDisk { Before = (_, _) => throw new UnauthorizedAccessException("rehearsed") };
        var before = folder.Bytes();
        var refusal = Assert.Throws<BookUnavailableException>(() => folder.OpenOn(disk));
        Assert.Equal(BookFault.ReadOnly, refusal.Fault);
        Assert.Equal(before, folder.Bytes());
        using var reader = StockBookFolder.Open(disk, folder.Folder, readOnly: true, TimeProvider.System);
        Assert.Equal(11, reader.Ledger.Entries.Count);
    }

    private static void ShareIsGone(DiskCall call, string file)
    {
        if (call is DiskCall.Write or DiskCall.SetLength or DiskCall.Sync)
            throw new IOException("Stale file handle", 116);
    }

    private static void FailOnce(RehearsedDisk disk, DiskCall call, string file, int error)
    {
        var done = false;
        disk.Before = (c, f) =>
        {
            if (done || c != call || f != file)
                return;
            done = true;
            throw new IOException("rehearsed", error);
        };
    }
}
