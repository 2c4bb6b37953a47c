using System.Text.Json;
using Stockroom.Book.Identity;

namespace Stockroom.Book.Encoding;

/// <summary>
/// Reads the members of one entry strictly: what is required must be there, what is there must be known.
/// </summary>
/// <exception cref="FormatException">Any member is missing, of the wrong kind or unknown.</exception>
internal sealed class EntryReader(JsonElement json, string prefix, Amendments? amendments)
{
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public string Text(string name) => TextOrNull(name) ?? throw Missing(name);

    public string? TextOrNull(string name) => Read(name, e => e.GetString()!, t => t, JsonValueKind.String);

    public decimal Number(string name) => NumberOrNull(name) ?? throw Missing(name);

    public decimal? NumberOrNull(string name) =>
        ReadValue(name, e => e.GetDecimal(), t => CanonicalText.TryDecimal(t, out var n) ? n : throw Not(name, t, "a number such as 12.5"), JsonValueKind.Number);

    public long Integer(string name) => IntegerOrNull(name) ?? throw Missing(name);

    public long? IntegerOrNull(string name) =>
        ReadValue(name, e => e.GetInt64(), t => long.TryParse(t, out var n) ? n : throw Not(name, t, "a whole number"), JsonValueKind.Number);

    public bool Flag(string name) => FlagOrNull(name) ?? throw Missing(name);

    public bool? FlagOrNull(string name) =>
        ReadValue(name, e => e.GetBoolean(), t => bool.TryParse(t, out var b) ? b : throw Not(name, t, "true or false"), JsonValueKind.True, JsonValueKind.False);

    public ContainerId? IdOrNull(string name)
    {
        if (TextOrNull(name) is not { } text)
            return null;
        return ContainerId.TryParse(text, out var id) == IdMistake.None ? id : throw Not(name, text, "a container's id");
    }

    public DateOnly? DayOrNull(string name) =>
        TextOrNull(name) is { } text ? CanonicalText.TryDay(text, out var day) ? day : throw Not(name, text, "a day such as 2026-05-31") : null;

    public DateTimeOffset Instant(string name)
    {
        var text = Text(name);
        if (CanonicalText.TryInstant(text, out var instant))
            return instant;
        throw Not(name, text, "a time such as 2026-05-31T14:05:00+02:00");
    }

    public T? Nested<T>(string name, Func<EntryReader, T> read)
        where T : class
    {
        _asked.Add(name);
        var path = prefix + name + ".";
        var present = json.ValueKind == JsonValueKind.Object && json.TryGetProperty(name, out var inner);
        if (!present && amendments?.Touches(path) != true)
            return null;
        var element = present ? json.GetProperty(name) : default;
        if (present && element.ValueKind != JsonValueKind.Object)
            throw new FormatException($"'{prefix}{name}' is not an object");
        var reader = new EntryReader(element, path, amendments);
        var value = read(reader);
        reader.Finish();
        return value;
    }

    public IReadOnlyList<T>? List<T>(string name, Func<EntryReader, T> read)
    {
        _asked.Add(name);
        if (json.ValueKind != JsonValueKind.Object || !json.TryGetProperty(name, out var array))
            return null;
        if (array.ValueKind != JsonValueKind.Array)
            throw new FormatException($"'{prefix}{name}' is not a list");
        var values = new List<T>(array.GetArrayLength());
        foreach (var element in array.EnumerateArray())
        {
            var reader = new EntryReader(element, prefix + name + "[].", null);
            values.Add(read(reader));
            reader.Finish();
        }

        return values;
    }

    /// <summary>Refuses members nobody asked for.</summary>
    public void Finish()
    {
        if (json.ValueKind != JsonValueKind.Object)
            return;
        foreach (var member in json.EnumerateObject())
        {
            if (!_asked.Contains(member.Name))
                throw new NewerEntryException($"'{prefix}{member.Name}' is not a member this version knows");
        }
    }

    private T? ReadValue<T>(string name, Func<JsonElement, T> read, Func<string, T> parse, params ReadOnlySpan<JsonValueKind> kinds)
        where T : struct
    {
        if (Amended(name, out var text))
            return text is null ? null : parse(text);
        return Find(name, kinds, out var element) ? Taken(name, element, read) : null;
    }

    private T? Read<T>(string name, Func<JsonElement, T> read, Func<string, T> parse, params ReadOnlySpan<JsonValueKind> kinds)
        where T : class
    {
        if (Amended(name, out var text))
            return text is null ? null : parse(text);
        return Find(name, kinds, out var element) ? Taken(name, element, read) : null;
    }

    // A number too long for its type, or text with half a character.
    private T Taken<T>(string name, JsonElement element, Func<JsonElement, T> read)
    {
        try
        {
            return read(element);
        }
        catch (Exception e) when (e is FormatException or OverflowException or InvalidOperationException)
        {
            throw new FormatException($"'{prefix}{name}' cannot be read: {(element.ValueKind == JsonValueKind.Number ? $"{element.GetRawText()} is not a number that is kept exactly" : e.Message)}", e);
        }
    }

    private bool Amended(string name, out string? text)
    {
        _asked.Add(name);
        text = null;
        return amendments?.TryTake(prefix + name, out text) == true;
    }

    private bool Find(string name, ReadOnlySpan<JsonValueKind> kinds, out JsonElement element)
    {
        element = default;
        if (json.ValueKind != JsonValueKind.Object || !json.TryGetProperty(name, out element))
            return false;
        if (!kinds.Contains(element.ValueKind))
            throw new FormatException($"'{prefix}{name}' is {element.ValueKind}, not {kinds[0]}");
        return true;
    }

    private FormatException Missing(string name) => new($"'{prefix}{name}' is missing");

    private FormatException Not(string name, string text, string wanted) => new($"'{prefix}{name}' is '{text}', not {wanted}");
}
