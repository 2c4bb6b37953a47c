using System.Buffers;
using System.Text;
using System.Text.Json;
using Stockroom.Book;
using Stockroom.Book.Encoding;
using Stockroom.Book.States;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Snapshots;

/// <summary>
/// What the book added up to at an entry, so that a screen need not add it up again. Never the record: it is believed only
/// where its own hash fits and the journal has the line and the entry it names.
/// </summary>
/// <param name="Book">The book's identity.</param>
/// <param name="Transaction">The last transaction in it.</param>
/// <param name="LineHash">Hash of that transaction's line in the journal.</param>
/// <param name="Entries">Entries in it.</param>
/// <param name="EntryHash">Hash of the last of them.</param>
/// <param name="StateJson">The state, as <see cref="StateCodec"/> writes it.</param>
internal sealed record Snapshot(string Book, long Transaction, string LineHash, int Entries, string EntryHash, ReadOnlyMemory<byte> StateJson)
{
    private const string Purpose = "stock book snapshot";

    /// <summary>The state in it.</summary>
    /// <exception cref="FormatException">It is not one as this version writes it.</exception>
    public BookState State()
    {
        using var document = JsonDocument.Parse(StateJson);
        return StateCodec.Decode(document.RootElement);
    }

    /// <summary>Why it does not belong to a journal; null where the journal has what it names.</summary>
    public string? Misfit(JournalChain chain)
    {
        if (Entries > chain.Entries.Count)
            return $"it knows {Entries} entries and the journal {chain.Entries.Count}; if the journal was cut short, put the whole one back; if an older copy is meant, take the snapshot away";
        return chain.EntryHashes[Entries - 1] == EntryHash && chain.Entries[Entries - 1].Transaction == Transaction ? null : "it is of another course of this book; put back the journal that belongs to it, or take the snapshot away";
    }

    /// <summary>One line, like one of the journal: the hash of the rest, a space, a JSON object.</summary>
    public byte[] Encode()
    {
        var buffer = new ArrayBufferWriter<byte>(StateJson.Length + 512);
        using (var w = new Utf8JsonWriter(buffer))
        {
            w.WriteStartObject();
            w.WriteString("kind", Purpose);
            w.WriteNumber("version", StateCodec.Version);
            w.WriteString("book", Book);
            w.WriteNumber("transaction", Transaction);
            w.WriteString("line", LineHash);
            w.WriteNumber("entries", Entries);
            w.WriteString("entry", EntryHash);
            w.WritePropertyName("state");
            w.WriteRawValue(StateJson.Span, skipInputValidation: true);
            w.WriteEndObject();
        }

        return [.. Encoding.ASCII.GetBytes(JournalLine.HashOf(buffer.WrittenSpan)), (byte)' ', .. buffer.WrittenSpan, (byte)'\n'];
    }

    /// <summary>Reads what <see cref="Encode"/> wrote for a book.</summary>
    /// <exception cref="FormatException">It was altered, is another book's or of another version.</exception>
    public static Snapshot Decode(ReadOnlyMemory<byte> line, string book)
    {
        const int Begin = JournalLine.HashLength + 1;
        if (line.Length <= Begin || line.Span[^1] != (byte)'\n' || !line.Span[..Begin].SequenceEqual(Encoding.ASCII.GetBytes(JournalLine.HashOf(line.Span[Begin..^1]) + " ")))
            throw new FormatException("it was altered or cut short");
        try
        {
            using var document = JsonDocument.Parse(line[Begin..^1]);
            var root = document.RootElement;
            if (root.GetProperty("kind").GetString() != Purpose || root.GetProperty("version").GetInt32() != StateCodec.Version)
                throw new FormatException("another version of the program wrote it");
            if (root.GetProperty("book").GetString() != book)
                throw new FormatException("it is another book's");
            var snapshot = new Snapshot(
                book, root.GetProperty("transaction").GetInt64(), root.GetProperty("line").GetString()!,
                root.GetProperty("entries").GetInt32(), root.GetProperty("entry").GetString()!, Raw(root.GetProperty("state")));
            return snapshot.Entries > 0 ? snapshot : throw new FormatException("it is of no entry");
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new FormatException("it is not a snapshot", e);
        }
    }

    private static byte[] Raw(JsonElement element) => System.Runtime.InteropServices.JsonMarshal.GetRawUtf8Value(element).ToArray();
}
