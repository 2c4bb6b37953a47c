using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.States;

/// <summary>Writes values one behind the other into lists; what stands where is agreed with the reader.</summary>
internal sealed class StateWriter : IDisposable
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly ArrayBufferWriter<byte> _buffer = new(1 << 16);
    private readonly Utf8JsonWriter _json;

    public StateWriter() => _json = new Utf8JsonWriter(_buffer, Options);

    public void Text(string? value)
    {
        if (value is null)
            _json.WriteNullValue();
        else
            _json.WriteStringValue(value);
    }

    /// <summary>Written in the shortest form: booked and read back, one amount has one form.</summary>
    public void Number(decimal? value)
    {
        if (value is { } number)
            _json.WriteRawValue(CanonicalText.Of(number), skipInputValidation: true);
        else
            _json.WriteNullValue();
    }

    public void Integer(long? value)
    {
        if (value is { } number)
            _json.WriteNumberValue(number);
        else
            _json.WriteNullValue();
    }

    public void Day(DateOnly? day) => Integer(day?.DayNumber);

    public void Flag(bool? value)
    {
        if (value is { } flag)
            _json.WriteBooleanValue(flag);
        else
            _json.WriteNullValue();
    }

    public void Id(ContainerId? id) => Text(id?.ToString());

    /// <summary>One value made of several; null where there is none.</summary>
    public void Group<T>(T? value, Action<T> write)
        where T : class
    {
        if (value is null)
        {
            _json.WriteNullValue();
            return;
        }

        _json.WriteStartArray();
        write(value);
        _json.WriteEndArray();
    }

    public void List<T>(IEnumerable<T>? values, Action<T> write)
    {
        if (values is null)
        {
            _json.WriteNullValue();
            return;
        }

        _json.WriteStartArray();
        foreach (var value in values)
            write(value);
        _json.WriteEndArray();
    }

    public byte[] Finish()
    {
        _json.Flush();
        return _buffer.WrittenSpan.ToArray();
    }

    public void Dispose() => _json.Dispose();
}
