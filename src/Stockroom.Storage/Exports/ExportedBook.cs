using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Storage.Exports;

/// <summary>A book as a document holds it, checked whole: its chain, its rules, its attachments.</summary>
/// <param name="Identity">Which book it is.</param>
/// <param name="Ledger">All of its entries.</param>
/// <param name="Attachments">The contents that are in the document, by their hash.</param>
public sealed record ExportedBook(BookIdentity Identity, Ledger Ledger, IReadOnlyDictionary<string, byte[]> Attachments)
{
    /// <summary>Hashes of attachments that entries name and the document lacks.</summary>
    public IReadOnlyList<string> MissingAttachments => [.. Storage.Attachments.AttachmentFiles.NamedBy(Ledger.Entries).Keys.Where(h => !Attachments.ContainsKey(h))];

    /// <summary>The lines of its journal, byte for byte as they were written.</summary>
    internal byte[] Journal()
    {
        using var journal = new MemoryStream();
        var previous = Identity.GenesisHash;
        foreach (var transaction in Ledger.Entries.GroupBy(e => e.Transaction))
        {
            List<Entry> entries = [.. transaction];
            var (bytes, hash) = Journals.JournalLine.Encode(transaction.Key, previous, entries, [.. entries.Select(Stockroom.Book.Encoding.EntryCodec.Encode)]);
            journal.Write(bytes);
            previous = hash;
        }

        return journal.ToArray();
    }
}
