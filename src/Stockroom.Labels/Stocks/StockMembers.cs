using System.Text.Json;

namespace Stockroom.Labels.Stocks;

/// <summary>The members of one stock file, each asked for by name and checked.</summary>
internal sealed class StockMembers
{
    private readonly Dictionary<string, JsonElement> _values = [];
    private readonly string _file;

    public StockMembers(JsonElement root, string file, IReadOnlyList<string> known)
    {
        _file = file;
        if (root.ValueKind != JsonValueKind.Object)
        {
            throw new LabelException($"{file}: a stock is one JSON object, not {root.ValueKind.ToString().ToLowerInvariant()}");
        }

        foreach (var property in root.EnumerateObject())
        {
            if (!known.Contains(property.Name))
            {
                throw Wrong(property.Name, $"unknown; the members are {string.Join(", ", known)}");
            }

            if (!_values.TryAdd(property.Name, property.Value))
            {
                throw Wrong(property.Name, "stands there twice");
            }
        }

        foreach (var name in known)
        {
            if (!_values.ContainsKey(name))
            {
                throw Wrong(name, "missing");
            }
        }
    }

    public string Text(string member)
    {
        var value = _values[member];
        if (value.ValueKind != JsonValueKind.String || string.IsNullOrWhiteSpace(value.GetString()))
        {
            throw Wrong(member, $"{value.GetRawText()} is not a text");
        }

        return value.GetString()!;
    }

    /// <summary>A name that is typed on the command line: lower-case letters, digits, hyphens; the file is called the same.</summary>
    public string Name(string member)
    {
        var name = Text(member);
        if (!name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
        {
            throw Wrong(member, $"'{name}' may hold lower-case letters, digits and hyphens only");
        }

        var expected = Path.GetFileNameWithoutExtension(_file);
        if (!string.Equals(name, expected, StringComparison.Ordinal))
        {
            throw Wrong(member, $"'{name}' differs from the file's name '{expected}'");
        }

        return name;
    }

    public double Length(string member, double least, double most)
    {
        var value = _values[member];
        if (value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out var mm) || !double.IsFinite(mm))
        {
            throw Wrong(member, $"{value.GetRawText()} is not a length in millimetres");
        }

        if (mm < least || mm > most)
        {
            throw Wrong(member, $"{value.GetRawText()} is outside {least} to {most} mm");
        }

        return mm;
    }

    public double? LengthOrNull(string member, double least, double most) =>
        _values[member].ValueKind == JsonValueKind.Null ? null : Length(member, least, most);

    /// <summary>One of a few words.</summary>
    public T Word<T>(string member, IReadOnlyDictionary<string, T> words)
    {
        var text = Text(member);
        return words.TryGetValue(text, out var value) ? value : throw Wrong(member, $"'{text}' is not one of {string.Join(", ", words.Keys)}");
    }

    public int Count(string member, int most)
    {
        var value = _values[member];
        if (value.ValueKind != JsonValueKind.Number || !value.TryGetInt32(out var count) || count < 1 || count > most)
        {
            throw Wrong(member, $"{value.GetRawText()} is not a whole number from 1 to {most}");
        }

        return count;
    }

    private LabelException Wrong(string member, string why) => new($"{_file}: member '{member}': {why}");
}
