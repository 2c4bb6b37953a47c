using LiteDB;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Lite;

/// <summary>What LiteDB holds against what the journal says.</summary>
internal sealed class LiteComparison
{
    private LiteComparison(long held) => Held = held;

    /// <summary>Entries LiteDB has without a gap from the first on.</summary>
    public long Held { get; private set; }

    /// <summary>What does not hold, a line each; empty if LiteDB is equal or merely behind.</summary>
    public List<string> Findings { get; } = [];

    /// <summary>Compares every document, then the index that leads to them.</summary>
    /// <exception cref="InvalidDataException">The index does not lead to all.</exception>
    public static LiteComparison Of(LiteStore store, JournalChain chain, BookIdentity identity)
    {
        var comparison = new LiteComparison(0);
        if (store.ReadBook() != identity.Book)
        {
            comparison.Findings.Add($"the LiteDB file belongs to another book ({store.ReadBook() ?? "it does not say which"}); put back the one that belongs here, or move it away to have it built anew from the journal");
            return comparison;
        }

        comparison.Compare(store.ReadEntries(), chain);
        if (comparison.Findings.Count == 0)
            store.CheckIndex(comparison.Held);
        return comparison;
    }

    private void Compare(List<BsonDocument> documents, JournalChain chain)
    {
        var count = chain.Entries.Count;
        var seen = new bool[count];
        var ahead = 0L;
        foreach (var document in documents)
        {
            if (!document["_id"].IsInt64 || document["_id"].AsInt64 is var number && (number < 1 || number > count))
            {
                ahead++;
                continue;
            }

            var index = (int)number - 1;
            seen[index] = true;
            if (EntryDocument.Mismatch(document, chain.Entries[index], chain.EntryTexts[index], chain.EntryHashes[index]) is { } mismatch)
                Findings.Add($"entry {number} in the LiteDB file is not the journal's: {mismatch}");
        }

        if (ahead > 0)
            Findings.Insert(0, $"the LiteDB file has {documents.Count} entries and the journal {count}: the journal was cut short or the file tampered with; put back the whole journal");
        while (Held < count && seen[Held])
            Held++;
        for (var i = Held; i < count; i++)
        {
            if (seen[i])
            {
                Findings.Add($"entry {Held + 1} is missing in the LiteDB file though later ones are there");
                break;
            }
        }
    }
}
