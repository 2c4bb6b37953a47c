using Stockroom.Book.Ledgers;
using Stockroom.Book.States;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Snapshots;

/// <summary>The snapshot of an open book: when it is due, and how it is put on the medium.</summary>
internal sealed class SnapshotFile(IDisk disk, BookFiles files, BookIdentity identity)
{
    /// <summary>Entries booked in one go after which it is written without waiting for the book to be closed.</summary>
    private const int Most = 5_000;

    private int _booked;
    private bool _isUnsound;

    /// <summary>The snapshot as it lies there; null where there is none, with the trouble where it cannot be used.</summary>
    public (Snapshot? Snapshot, string? Trouble) Read()
    {
        if (!disk.FileExists(files.Snapshot))
            return (null, null);
        try
        {
            using var file = disk.Open(files.Snapshot, Opening.Read);
            return (Snapshot.Decode(file.ReadAll(), identity.Book), null);
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e) || e is FormatException)
        {
            return (null, Unused(e.Message));
        }
    }

    /// <summary>What is told where it cannot be used, else null.</summary>
    public string? Check()
    {
        var (_, trouble) = Read();
        _isUnsound = trouble is not null;
        return trouble;
    }

    /// <summary>
    /// What a sound snapshot of this book knows that the journal lacks or has otherwise; null if nothing. It is written
    /// behind the journal, so a journal that lacks it was cut short or replaced.
    /// </summary>
    public string? Contradiction(JournalChain chain) => Contradiction(Read().Snapshot, chain);

    /// <inheritdoc cref="Contradiction(JournalChain)"/>
    public static string? Contradiction(Snapshot? snapshot, JournalChain chain) =>
        snapshot?.Misfit(chain) is { } misfit ? $"the snapshot does not fit the journal: {misfit}" : null;

    /// <summary>Counts what was booked; true when it is time to write.</summary>
    public bool IsDueAfter(int entries) => (_booked += entries) >= Most;

    /// <summary>Writes it at one stroke if something was booked since, or the old one is of no use.</summary>
    /// <returns>What is told where the disk refused; null where it did not.</returns>
    public string? Keep(Ledger ledger, string lineHash)
    {
        if (ledger.Entries.IsEmpty || (_booked == 0 && !_isUnsound))
            return null;
        var unfinished = files.Snapshot + ".new";
        try
        {
            Unfinished.Write(disk, unfinished, new Snapshot(identity.Book, ledger.LastTransaction, lineHash, ledger.Entries.Count, ledger.HeadHash, StateCodec.Encode(ledger.State)).Encode());
            disk.Replace(unfinished, files.Snapshot);
            disk.SyncFolder(files.Folder);
            (_booked, _isUnsound) = (0, false);
            return null;
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            return $"no snapshot was written ({DiskFaults.OneLine(e.Message)}); nothing is lost, the screens open more slowly";
        }
    }

    private string Unused(string why) => $"the snapshot '{Path.GetFileName(files.Snapshot)}' is not used: {DiskFaults.OneLine(why)}; it is written anew when something is booked";
}
