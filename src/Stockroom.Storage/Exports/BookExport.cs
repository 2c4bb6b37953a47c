using System.Text;
using Stockroom.Book.Encoding;
using Stockroom.Storage.Attachments;

namespace Stockroom.Storage.Exports;

/// <summary>
/// A whole book as one JSON document: its identity, every entry in its canonical text, and the content of its attachments.
/// The same book gives the same bytes, and <see cref="BookImport"/> makes an equal book of them.
/// </summary>
public static class BookExport
{
    /// <summary>Most bytes of attachments that go into a document; beyond them a backup is the way.</summary>
    public const long MostAttachmentBytes = 200_000_000;

    internal const string Purpose = "stockroom export";
    internal const int Version = 1;

    /// <summary>Writes a book out.</summary>
    /// <returns>The document, and the hashes of attachments that are missing or altered and so are not in it.</returns>
    /// <exception cref="BookUnavailableException">The attachments are too large for a document.</exception>
    public static (byte[] Document, IReadOnlyList<string> MissingAttachments) Of(StockBook book)
    {
        var named = AttachmentFiles.NamedBy(book.Ledger.Entries);
        if (named.Values.Sum(a => a.Bytes) is var bytes && bytes > MostAttachmentBytes)
            throw new BookUnavailableException(BookFault.DiskFull, $"nothing was exported: the attachments have {bytes} bytes, more than {MostAttachmentBytes} go into a document; use 'stockroom backup'");
        var missing = new List<string>();
        using var stream = new MemoryStream();
        using (var text = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" })
        {
            var identity = book.Identity;
            text.WriteLine("{");
            text.WriteLine($"  \"format\": \"{Purpose}\",");
            text.WriteLine($"  \"version\": {Version},");
            text.WriteLine($"  \"book\": {{\"id\":\"{identity.Book}\",\"format\":{identity.Format},\"created\":\"{identity.CreatedText}\"}},");
            text.WriteLine($"  \"head\": \"{book.Ledger.HeadHash}\",");
            WriteList(text, "entries", book.Ledger.Entries.Select(EntryCodec.Encode));
            text.WriteLine(",");
            WriteList(text, "attachments", named.Keys.Where(IsThere).Select(h => $"{{\"sha256\":\"{h}\",\"content\":\"{Convert.ToBase64String(book.ReadAttachment(h))}\"}}"));
            text.WriteLine();
            text.WriteLine("}");
        }

        return (stream.ToArray(), missing);

        bool IsThere(string hash)
        {
            if (book.HasAttachment(hash))
                return true;
            missing.Add(hash);
            return false;
        }
    }

    // One member of a list a line, so that a line's number says which.
    private static void WriteList(StreamWriter text, string name, IEnumerable<string> members)
    {
        text.Write($"  \"{name}\": [");
        var isFirst = true;
        foreach (var member in members)
        {
            text.Write(isFirst ? "\n    " : ",\n    ");
            text.Write(member);
            isFirst = false;
        }

        text.Write(isFirst ? "]" : "\n  ]");
    }
}
