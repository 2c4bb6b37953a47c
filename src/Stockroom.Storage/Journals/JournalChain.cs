using Stockroom.Book.Entries;
using Stockroom.Storage.Snapshots;

namespace Stockroom.Storage.Journals;

/// <summary>Follows the two chains through a journal, of lines and of entries, and says where one breaks.</summary>
internal sealed class JournalChain(string genesisHash)
{
    private int _before;

    public string LineHash { get; private set; } = genesisHash;

    public string EntryHash { get; private set; } = genesisHash;

    public long Transaction { get; private set; }

    /// <summary>Entries up to here, those before the snapshot included.</summary>
    public int Count => _before + Entries.Count;

    public List<Entry> Entries { get; } = [];

    public List<string> EntryHashes { get; } = [];

    public List<string> EntryTexts { get; } = [];

    /// <summary>A chain that goes on behind a snapshot and holds only what follows it.</summary>
    public static JournalChain From(Snapshot snapshot) => new(snapshot.LineHash) { EntryHash = snapshot.EntryHash, Transaction = snapshot.Transaction, _before = snapshot.Entries };

    /// <summary>Takes the next line.</summary>
    /// <exception cref="FormatException">The line does not follow the one before.</exception>
    public void Follow(JournalLine line)
    {
        if (line.Previous != LineHash)
            throw new FormatException("it does not follow the line before: a line was altered, taken out or put in");
        if (line.Transaction != Transaction + 1)
            throw new FormatException($"it is transaction {line.Transaction} where {Transaction + 1} belongs");
        if (line.Entries.Count == 0)
            throw new FormatException("it holds no entry");
        var hash = EntryHash;
        for (var i = 0; i < line.Entries.Count; i++)
        {
            var entry = line.Entries[i];
            if (entry.Number != Count + i + 1 || entry.Transaction != line.Transaction)
                throw new FormatException($"its entry {entry.Number} of transaction {entry.Transaction} does not belong there");
            if (entry.Previous != hash)
                throw new FormatException($"its entry {entry.Number} does not follow the entry before");
            hash = line.EntryHashes[i];
        }

        Entries.AddRange(line.Entries);
        EntryHashes.AddRange(line.EntryHashes);
        EntryTexts.AddRange(line.EntryTexts);
        (LineHash, EntryHash, Transaction) = (line.Hash, hash, line.Transaction);
    }
}
