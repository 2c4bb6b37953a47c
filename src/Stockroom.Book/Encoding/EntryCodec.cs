using System.Security.Cryptography;
using System.Text.Json;
using Stockroom.Book.Entries;

namespace Stockroom.Book.Encoding;

/// <summary>
/// An entry as one line of canonical JSON and back. The same entry gives the same bytes: fixed order of members, what is
/// null left out, decimals in their shortest exact form, times with the offset they came in, text as given.
/// </summary>
public static class EntryCodec
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The canonical JSON of an entry, one line.</summary>
    /// <exception cref="BookRefusal">A text cannot be kept unchanged.</exception>
    public static string Encode(Entry entry) => Encode(entry, isNew: false);

    /// <summary>The canonical JSON of an entry that is about to be booked: its texts keep the limits of <see cref="TextLimits"/>.</summary>
    /// <exception cref="BookRefusal">A text is too long, or cannot be kept unchanged.</exception>
    internal static string EncodeNew(Entry entry) => Encode(entry, isNew: true);

    private static string Encode(Entry entry, bool isNew)
    {
        using var w = new EntryWriter(isNew);
        w.Integer("number", entry.Number);
        w.Integer("transaction", entry.Transaction);
        w.Text("kind", entry.Kind);
        w.Id("container", entry.Container);
        w.Text("place", entry.Place);
        w.Instant("happened_at", entry.HappenedAt);
        w.Instant("recorded_at", entry.RecordedAt);
        w.Text("by", entry.By);
        w.Text("previous", entry.Previous);
        w.Text("note", entry.Note);
        w.Text("forced", entry.Forced);
        entry.Write(w);
        return w.Finish();
    }

    /// <summary>Reads what <see cref="Encode(Entry)"/> wrote.</summary>
    /// <exception cref="FormatException">The text is not an entry as this version writes it.</exception>
    public static Entry Decode(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json, Strict);
            return Decode(document.RootElement);
        }
        catch (JsonException e)
        {
            throw new FormatException("not one JSON object", e);
        }
    }

    /// <summary>Reads an entry that stands inside a larger document.</summary>
    /// <exception cref="FormatException">The element is not an entry as this version writes it.</exception>
    public static Entry Decode(JsonElement json) => Decode(json, null);

    /// <summary>SHA-256 over the UTF-8 bytes of an entry's canonical JSON, 64 lower-case hexadecimal digits.</summary>
    public static string HashOf(string canonicalJson) =>
        Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(canonicalJson)));

    public static string HashOf(Entry entry) => HashOf(Encode(entry));

    /// <summary>The entry with a correction's new values in the place of its own; number, time of booking and keeper stay.</summary>
    /// <exception cref="BookRefusal">A field does not exist, may not change, or the value is not of its kind.</exception>
    public static Entry Amend(Entry entry, IEnumerable<FieldChange> changes)
    {
        var amendments = new Amendments();
        foreach (var change in changes)
        {
            if (change.Field is "number" or "transaction" or "kind" or "recorded_at" or "by" or "previous" or "forced"
                || (change.Field is "container" or "place" && entry.IsFirstOfItsSubject))
                throw new BookRefusal($"'{change.Field}' of entry {entry.Number} ({entry.Kind}) stays as it was booked; undo it or book it anew");
            amendments.Set(change.Field, change.Value);
        }

        try
        {
            using var document = JsonDocument.Parse(Encode(entry), Strict);
            var amended = Decode(document.RootElement, amendments);
            if (amendments.Unused.FirstOrDefault() is { } unknown)
                throw new BookRefusal($"entry {entry.Number} ({entry.Kind}) has no field '{unknown}'; it has: {string.Join(", ", amendments.Known.Distinct().Except(Fixed))}");
            return amended;
        }
        catch (FormatException e)
        {
            throw new BookRefusal($"entry {entry.Number} ({entry.Kind}) cannot be corrected so: {e.Message}", e);
        }
    }

    private static readonly string[] Fixed = ["number", "transaction", "kind", "recorded_at", "by", "previous", "forced"];

    private static Entry Decode(JsonElement json, Amendments? amendments)
    {
        if (json.ValueKind != JsonValueKind.Object)
            throw new FormatException("an entry is a JSON object");
        var r = new EntryReader(json, "", amendments);
        try
        {
            var number = r.Integer("number");
            var transaction = r.Integer("transaction");
            var kind = EntryKinds.Find(r.Text("kind")) ?? throw new NewerEntryException($"'{r.Text("kind")}' is not a kind of entry this version knows");
            var entry = kind.Read(r) with
            {
                Number = number,
                Transaction = transaction,
                Container = r.IdOrNull("container"),
                Place = r.TextOrNull("place"),
                HappenedAt = r.Instant("happened_at"),
                RecordedAt = r.Instant("recorded_at"),
                By = r.Text("by"),
                Previous = r.Text("previous"),
                Note = r.TextOrNull("note"),
                Forced = r.TextOrNull("forced"),
            };
            r.Finish();
            return entry;
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or BookRefusal)
        {
            throw new FormatException(e.Message, e);
        }
    }
}
