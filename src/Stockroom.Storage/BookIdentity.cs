using System.Buffers;
using System.Globalization;
using System.Text.Json;
using Stockroom.Book.Encoding;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage;

/// <summary>Which book this is and how it is written: the content of book.json.</summary>
/// <param name="Format">Version of the folder's format; this program writes 1.</param>
/// <param name="Book">32 hexadecimal digits, drawn when the book was made; the ledger's chain begins with them.</param>
/// <param name="Created">When it was made.</param>
public sealed record BookIdentity(int Format, string Book, DateTimeOffset Created)
{
    public const int CurrentFormat = 1;

    private const string Purpose = "stock book";

    /// <summary>The hash at which the chains of lines and of entries begin.</summary>
    internal string GenesisHash => EntryCodec.HashOf($"{Purpose} {Book}");

    // Over what the file says; a file without it was written before it was kept, and is believed.
    private string Hash => EntryCodec.HashOf($"{Purpose} {Format} {Book} {CreatedText}");

    internal string CreatedText => Created.ToString("O", CultureInfo.InvariantCulture);

    internal byte[] Encode()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer))
        {
            w.WriteStartObject();
            w.WriteString("kind", Purpose);
            w.WriteNumber("format", Format);
            w.WriteString("book", Book);
            w.WriteString("created", CreatedText);
            w.WriteString("sha256", Hash);
            w.WriteEndObject();
        }

        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    /// <summary>Writes it under another name first, so that a folder has a whole identity or none.</summary>
    internal void Write(IDisk disk, BookFiles files)
    {
        var unfinished = files.Identity + ".new";
        disk.Delete(unfinished);
        using (var file = disk.Open(unfinished, Opening.Write))
        {
            file.Write(Encode());
            file.Sync();
        }

        disk.Rename(unfinished, files.Identity);
        disk.SyncFolder(files.Folder);
    }

    /// <summary>Reads a book's identity.</summary>
    /// <exception cref="BookUnavailableException">The file is not a book's identity, or is of a newer format.</exception>
    internal static BookIdentity Read(IDisk disk, BookFiles files)
    {
        if (!disk.FileExists(files.Identity))
            throw BookUnavailableException.DoesNotHold(files.Folder, $"it has no {Path.GetFileName(files.Identity)}; put back the one that belongs to it");
        using var file = disk.Open(files.Identity, Opening.Read);
        return Read(file.ReadAll(), files);
    }

    private static BookIdentity Read(byte[] text, BookFiles files)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || root.GetProperty("kind").GetString() != Purpose)
                throw NotABook(files);
            var format = root.GetProperty("format").GetInt32();
            if (format > CurrentFormat)
                throw new BookUnavailableException(BookFault.Newer, $"the book '{files.Folder}' is of format {format}; this program knows {CurrentFormat}: use a newer program");
            var book = root.GetProperty("book").GetString();
            if (format < 1 || book is null || book.Length != 32 || !book.All(char.IsAsciiHexDigitLower))
                throw NotABook(files);
            var identity = new BookIdentity(format, book, root.GetProperty("created").GetDateTimeOffset());
            return root.TryGetProperty("sha256", out var hash) && hash.GetString() != identity.Hash
                ? throw new BookUnavailableException(BookFault.Damaged, $"the book '{files.Folder}' does not hold: its {Path.GetFileName(files.Identity)} was altered; put back the one that belongs to it")
                : identity;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw NotABook(files);
        }
    }

    /// <summary>Reads an identity that stands elsewhere than in a book's folder; null if it is none, or was altered.</summary>
    internal static BookIdentity? Decode(byte[] text)
    {
        try
        {
            return Read(text, new BookFiles(""));
        }
        catch (BookUnavailableException)
        {
            return null;
        }
    }

    private static BookUnavailableException NotABook(BookFiles files) =>
        new(BookFault.NotABook, $"'{files.Folder}' is not a stock book: its {Path.GetFileName(files.Identity)} is not one's; it was left as it is");
}
