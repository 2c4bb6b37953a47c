using System.Text.Encodings.Web;
using System.Text.Json;
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

    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

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
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", Purpose);
            json.WriteNumber("version", Version);
            WriteIdentity(json, book.Identity);
            json.WriteString("head", book.Ledger.HeadHash);
            json.WriteStartArray("entries");
            foreach (var entry in book.Ledger.Entries)
                json.WriteRawValue(EntryCodec.Encode(entry));
            json.WriteEndArray();
            json.WriteStartArray("attachments");
            foreach (var hash in named.Keys)
            {
                if (book.HasAttachment(hash))
                    WriteAttachment(json, hash, book.ReadAttachment(hash));
                else
                    missing.Add(hash);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return (stream.ToArray(), missing);
    }

    private static void WriteIdentity(Utf8JsonWriter json, BookIdentity identity)
    {
        json.WriteStartObject("book");
        json.WriteString("id", identity.Book);
        json.WriteNumber("format", identity.Format);
        json.WriteString("created", identity.CreatedText);
        json.WriteEndObject();
    }

    private static void WriteAttachment(Utf8JsonWriter json, string hash, byte[] content)
    {
        json.WriteStartObject();
        json.WriteString("sha256", hash);
        json.WriteBase64String("content", content);
        json.WriteEndObject();
    }
}
