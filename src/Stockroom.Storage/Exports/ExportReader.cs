using System.Text.Json;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Attachments;

namespace Stockroom.Storage.Exports;

/// <summary>Reads a document of <see cref="BookExport"/> strictly: every member once, none unknown, every hash and every rule checked.</summary>
internal sealed class ExportReader
{
    private const int HashLength = 64;

    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };
    private static readonly string[] Members = ["format", "version", "book", "head", "entries", "attachments"];
    private static readonly string[] IdentityMembers = ["id", "format", "created"];
    private static readonly string[] AttachmentMembers = ["sha256", "content"];

    private readonly DocumentText _text;
    private readonly List<DocumentFault> _faults = [];
    private readonly List<(Entry Entry, int Line)> _entries = [];
    private readonly Dictionary<string, (byte[] Content, int Line)> _attachments = new(StringComparer.Ordinal);
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);
    private BookIdentity? _identity;
    private string _head = "";
    private int _headLine = 1;
    private int _line = 1;

    private ExportReader(DocumentText text) => _text = text;

    /// <summary>The book that the document holds.</summary>
    /// <exception cref="DocumentException">Anything in it is wrong.</exception>
    public static ExportedBook Read(DocumentText text)
    {
        var reader = new ExportReader(text);
        try
        {
            reader.ReadAll();
        }
        catch (JsonException e)
        {
            throw text.NotJson(e);
        }
        catch (Exception e) when (e is FormatException or InvalidOperationException)
        {
            throw new DocumentException(reader._line, e.Message.ReplaceLineEndings(" "));
        }

        return reader.Book();
    }

    private void ReadAll()
    {
        var json = new Utf8JsonReader(_text.Bytes.Span);
        if (!json.Read() || json.TokenType != JsonTokenType.StartObject)
            throw new DocumentException(1, "an export is one JSON object");
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            var line = _line = _text.LineOf(json.TokenStartIndex);
            var name = json.GetString()!;
            if (!Members.Contains(name))
                throw new DocumentException(line, $"'{name}' is not a member of an export; it has {string.Join(", ", Members)}");
            if (!_seen.Add(name))
                throw new DocumentException(line, $"'{name}' stands twice");
            json.Read();
            Take(name, ref json);
        }

        while (json.Read())
        {
            // What follows the document is for the reader of JSON to refuse.
        }

        if (Members.FirstOrDefault(m => !_seen.Contains(m)) is { } missing)
            throw new DocumentException(1, $"'{missing}' is missing");
    }

    private void Take(string name, ref Utf8JsonReader json)
    {
        var line = _text.LineOf(json.TokenStartIndex);
        switch (name)
        {
            case "format":
                if (json.TokenType != JsonTokenType.String || json.GetString() != BookExport.Purpose)
                    throw new DocumentException(line, $"'format' is not '{BookExport.Purpose}': this is not an export of a stock book");
                break;
            case "version":
                if (json.TokenType != JsonTokenType.Number || !json.TryGetInt32(out var version) || version != BookExport.Version)
                    throw new DocumentException(line, $"'version' is not {BookExport.Version}, the one this program knows; use the program that wrote it, or a newer one");
                break;
            case "head":
                (_head, _headLine) = (json.TokenType == JsonTokenType.String ? json.GetString()! : "", line);
                break;
            case "book":
                _identity = Identity(Element(ref json), line);
                break;
            case "entries":
                Each(name, ref json, (element, index, at) => _entries.Add((EntryCodec.Decode(element), at)));
                break;
            default:
                Each(name, ref json, (element, index, at) => TakeAttachment(element, at));
                break;
        }
    }

    private void Each(string name, ref Utf8JsonReader json, Action<JsonElement, int, int> take)
    {
        if (json.TokenType != JsonTokenType.StartArray)
            throw new DocumentException(_text.LineOf(json.TokenStartIndex), $"'{name}' is not a list");
        var (line, counted) = (_text.LineOf(json.TokenStartIndex), json.TokenStartIndex);
        for (var index = 0; json.Read() && json.TokenType != JsonTokenType.EndArray; index++)
        {
            line += _text.Bytes.Span[(int)counted..(int)json.TokenStartIndex].Count((byte)'\n');
            counted = json.TokenStartIndex;
            try
            {
                take(Element(ref json), index, line);
            }
            catch (FormatException e)
            {
                _faults.Add(new DocumentFault(line, $"{name}[{index}]: {e.Message.ReplaceLineEndings(" ")}"));
            }
        }
    }

    private JsonElement Element(ref Utf8JsonReader json)
    {
        var start = (int)json.TokenStartIndex;
        json.Skip();
        try
        {
            using var document = JsonDocument.Parse(_text.Bytes[start..(int)json.BytesConsumed], Strict);
            return document.RootElement.Clone();
        }
        catch (JsonException e)
        {
            throw new FormatException(e.Message.Split(" LineNumber", 2)[0], e);
        }
    }

    private static BookIdentity Identity(JsonElement json, int line)
    {
        try
        {
            CheckMembers(json, IdentityMembers);
            var id = Text(json, "id");
            if (id.Length != 32 || !id.All(char.IsAsciiHexDigitLower))
                throw new FormatException($"'id' is '{id}', not 32 digits out of 0-9 and a-f");
            if (json.GetProperty("format") is not { ValueKind: JsonValueKind.Number } number || !number.TryGetInt32(out var format) || format is < 1 or > BookIdentity.CurrentFormat)
                throw new FormatException($"'format' is not one this program knows (1 to {BookIdentity.CurrentFormat})");
            var created = Text(json, "created");
            return DateTimeOffset.TryParseExact(created, "O", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out var at)
                ? new BookIdentity(format, id, at)
                : throw new FormatException($"'created' is '{created}', not a time as exports write it");
        }
        catch (FormatException e)
        {
            throw new DocumentException(line, $"book: {e.Message}");
        }
    }

    private void TakeAttachment(JsonElement json, int line)
    {
        CheckMembers(json, AttachmentMembers);
        var hash = Text(json, "sha256");
        if (json.GetProperty("content") is not { ValueKind: JsonValueKind.String } text || !text.TryGetBytesFromBase64(out var content))
            throw new FormatException("'content' is not Base64");
        if (AttachmentFiles.HashOf(content) != hash)
            throw new FormatException("'content' does not fit 'sha256': it was altered");
        if (!_attachments.TryAdd(hash, (content, line)))
            throw new FormatException($"'{hash}' stands twice");
    }

    private static void CheckMembers(JsonElement json, string[] members)
    {
        if (json.ValueKind != JsonValueKind.Object)
            throw new FormatException("not an object");
        foreach (var member in json.EnumerateObject())
        {
            if (!members.Contains(member.Name))
                throw new FormatException($"'{member.Name}' is not a member this version knows; it has {string.Join(", ", members)}");
        }

        foreach (var member in members)
        {
            if (!json.TryGetProperty(member, out _))
                throw new FormatException($"'{member}' is missing");
        }
    }

    private static string Text(JsonElement json, string name) => json.GetProperty(name) is { ValueKind: JsonValueKind.String } text
        ? text.GetString()!
        : throw new FormatException($"'{name}' is {json.GetProperty(name).ValueKind}, not String");

    private ExportedBook Book()
    {
        if (_faults.Count > 0)
            throw new DocumentException(_faults);
        CheckChain();
        var ledger = Ledger.Of(_identity!.GenesisHash, _entries.Select(e => e.Entry));
        if (_head.Length != HashLength || ledger.HeadHash != _head)
            throw new DocumentException(_headLine, "'head' is not the hash of the last entry: one was altered, or some are missing at the end");
        foreach (var (number, problem) in ledger.Problems)
            _faults.Add(new DocumentFault(_entries[(int)number - 1].Line, $"entries[{number - 1}]: entry {number} cannot be: {problem}"));
        var named = AttachmentFiles.NamedBy(ledger.Entries);
        foreach (var (hash, (content, line)) in _attachments)
        {
            if (!named.TryGetValue(hash, out var entry) || entry.Bytes != content.Length)
                _faults.Add(new DocumentFault(line, $"attachments: '{hash}' is named by no entry of its length"));
        }

        return _faults.Count == 0 ? new ExportedBook(_identity, ledger, _attachments.ToDictionary(a => a.Key, a => a.Value.Content, StringComparer.Ordinal)) : throw new DocumentException(_faults);
    }

    private void CheckChain()
    {
        var previous = (Hash: _identity!.GenesisHash, Transaction: 0L, Entry: (Entry?)null);
        foreach (var ((entry, line), index) in _entries.Select((e, i) => (e, i)))
        {
            DocumentException Wrong(string because) => new(line, $"entries[{index}]: {because}");
            if (entry.Number != index + 1)
                throw Wrong($"'number' is {entry.Number} where {index + 1} belongs");
            if (entry.Previous != previous.Hash)
                throw Wrong($"'previous' is not the hash of {(index == 0 ? "the book's identity" : $"entry {index}")}: an entry was altered, taken out or put in");
            var begins = entry.Transaction == previous.Transaction + 1;
            if (!begins && (entry.Transaction != previous.Transaction || previous.Entry is null))
                throw Wrong($"'transaction' is {entry.Transaction} where {previous.Transaction} goes on or {previous.Transaction + 1} begins");
            if (!begins && (entry.By != previous.Entry!.By || entry.RecordedAt != previous.Entry.RecordedAt || entry.RecordedAt.Offset != previous.Entry.RecordedAt.Offset))
                throw Wrong("'by' and 'recorded_at' are those of the whole transaction, and here they are others");
            previous = (EntryCodec.HashOf(EntryCodec.Encode(entry)), entry.Transaction, entry);
        }
    }
}
