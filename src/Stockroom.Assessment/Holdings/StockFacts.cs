using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Rounds;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Holdings;

/// <summary>All facts that a judgement of the stock rests on. Immutable.</summary>
public sealed record StockFacts(
    SubstanceCatalogue Catalogue,
    HazardFacts Hazards,
    PropertyFacts Properties,
    ContactFacts Contacts,
    WareCatalogue Wares,
    RoundRules Rounds)
{
    /// <summary>The facts that come with the program.</summary>
    public static StockFacts Default => new(
        SubstanceCatalogue.Default, HazardFacts.Default, PropertyFacts.Default, ContactFacts.Default, WareCatalogue.Default, RoundRules.Default);
}
