using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;
using Stockroom.Storage.Locks;
using Stockroom.Storage.Repairs;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage.Readings;

/// <summary>
/// Opens a book to read. What does not hold is named, and the rest is shown: a damaged record is still better read than
/// not. Changes nothing and keeps nobody out.
/// </summary>
internal sealed class BookReading(IDisk disk, BookFiles files)
{
    private readonly List<string> _messages = [];
    private readonly List<string> _damage = [];

    public StockBook Open() => Open(BookIdentity.Read(disk, files));

    /// <summary>Opens also a book whose identity was lost or is another's, where LiteDB and the journal agree on which it is.</summary>
    public StockBook OpenDamaged()
    {
        var (identity, damage) = BookRepair.IdentityOf(disk, files);
        if (damage is not null)
            _damage.Add(damage);
        return Open(identity);
    }

    private StockBook Open(BookIdentity identity)
    {
        using var still = BookLock.TryTakeShared(disk, files);
        var isWritten = still is null && disk.FileExists(files.Lock);
        // Before the journal: of a book that is being written, the snapshot is never newer than a journal read after it.
        var snapshot = new SnapshotFile(disk, files, identity).Read().Snapshot;
        var chain = ReadJournal(identity, isWritten);
        if (isWritten)
            _messages.Add($"{LockHolder.Of(disk, files)} has the book open to write; its LiteDB file was not compared");
        else
            chain = Compare(identity, chain);
        if (_damage.Count == 0 && SnapshotFile.Contradiction(snapshot, chain) is { } contradiction)
            _damage.Add(contradiction);
        if (_damage.Count > 0)
            _messages.Insert(0, InOneLine());
        return new StockBook(disk, files, identity, null, null, chain, _messages, TimeProvider.System, []) { Damage = _damage };
    }

    private JournalChain ReadJournal(BookIdentity identity, bool isWritten)
    {
        if (!disk.FileExists(files.Journal))
        {
            _damage.Add($"it has no {Path.GetFileName(files.Journal)}; put back the journal that belongs to it");
            return new JournalChain(identity.GenesisHash);
        }

        using var file = disk.Open(files.Journal, Opening.Read);
        var reading = JournalReading.Of(file, identity.GenesisHash);
        reading.RefuseIfNewer(files);
        if (reading.Broken is { } broken)
            _damage.Add(broken.Among(reading.Chain.Entries.Count));
        if (reading.TornBytes > 0 && !isWritten)
            _messages.Add($"the journal's last line is cut short ({reading.TornBytes} bytes, never acknowledged); it is taken off when the book is next opened to write");
        return reading.Chain;
    }

    // Where the journal fails, LiteDB's entries are shown as far as they follow on by their hashes.
    private JournalChain Compare(BookIdentity identity, JournalChain chain)
    {
        var lite = new LiteFiles(disk, files, identity, _messages);
        var findings = lite.CompareOnly(chain);
        if (_damage.Count == 0 && findings.Count == 0)
            return chain;
        var sound = SoundEntries.Of(disk, files, identity);
        if (sound.FromLite == 0)
        {
            _damage.AddRange(findings);
            return chain;
        }

        _damage.AddRange(_damage.Count == 0 ? findings : []);
        _damage.Add($"entries {chain.Entries.Count + 1} to {sound.Chain.Entries.Count} are shown from the LiteDB file, where they follow on by their hashes");
        return sound.Chain;
    }

    private string InOneLine()
    {
        var more = _damage.Count > 2 ? $"; and {_damage.Count - 2} findings more" : "";
        return $"the book '{files.Folder}' is DAMAGED and opens to read only: {string.Join("; ", _damage.Take(2))}{more}; {BookUnavailableException.WhatToDo}";
    }
}
