using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>Finds a content by the keeper's words, or refuses with the nearest offered.</summary>
internal static class ContentWords
{
    public static Content Find(string words, SubstanceCatalogue? catalogue = null)
    {
        if (words.Trim().StartsWith("orphan", StringComparison.OrdinalIgnoreCase))
            return Content.Orphan(words.Trim(), MatterState.Unknown);
        var resolution = (catalogue ?? SubstanceCatalogue.Default).Resolve(words);
        return resolution.Content ?? throw RefusedException.Words(resolution.Problem!);
    }

    /// <summary>
    /// The catalogue and hazards with the substances of a book's keeper on top. Without a book named, the catalogue's own:
    /// these verbs need no book.
    /// </summary>
    public static (SubstanceCatalogue Catalogue, HazardFacts Hazards) KnownTo(string? named, Surroundings around)
    {
        var folder = named ?? around.Variable(BookAccess.Variable);
        if (folder is null || (named is null && !StockBookFolder.IsBook(folder)))
            return (SubstanceCatalogue.Default, HazardFacts.Default);
        using var book = BookAccess.Read(folder, around);
        var state = book.Ledger.State;
        return state.OwnSubstances.Count == 0
            ? (SubstanceCatalogue.Default, HazardFacts.Default)
            : (state.Catalogue(), state.Hazards());
    }
}
