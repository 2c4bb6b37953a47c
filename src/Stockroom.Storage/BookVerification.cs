using Stockroom.Book.Encoding;
using Stockroom.Book.Ledgers;
using Stockroom.Book.States;
using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Locks;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage;

/// <summary>What was checked of a book and what does not hold.</summary>
/// <param name="Transactions">Lines of the journal that hold.</param>
/// <param name="Entries">Entries in them.</param>
/// <param name="HeadHash">Hash of the last entry that holds: copy it to paper, and the record up to it cannot be altered unseen.</param>
/// <param name="Findings">What does not hold, a line each; empty if everything does.</param>
/// <param name="Notes">What a program that was killed left behind and the next opening to write puts right; nothing acknowledged is lost by it.</param>
public sealed record VerificationReport(long Transactions, long Entries, string HeadHash, IReadOnlyList<string> Findings, IReadOnlyList<string> Notes)
{
    public bool Holds => Findings.Count == 0;

    /// <summary>Those of the findings that are of attachments; the record itself holds if there are no others.</summary>
    public IReadOnlyList<string> OfAttachments { get; init; } = [];

    /// <summary>True if journal, LiteDB and ledger hold, whatever became of the attachments.</summary>
    public bool RecordHolds => Findings.Count == OfAttachments.Count;
}

/// <summary>Checks journal, LiteDB and ledger against each other.</summary>
internal static class BookVerification
{
    public static VerificationReport OfOpen(JournalFile journal, LiteStore lite, BookIdentity identity, Ledger ledger, AttachmentFiles attachments)
    {
        var (findings, notes) = (new List<string>(), new List<string>());
        var reading = journal.ReadAgain(identity.GenesisHash);
        CheckJournal(reading, findings, notes);
        if (reading.Chain.EntryHash != ledger.HeadHash)
            findings.Add("the journal no longer says what the open book says: it was changed meanwhile");
        try
        {
            findings.AddRange(LiteComparison.Of(lite, reading.Chain, identity).Findings);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            findings.Add(Unreadable(e));
        }

        return Report(reading, findings, notes, attachments);
    }

    public static VerificationReport OfFolder(IDisk disk, string folder)
    {
        var files = StockBookFolder.Find(disk, folder);
        return StockBookFolder.Guarded($"the book '{folder}' cannot be verified", () =>
        {
            var identity = BookIdentity.Read(disk, files);
            using var still = BookLock.TryTakeShared(disk, files);
            if (still is null && disk.FileExists(files.Lock))
                throw new BookUnavailableException(BookFault.Locked, $"the book '{folder}' is open in {LockHolder.Of(disk, files)}; close it there to verify it");
            var (findings, notes) = (new List<string>(), new List<string>());
            var reading = ReadJournal(disk, files, identity, findings, notes);
            CheckLite(disk, files, identity, reading, findings, notes);
            CheckSnapshot(new SnapshotFile(disk, files, identity), reading.Chain, findings, notes);
            return Report(reading, findings, notes, new AttachmentFiles(disk, files));
        });
    }

    private static JournalReading ReadJournal(IDisk disk, BookFiles files, BookIdentity identity, List<string> findings, List<string> notes)
    {
        if (!disk.FileExists(files.Journal))
        {
            findings.Add("the journal is missing");
            using var nothing = new MemoryStream();
            return JournalReading.Of(nothing, identity.GenesisHash);
        }

        using var file = disk.Open(files.Journal, Opening.Read);
        var reading = JournalReading.Of(file, identity.GenesisHash);
        CheckJournal(reading, findings, notes);
        return reading;
    }

    private static void CheckJournal(JournalReading reading, List<string> findings, List<string> notes)
    {
        if (reading.Broken is { } broken)
            findings.Add(broken.Among(reading.Chain.Entries.Count));
        if (reading.TornBytes > 0)
            notes.Add($"the journal's last line is cut short ({reading.TornBytes} bytes, never acknowledged)");
        for (var i = 0; i < reading.Chain.Entries.Count; i++)
        {
            if (EntryCodec.Encode(reading.Chain.Entries[i]) != reading.Chain.EntryTexts[i])
                findings.Add($"entry {i + 1} is not in canonical form");
            if (i > 0 && reading.Chain.Entries[i].RecordedAt < reading.Chain.Entries[i - 1].RecordedAt)
                notes.Add($"entry {i + 1} was booked at an earlier time than entry {i}: the clock was set back, and the keeper said that it was right");
        }

        foreach (var (number, problem) in Ledger.Of("", reading.Chain.Entries).Problems)
            findings.Add($"entry {number} has no effect: {problem}");
    }

    private static void CheckLite(IDisk disk, BookFiles files, BookIdentity identity, JournalReading reading, List<string> findings, List<string> notes)
    {
        try
        {
            using var store = new LiteFiles(disk, files, identity, []).OpenAsFound(readOnly: true);
            if (store is null)
            {
                findings.Add("the LiteDB file is missing or unreadable");
                return;
            }

            var comparison = LiteComparison.Of(store, reading.Chain, identity);
            findings.AddRange(comparison.Findings);
            if (comparison.Findings.Count == 0 && comparison.Held < reading.Chain.Entries.Count)
                notes.Add($"the LiteDB file lacks the last {reading.Chain.Entries.Count - comparison.Held} entries; opening the book to write replays them");
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            findings.Add(Unreadable(e));
        }
    }

    // It is not the record: one that cannot be used is told. One that is sound and knows more, or another thing, says that
    // the journal was cut short or somebody wrote it.
    private static void CheckSnapshot(SnapshotFile file, JournalChain chain, List<string> findings, List<string> notes)
    {
        var (snapshot, trouble) = file.Read();
        if (trouble is not null)
            notes.Add(trouble);
        if (snapshot is null)
            return;
        if (SnapshotFile.Contradiction(snapshot, chain) is { } contradiction)
            findings.Add(contradiction);
        else if (snapshot.Entries == chain.Entries.Count && !snapshot.StateJson.Span.SequenceEqual(StateCodec.Encode(Ledger.Of("", chain.Entries).State)))
            findings.Add("the snapshot says otherwise than the journal; take it away, it is written anew");
    }

    private static string Unreadable(Exception e) => $"the LiteDB file cannot be read: {DiskFaults.OneLine(e.Message)}";

    private static VerificationReport Report(JournalReading reading, List<string> findings, List<string> notes, AttachmentFiles attachments)
    {
        var (ofAttachments, unknown) = attachments.Check(reading.Chain.Entries);
        return new(reading.Chain.Transaction, reading.Chain.Entries.Count, reading.Chain.EntryHash, [.. findings, .. ofAttachments], [.. notes, .. unknown]) { OfAttachments = ofAttachments };
    }
}
