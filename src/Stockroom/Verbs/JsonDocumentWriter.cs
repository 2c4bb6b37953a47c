using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Stockroom.Verbs;

/// <summary>Writes one JSON document to standard output, and nothing else there.</summary>
internal static class JsonDocumentWriter
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonWriterOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void Write(TextWriter to, Action<Utf8JsonWriter> body)
    {
        to.Write(Text(body, Indented));
        to.WriteLine();
    }

    /// <summary>The same on one line, for verbs that answer line by line.</summary>
    public static void WriteLine(TextWriter to, Action<Utf8JsonWriter> body) => to.WriteLine(Text(body, OneLine));

    public static void NumberOrNull(this Utf8JsonWriter json, string name, double? value, int digits = 6)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(name, Rounded(number, digits));
        else
            json.WriteNull(name);
    }

    public static void NumberOrNull(this Utf8JsonWriter json, string name, decimal? value)
    {
        if (value is { } number)
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }

    public static void FlagOrNull(this Utf8JsonWriter json, string name, bool? value)
    {
        if (value is { } flag)
            json.WriteBoolean(name, flag);
        else
            json.WriteNull(name);
    }

    public static void TextOrNull(this Utf8JsonWriter json, string name, string? value) => json.WriteString(name, value);

    public static void DateOrNull(this Utf8JsonWriter json, string name, DateOnly? value) =>
        json.WriteString(name, value?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));

    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
            json.WriteStringValue(value);
        json.WriteEndArray();
    }

    // Significant digits, so that a small rate is not rounded to nothing.
    private static double Rounded(double value, int digits)
    {
        if (value == 0)
            return 0;
        var text = value.ToString("E" + (digits - 1).ToString(System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
        return double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Text(Action<Utf8JsonWriter> body, JsonWriterOptions options)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
