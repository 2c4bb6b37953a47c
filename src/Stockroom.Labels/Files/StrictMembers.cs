using System.Text.Json;

namespace Stockroom.Labels.Files;

/// <summary>The members of one JSON object in a stock or design file, each asked for by name and checked.</summary>
internal sealed class StrictMembers
{
    private readonly Dictionary<string, JsonElement> _values = [];
    private readonly string _file;
    private readonly string _path;

    /// <summary>Takes the members of an object apart; one missing, unknown or repeated is refused.</summary>
    /// <param name="root">The object.</param>
    /// <param name="file">For messages.</param>
    /// <param name="what">What the object is: "a stock".</param>
    /// <param name="needed">Members that must be there.</param>
    /// <param name="allowed">Members that may be there.</param>
    /// <param name="path">Of the object inside the file, with the dot behind it; empty for the whole file.</param>
    public StrictMembers(JsonElement root, string file, string what, IReadOnlyList<string> needed, IReadOnlyList<string>? allowed = null, string path = "")
    {
        (_file, _path) = (file, path);
        if (root.ValueKind != JsonValueKind.Object)
        {
            var where = path.Length == 0 ? file : $"{file}: member '{path.TrimEnd('.')}'";
            throw new LabelException($"{where}: {what} is one JSON object, not {root.ValueKind.ToString().ToLowerInvariant()}");
        }

        List<string> known = [.. needed, .. allowed ?? []];

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

        foreach (var name in needed)
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

    /// <summary>A text from a list of texts, each once.</summary>
    public IReadOnlyList<T> Words<T>(string member, IReadOnlyDictionary<string, T> words)
    {
        var value = _values[member];
        if (value.ValueKind != JsonValueKind.Array)
        {
            throw Wrong(member, $"{value.GetRawText()} is not a list of words");
        }

        var list = new List<T>();
        foreach (var element in value.EnumerateArray())
        {
            var word = element.ValueKind == JsonValueKind.String ? element.GetString()! : element.GetRawText();
            if (!words.TryGetValue(word, out var meant))
            {
                throw Wrong(member, $"'{word}' is not one of {string.Join(", ", words.Keys)}");
            }

            if (list.Contains(meant))
            {
                throw Wrong(member, $"'{word}' stands there twice");
            }

            list.Add(meant);
        }

        return list;
    }

    public string? TextOrNull(string member) => _values[member].ValueKind == JsonValueKind.Null ? null : Text(member);

    public bool Flag(string member) => _values[member].ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Wrong(member, $"{_values[member].GetRawText()} is not true or false"),
    };

    /// <summary>A share of a length.</summary>
    public double Share(string member)
    {
        var value = _values[member];
        return value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var share) && share is > 0 and <= 1
            ? share
            : throw Wrong(member, $"{value.GetRawText()} is not a share above 0 up to 1");
    }

    public bool Has(string member) => _values.ContainsKey(member);

    /// <summary>The object or list that a member is.</summary>
    public JsonElement Element(string member) => _values[member];

    public LabelException Wrong(string member, string why) => new($"{_file}: member '{_path}{member}': {why}");
}
