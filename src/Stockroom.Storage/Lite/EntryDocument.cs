using LiteDB;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;

namespace Stockroom.Storage.Lite;

/// <summary>One entry as LiteDB keeps it: its canonical text and that text's hash, and beside them what is asked for most.</summary>
internal static class EntryDocument
{
    public const string Collection = "entries";

    public static BsonDocument Of(Entry entry, string text, string hash) => new()
    {
        ["_id"] = entry.Number,
        ["transaction"] = entry.Transaction,
        ["kind"] = entry.Kind,
        ["container"] = entry.Container?.ToString() is { } container ? new BsonValue(container) : BsonValue.Null,
        ["place"] = entry.Place is { } place ? new BsonValue(place) : BsonValue.Null,
        ["happened_on"] = entry.HappenedOn.ToString("yyyy-MM-dd"),
        ["text"] = text,
        ["hash"] = hash,
    };

    /// <summary>Why a document is not the entry the journal has under that number; null if it is.</summary>
    public static string? Mismatch(BsonDocument document, Entry entry, string text, string hash)
    {
        if (!document["hash"].IsString || document["hash"].AsString != hash)
            return "its hash is another";
        if (!document["text"].IsString || EntryCodec.HashOf(document["text"].AsString) != hash)
            return "its text does not fit its hash";
        var expected = Of(entry, text, hash);
        foreach (var (name, value) in expected)
        {
            if (document[name].CompareTo(value, Collation.Binary) != 0)
                return $"its '{name}' is another";
        }

        return document.Count == expected.Count ? null : "it has members that do not belong there";
    }
}
