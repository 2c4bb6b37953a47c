using Stockroom.Book.Encoding;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;
using Stockroom.Storage.Lite;

namespace Stockroom.Storage.Repairs;

/// <summary>
/// All entries of a damaged book that the chain vouches for: those of the journal up to where it breaks, and behind them
/// those of LiteDB that follow on. Reads only.
/// </summary>
internal sealed class SoundEntries
{
    private SoundEntries(string genesisHash) => Chain = new JournalChain(genesisHash);

    /// <summary>The chain as it can be believed.</summary>
    public JournalChain Chain { get; }

    /// <summary>The lines of the journal they make, the same bytes as were written.</summary>
    public List<byte[]> Lines { get; } = [];

    /// <summary>Entries the journal had lost and LiteDB still has.</summary>
    public int FromLite { get; private set; }

    /// <summary>What could not be saved, a line each.</summary>
    public List<string> Lost { get; } = [];

    public static SoundEntries Of(IDisk disk, BookFiles files, BookIdentity identity)
    {
        var sound = new SoundEntries(identity.GenesisHash);
        var journal = disk.FileExists(files.Journal) ? Read(disk, files.Journal) : [];
        var good = sound.TakeJournal(journal, files, identity);
        sound.TakeLite(disk, files, identity);
        sound.Name(journal, good);
        return sound;
    }

    private int TakeJournal(byte[] journal, BookFiles files, BookIdentity identity)
    {
        using var stream = new MemoryStream(journal);
        var reading = JournalReading.Of(stream, identity.GenesisHash);
        reading.RefuseIfNewer(files);
        var good = journal[..(int)reading.GoodLength];
        foreach (var line in Split(good))
        {
            Chain.Follow(JournalLine.Decode(line));
            Lines.Add([.. line, (byte)'\n']);
        }

        return good.Length;
    }

    private void TakeLite(IDisk disk, BookFiles files, BookIdentity identity)
    {
        try
        {
            using var store = new LiteFiles(disk, files, identity, []).OpenAsFound(readOnly: true);
            if (store?.ReadBook() != identity.Book)
                return;
            var documents = store.ReadEntries()
                .Where(d => d["_id"].IsInt64 && d["transaction"].IsInt64 && d["_id"].AsInt64 > Chain.Entries.Count)
                .OrderBy(d => d["_id"].AsInt64);
            foreach (var transaction in documents.GroupBy(d => d["transaction"].AsInt64))
                Follow(transaction.Key, [.. transaction.Select(Believed)]);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Lost.Add($"the LiteDB file helped no further: {DiskFaults.OneLine(e.Message)}");
        }
    }

    // An entry's successor vouches for it, and the last has none: so each must fit its own hash as well.
    private static (Book.Entries.Entry Entry, string Text) Believed(LiteDB.BsonDocument document)
    {
        var text = document["text"].IsString ? document["text"].AsString : "";
        var entry = EntryCodec.Decode(text);
        return EntryDocument.Mismatch(document, entry, text, EntryCodec.HashOf(text)) is { } mismatch
            ? throw new FormatException($"entry {document["_id"].AsInt64} in it does not hold: {mismatch}")
            : (entry, text);
    }

    private void Follow(long number, List<(Book.Entries.Entry Entry, string Text)> transaction)
    {
        var (bytes, _) = JournalLine.Encode(number, Chain.LineHash, [.. transaction.Select(t => t.Entry)], [.. transaction.Select(t => t.Text)]);
        Chain.Follow(JournalLine.Decode(bytes.AsMemory(0, bytes.Length - 1)));
        Lines.Add(bytes);
        FromLite += transaction.Count;
    }

    // Lines of the journal behind the break that were not found again in LiteDB.
    private void Name(byte[] journal, int good)
    {
        if (FromLite > 0 && journal.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(Chain.LineHash)) < 0)
            Lost.Add($"transaction {Chain.Transaction} is the last that the LiteDB file has and was saved; that none of its entries is missing cannot be proved");
        var saved = Lines.Select(l => System.Text.Encoding.UTF8.GetString(l).TrimEnd('\n')).ToHashSet(StringComparer.Ordinal);
        var number = journal.AsSpan(0, good).Count((byte)'\n');
        foreach (var line in Split(journal[good..]))
        {
            number++;
            if (!saved.Contains(System.Text.Encoding.UTF8.GetString(line)))
                Lost.Add($"line {number} of the journal ({line.Length} bytes) is altered, cut short or does not follow what was saved; it is still in the old book");
        }
    }

    private static IEnumerable<byte[]> Split(byte[] text)
    {
        for (var start = 0; start < text.Length;)
        {
            var end = Array.IndexOf(text, (byte)'\n', start);
            end = end < 0 ? text.Length : end;
            yield return text[start..end];
            start = end + 1;
        }
    }

    private static byte[] Read(IDisk disk, string path)
    {
        using var file = disk.Open(path, Opening.Read);
        return file.ReadAll();
    }
}
