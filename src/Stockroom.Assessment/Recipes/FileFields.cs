using System.Text.Json;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Recipes;

/// <summary>Reads the fields of one JSON object; every refusal names the field. A field that is not known is said, or refused where it looks mistyped.</summary>
internal sealed class FileFields
{
    private readonly Dictionary<string, JsonElement> _fields = new(StringComparer.Ordinal);
    private readonly string _where;

    public FileFields(JsonElement element, string where, IReadOnlyList<string> known, List<string> notes)
    {
        _where = where;
        if (element.ValueKind != JsonValueKind.Object)
            throw new BookRefusal($"{where} must be a JSON object");
        foreach (var field in element.EnumerateObject())
        {
            if (!_fields.TryAdd(field.Name, field.Value))
                throw new BookRefusal($"{where}: '{field.Name}' stands twice");
            if (known.Contains(field.Name))
                continue;
            var nearest = NearestNames.To(field.Name, known);
            if (nearest.Count > 0)
                throw new BookRefusal($"{where}: '{field.Name}' is not a field; nearest: {string.Join(", ", nearest)}");
            notes.Add($"{where}: the field '{field.Name}' is not known and was not used");
        }
    }

    public bool Has(string field) => _fields.TryGetValue(field, out var value) && value.ValueKind != JsonValueKind.Null;

    public string? Text(string field) => !Has(field) ? null
        : _fields[field].ValueKind == JsonValueKind.String ? _fields[field].GetString()!.Trim()
        : throw Wrong(field, "text");

    /// <summary>A number, exactly as written; a number in quotes is read too.</summary>
    public decimal? Number(string field)
    {
        if (!Has(field))
            return null;
        var value = _fields[field];
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDecimal(out var number))
            return number;
        if (value.ValueKind == JsonValueKind.String && decimal.TryParse(value.GetString(), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out number))
            return number;
        throw Wrong(field, "a number");
    }

    public IReadOnlyList<JsonElement> List(string field) => !Has(field) ? []
        : _fields[field].ValueKind == JsonValueKind.Array ? [.. _fields[field].EnumerateArray()]
        : throw Wrong(field, "a list");

    public IReadOnlyList<string> Texts(string field) =>
        [.. List(field).Select(e => e.ValueKind == JsonValueKind.String ? e.GetString()! : throw Wrong(field, "a list of texts"))];

    public FileFields? Inner(string field, IReadOnlyList<string> known, List<string> notes) =>
        Has(field) ? new FileFields(_fields[field], $"{_where}, {field}", known, notes) : null;

    public BookRefusal Wrong(string field, string right) =>
        new($"{_where}: {field} '{(_fields.TryGetValue(field, out var value) ? value.ToString() : "")}' is not right; it must be {right}");
}
