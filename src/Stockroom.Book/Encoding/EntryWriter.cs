using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Stockroom.Book.Encoding;

/// <summary>Writes members in the order of the calls; what is null is left out.</summary>
internal sealed class EntryWriter : IDisposable
{
    private const int LongestText = 20_000;

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, Indented = false };

    private readonly ArrayBufferWriter<byte> _buffer = new(512);
    private readonly Utf8JsonWriter _json;

    private readonly bool _isNew;

    /// <summary>Begins an entry.</summary>
    /// <param name="isNew">True to hold its texts to the limits of what is booked now.</param>
    public EntryWriter(bool isNew = false)
    {
        _isNew = isNew;
        _json = new Utf8JsonWriter(_buffer, Options);
        _json.WriteStartObject();
    }

    /// <summary>Writes text as given.</summary>
    /// <exception cref="BookRefusal">The text cannot be kept unchanged, or is far too long.</exception>
    public void Text(string name, string? value) => Text(name, value, name);

    /// <summary>Writes text as given that stands for another member's, whose limit it keeps.</summary>
    public void Text(string name, string? value, string limitOf)
    {
        if (value is null)
            return;
        if (_isNew)
            TextLimits.Check(limitOf, value);
        if (!CanonicalText.IsWellFormed(value))
            throw new BookRefusal($"the text of '{name}' holds half a character (a lone surrogate) and cannot be kept as it is");
        if (value.Length > LongestText)
            throw new BookRefusal($"the text of '{name}' has {value.Length} characters; at most {LongestText} are kept");
        _json.WriteString(name, value);
    }

    public void Number(string name, decimal? value)
    {
        if (value is not { } number)
            return;
        _json.WritePropertyName(name);
        _json.WriteRawValue(CanonicalText.Of(number));
    }

    public void Integer(string name, long? value)
    {
        if (value is { } number)
            _json.WriteNumber(name, number);
    }

    public void Flag(string name, bool? value)
    {
        if (value is { } flag)
            _json.WriteBoolean(name, flag);
    }

    public void Id(string name, ContainerId? value) => Text(name, value?.ToString());

    public void Day(string name, DateOnly? value)
    {
        if (value is { } day)
            _json.WriteString(name, CanonicalText.Of(day));
    }

    public void Instant(string name, DateTimeOffset value) => _json.WriteString(name, CanonicalText.Of(value));

    public void Nested<T>(string name, T? value, Action<T, EntryWriter> write)
        where T : class
    {
        if (value is null)
            return;
        _json.WriteStartObject(name);
        write(value, this);
        _json.WriteEndObject();
    }

    public void List<T>(string name, IReadOnlyList<T>? values, Action<T, EntryWriter> write)
    {
        if (values is null)
            return;
        _json.WriteStartArray(name);
        foreach (var value in values)
        {
            _json.WriteStartObject();
            write(value, this);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    public string Finish()
    {
        _json.WriteEndObject();
        _json.Flush();
        return System.Text.Encoding.UTF8.GetString(_buffer.WrittenSpan);
    }

    public void Dispose() => _json.Dispose();
}
