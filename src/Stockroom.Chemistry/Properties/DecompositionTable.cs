using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>The published rate law of a content that decomposes by itself.</summary>
public sealed record DecompositionLaw(
    Substance Substance, DecompositionKind Kind, FitCoefficients Coefficients, Temperature? At, Spread Spread, Temperature HoldsFrom, Temperature HoldsTo, Provenance Provenance);

public enum DecompositionKind
{
    /// <summary>Hypochlorite, with the ionic strength.</summary>
    SecondOrderIonic = 0,

    /// <summary>Peroxide.</summary>
    FirstOrder,
}

/// <summary>Reads decomposition.tsv.</summary>
internal sealed class DecompositionTable
{
    private static readonly Dictionary<string, DecompositionKind> Kinds = new(StringComparer.Ordinal)
    {
        ["second_order_ionic"] = DecompositionKind.SecondOrderIonic,
        ["first_order"] = DecompositionKind.FirstOrder,
    };

    private readonly Dictionary<string, DecompositionLaw> _laws = new(StringComparer.Ordinal);

    private DecompositionTable()
    {
    }

    public static DecompositionTable Read(SubstanceCatalogue catalogue)
    {
        var table = new DecompositionTable();
        foreach (var row in EmbeddedTables.Facts("decomposition.tsv", "substance", "law", "a", "b", "c", "d", "at_k", "spread", "holds_from", "holds_to").Rows)
        {
            var law = new DecompositionLaw(
                row.SubstanceOf(catalogue, "substance"),
                row.OneOf("law", Kinds),
                new FitCoefficients(row.Positive("a"), row.Positive("b"), row.NumberOrNull("c") ?? 0, row.NumberOrNull("d") ?? 0),
                row.PositiveOrNull("at_k") is { } at ? new Temperature(at) : null,
                Spread.Of(row.Positive("spread")),
                new Temperature(row.Positive("holds_from")),
                new Temperature(row.Positive("holds_to")),
                row.Provenance);
            if (!table._laws.TryAdd(law.Substance.Name, law))
                throw row.Wrong("substance", "stands twice");
        }

        return table;
    }

    public DecompositionLaw? Find(Substance substance) => _laws.GetValueOrDefault(substance.Name);
}
