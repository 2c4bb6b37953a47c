using Stockroom.Book;
using Stockroom.Book.Encoding;
using Stockroom.Book.Ledgers;
using Stockroom.Book.States;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests.Books;

/// <summary>What a damaged book answers, against the book as it was: refused, repaired and told, or harmless; anything else fails.</summary>
internal sealed class Judgement
{
    private readonly List<string> _texts;
    private readonly BookIdentity _identity;

    private readonly long _lastTransaction;

    // Hash of the state after each number of entries, from none on.
    private readonly List<string> _states;

    public Judgement(StockBook whole)
    {
        (_texts, _identity, _lastTransaction) = (Texts(whole.Ledger), whole.Identity, whole.Ledger.LastTransaction);
        _states = [.. Enumerable.Range(0, whole.Ledger.Entries.Count + 1)
            .Select(n => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(StateCodec.Encode(Ledger.Of("", whole.Ledger.Entries.Take(n)).State))))];
    }

    public static Judgement Of(MemoryDisk whole)
    {
        using var book = BookInMemory.Open(whole.Copy());
        return new Judgement(book);
    }

    public string On(MemoryDisk damaged, string trial)
    {
        try
        {
            return Write(damaged, trial, findings: Look(damaged, trial));
        }
        catch (Exception e) when (e is not Xunit.Sdk.XunitException)
        {
            Assert.Fail($"{trial}: a crash: {e}");
            throw;
        }
    }

    private static List<string> Texts(Ledger ledger) => [.. ledger.Entries.Select(EntryCodec.Encode)];

    // Verifying and reading change no byte.
    private int Look(MemoryDisk damaged, string trial)
    {
        var before = Bytes(damaged);
        var findings = 0;
        Refusable(() => findings = BookInMemory.Verify(damaged) is { Holds: true } report ? report.Notes.Count : 1, trial);
        Refusable(
            () =>
            {
                using var reader = StockBookFolder.OpenDamaged(damaged, BookInMemory.Folder);
                if (reader.Messages.Count == 0)
                    Same(reader, trial);
                else
                    Begins(reader.Ledger, trial);
            },
            trial);
        Refusable(
            () =>
            {
                using var seen = BookOnSight.Open(damaged, BookInMemory.Folder);
                SameState(seen.State, trial + ", as first shown", isWhole: false);
                seen.Whole.Wait();
                if (seen.HasNoLedger)
                    return;
                Begins(seen.Ledger, trial);
                SameState(seen.State, trial + ", as shown at last", isWhole: seen.Damage.Count == 0 && seen.Ledger.Entries.Count == _texts.Count);
            },
            trial);
        Assert.Equal(before, Bytes(damaged));
        return findings;
    }

    private string Write(MemoryDisk damaged, string trial, int findings)
    {
        var before = Bytes(damaged);
        var told = 0;
        if (Refusable(
            () =>
            {
                using var book = BookInMemory.Open(damaged);
                Same(book, trial);
                told = book.Messages.Count;
                Steps.Next(book, new Random(1));
                var booked = book.Messages.Count;
                Assert.True(book.Verify().Holds || booked > told, $"{trial}: it does not hold and nobody was told");
                told = booked;
            },
            trial))
        {
            Assert.Equal(before[BookInMemory.Journal], Bytes(damaged)[BookInMemory.Journal]);
            return "refused";
        }

        // Where LiteDB could not take the new entry, it is built anew now; then all is as it should be.
        BookInMemory.Open(damaged).Dispose();
        using var again = BookInMemory.Open(damaged);
        Assert.Equal(_texts, Texts(again.Ledger).Take(_texts.Count));
        Assert.True(again.Ledger.LastTransaction > _lastTransaction, $"{trial}: what was booked after the damage is gone");
        Assert.Empty(again.Messages);
        Assert.True(again.Verify().Holds, trial);
        Assert.True(told > 0 || findings == 0, $"{trial}: verifying found something that opening did not tell");
        return told > 0 ? "repaired from the journal and told" : "harmless";
    }

    private void Same(StockBook book, string trial)
    {
        Assert.True(_texts.SequenceEqual(Texts(book.Ledger)), $"{trial}: A SILENT WRONG ANSWER: {_texts.Count} entries were booked, {book.Ledger.Entries.Count} are shown; told: {string.Join("; ", book.Messages)}");
        Assert.True(_identity == book.Identity, $"{trial}: A SILENT WRONG ANSWER: {book.Identity} where {_identity} was made");
    }

    // Whatever is shown of a damaged book is a beginning of what was booked, and nothing else.
    private void Begins(Ledger shown, string trial) =>
        Assert.True(_texts.Take(shown.Entries.Count).SequenceEqual(Texts(shown)), $"{trial}: A WRONG ANSWER: what is shown was not booked");

    private void SameState(BookState shown, string trial, bool isWhole)
    {
        var bytes = Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(StateCodec.Encode(shown)));
        Assert.True(isWhole ? _states[^1] == bytes : _states.Contains(bytes), $"{trial}: A WRONG ANSWER: the book never stood so");
    }

    private static bool Refusable(Action act, string trial)
    {
        try
        {
            act();
            return false;
        }
        catch (BookUnavailableException e)
        {
            Assert.False(e.Message.Contains('\n', StringComparison.Ordinal), $"{trial}: {e.Message}");
            return true;
        }
    }

    private static Dictionary<string, string> Bytes(MemoryDisk disk) =>
        BookInMemory.Files.Where(disk.FileExists).ToDictionary(f => f, f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(disk[f])), StringComparer.Ordinal);
}
