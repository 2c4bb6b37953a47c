using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.Standing;

/// <summary>What light does to a content.</summary>
public sealed record SpoiledByLight(string Effect, string Would, Provenance Source);

/// <summary>Which substances light spoils, from light-sensitive.tsv. What is not named there is not known to be spoiled.</summary>
public sealed class LightSensitivity
{
    private static readonly Lazy<LightSensitivity> Embedded = new(() => new LightSensitivity());

    private readonly Dictionary<string, (decimal FromPercent, SpoiledByLight Spoiled)> _bySubstance = new(StringComparer.Ordinal);

    private LightSensitivity()
    {
        foreach (var row in EmbeddedTables.Facts("light-sensitive.tsv", "substance", "from_percent", "effect", "would").Rows)
        {
            var name = row.Text("substance");
            if (SubstanceCatalogue.Default.Find(name)?.Name != name)
                throw row.Wrong("substance", $"'{name}' is not a substance of substances.tsv");
            if (!Consequences.All.Contains(row.Text("would")))
                throw row.Wrong("would", $"must be one of {string.Join(", ", Consequences.All)}");
            if (!_bySubstance.TryAdd(name, (row.DecimalOrNull("from_percent") ?? 0m, new SpoiledByLight(row.Text("effect"), row.Text("would"), row.Provenance))))
                throw row.Wrong("substance", $"'{name}' stands twice");
        }
    }

    public static LightSensitivity Default => Embedded.Value;

    public SpoiledByLight? Of(Content content)
    {
        foreach (var part in content.Parts)
        {
            if (_bySubstance.TryGetValue(part.Substance.Name, out var known) && part.Percent >= known.FromPercent)
                return known.Spoiled;
        }

        return null;
    }
}
