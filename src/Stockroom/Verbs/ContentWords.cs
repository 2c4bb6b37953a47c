using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Verbs;

/// <summary>Finds a content by the keeper's words, or refuses with the nearest offered.</summary>
internal static class ContentWords
{
    public static Content Find(string words)
    {
        if (words.Trim().StartsWith("orphan", StringComparison.OrdinalIgnoreCase))
            return Content.Orphan(words.Trim(), MatterState.Unknown);
        var resolution = SubstanceCatalogue.Default.Resolve(words);
        return resolution.Content ?? throw RefusedException.Words(resolution.Problem!);
    }
}
