using System.Collections.Immutable;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Book;

public sealed partial record BookState
{
    /// <summary>Substances that the keeper stated, by name; they win over the catalogue's.</summary>
    public ImmutableDictionary<string, OwnSubstance> OwnSubstances { get; private init; } = ImmutableDictionary.Create<string, OwnSubstance>(StringComparer.Ordinal);

    /// <summary>The program's catalogue with the keeper's substances on top.</summary>
    public SubstanceCatalogue Catalogue() => SubstanceCatalogue.Default.With(OwnSubstances.Values);

    /// <summary>The program's hazards with the keeper's classifications on top.</summary>
    public HazardFacts Hazards()
    {
        var own = OwnSubstances.Values.Where(o => o.Profile is not null).ToDictionary(o => o.Substance.Name, o => o.Profile!, StringComparer.Ordinal);
        return own.Count == 0 ? HazardFacts.Default : HazardFacts.Default.With(own);
    }

    internal BookState WithOwn(OwnSubstance own) => this with { OwnSubstances = OwnSubstances.SetItem(own.Substance.Name, own) };
}
