using System.Text.Json;

namespace Stockroom.Book.States;

/// <summary>Reads the values of one list in the order in which <see cref="StateWriter"/> wrote them.</summary>
/// <exception cref="FormatException">A value is missing or left over.</exception>
/// <exception cref="InvalidOperationException">A value is of another kind.</exception>
internal sealed class StateReader(JsonElement list)
{
    private JsonElement.ArrayEnumerator _values = list.EnumerateArray();

    public string Text() => TextOrNull() ?? throw new FormatException("a text is missing");

    public string? TextOrNull() => Next() is { ValueKind: not JsonValueKind.Null } value ? value.GetString() : null;

    public decimal Number() => Next().GetDecimal();

    public decimal? NumberOrNull() => Next() is { ValueKind: not JsonValueKind.Null } value ? value.GetDecimal() : null;

    public long Integer() => Next().GetInt64();

    public int? IntegerOrNull() => Next() is { ValueKind: not JsonValueKind.Null } value ? value.GetInt32() : null;

    public DateOnly Day() => DateOnly.FromDayNumber(Next().GetInt32());

    public DateOnly? DayOrNull() => IntegerOrNull() is { } day ? DateOnly.FromDayNumber(day) : null;

    public bool Flag() => Next().GetBoolean();

    public bool? FlagOrNull() => Next() is { ValueKind: not JsonValueKind.Null } value ? value.GetBoolean() : null;

    public ContainerId Id() => ContainerId.Parse(Text());

    public ContainerId? IdOrNull() => TextOrNull() is { } text ? ContainerId.Parse(text) : null;

    public T Group<T>(Func<StateReader, T> read)
        where T : class => Of(Next(), read);

    public T? GroupOrNull<T>(Func<StateReader, T> read)
        where T : class => Next() is { ValueKind: not JsonValueKind.Null } value ? Of(value, read) : null;

    /// <summary>A list of values that are each made of several.</summary>
    public List<T> Groups<T>(Func<StateReader, T> read)
        where T : class => [.. Next().EnumerateArray().Select(e => Of(e, read))];

    public List<T>? GroupsOrNull<T>(Func<StateReader, T> read)
        where T : class => Next() is { ValueKind: not JsonValueKind.Null } value ? [.. value.EnumerateArray().Select(e => Of(e, read))] : null;

    public List<string> Texts() => [.. Next().EnumerateArray().Select(e => e.GetString() ?? throw new FormatException("a text is missing"))];

    public List<long> Integers() => [.. Next().EnumerateArray().Select(e => e.GetInt64())];

    public static T Of<T>(JsonElement list, Func<StateReader, T> read)
    {
        var reader = new StateReader(list);
        var value = read(reader);
        return reader._values.MoveNext() ? throw new FormatException("there are more values than belong") : value;
    }

    private JsonElement Next() => _values.MoveNext() ? _values.Current : throw new FormatException("a value is missing");
}
