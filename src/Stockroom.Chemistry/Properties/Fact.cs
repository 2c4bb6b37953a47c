using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>A value with its uncertainty and source, or the reason why there is none.</summary>
public sealed record Fact<T>
    where T : struct
{
    private Fact()
    {
    }

    /// <summary>Null where the value is not known.</summary>
    public T? Value { get; private init; }

    public Spread Spread { get; private init; }

    public Provenance? Provenance { get; private init; }

    /// <summary>What a reader must know to use the value: outside the range of its fit, an estimate; else null.</summary>
    public string? Note { get; private init; }

    /// <summary>Why there is no value; null where there is one.</summary>
    public string? Reason { get; private init; }

    public bool IsKnown => Value is not null;

    public static Fact<T> Of(T value, Spread spread, Provenance provenance, string? note = null) =>
        new() { Value = value, Spread = spread, Provenance = provenance, Note = note };

    public static Fact<T> Missing(string reason) => new() { Reason = reason };

    /// <summary>The same uncertainty and source with a value computed from this one; a missing value stays missing.</summary>
    public Fact<TOut> Select<TOut>(Func<T, TOut> f)
        where TOut : struct =>
        Value is { } v ? Fact<TOut>.Of(f(v), Spread, Provenance!, Note) : Fact<TOut>.Missing(Reason!);
}
