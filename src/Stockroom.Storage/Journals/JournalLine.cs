using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;

namespace Stockroom.Storage.Journals;

/// <summary>
/// One transaction as one line: the SHA-256 of the JSON text, a space, the JSON text. Plain tools can check it:
/// <c>tail -n 1 journal.txt | cut -c 66- | tr -d '\n' | sha256sum</c>.
/// </summary>
/// <param name="Transaction">Number, from 1.</param>
/// <param name="Previous">Hash of the line before; of the book's identity for the first.</param>
/// <param name="Hash">Hash of this line's JSON text.</param>
/// <param name="Entries">Its entries.</param>
/// <param name="EntryHashes">Hash of each entry's own text.</param>
/// <param name="EntryTexts">Each entry's own text as it stands in the line.</param>
internal sealed record JournalLine(
    long Transaction,
    string Previous,
    string Hash,
    IReadOnlyList<Entry> Entries,
    IReadOnlyList<string> EntryHashes,
    IReadOnlyList<string> EntryTexts)
{
    public const int HashLength = 64;

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The line's bytes, its end included, and its hash.</summary>
    public static (byte[] Bytes, string Hash) Encode(long transaction, string previous, IReadOnlyList<Entry> entries, IReadOnlyList<string> texts)
    {
        var buffer = new ArrayBufferWriter<byte>(1024);
        using (var w = new Utf8JsonWriter(buffer, Options))
        {
            w.WriteStartObject();
            w.WriteNumber("transaction", transaction);
            w.WriteString("previous", previous);
            w.WriteString("recorded_at", entries[0].RecordedAt.ToString("yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz"));
            w.WriteString("by", entries[0].By);
            w.WriteStartArray("entries");
            foreach (var text in texts)
                w.WriteRawValue(text);
            w.WriteEndArray();
            w.WriteEndObject();
        }

        var hash = HashOf(buffer.WrittenSpan);
        return ([.. Encoding.ASCII.GetBytes(hash), (byte)' ', .. buffer.WrittenSpan, (byte)'\n'], hash);
    }

    /// <summary>Reads a line without its end.</summary>
    /// <exception cref="FormatException">It is not a line as it was written; the message says how.</exception>
    public static JournalLine Decode(ReadOnlyMemory<byte> line)
    {
        if (line.Length <= HashLength + 1 || line.Span[HashLength] != (byte)' ')
            throw new FormatException("it does not begin with a hash");
        var json = line[(HashLength + 1)..];
        var hash = HashOf(json.Span);
        if (!line.Span[..HashLength].SequenceEqual(Encoding.ASCII.GetBytes(hash)))
            throw new FormatException("its text does not fit its hash");
        try
        {
            using var document = JsonDocument.Parse(json, Strict);
            return Read(document.RootElement, hash);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new FormatException("it is not a transaction", e);
        }
    }

    private static JournalLine Read(JsonElement root, string hash)
    {
        var entries = new List<Entry>();
        var hashes = new List<string>();
        var texts = new List<string>();
        foreach (var element in root.GetProperty("entries").EnumerateArray())
        {
            var text = element.GetRawText();
            entries.Add(EntryCodec.Decode(element));
            hashes.Add(EntryCodec.HashOf(text));
            texts.Add(text);
        }

        return new JournalLine(root.GetProperty("transaction").GetInt64(), root.GetProperty("previous").GetString() ?? "", hash, entries, hashes, texts);
    }

    internal static string HashOf(ReadOnlySpan<byte> json) => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(json));
}
