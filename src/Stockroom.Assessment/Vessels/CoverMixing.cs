using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Vessels;

/// <summary>Reads cover-mixing.tsv: whether a content mixes with what is to lie over it.</summary>
internal static class CoverMixing
{
    private const string Family = "family:";

    // A solubility below this, in g/L, leaves two layers that matter.
    private const double TwoLayers = 100;

    private static readonly Lazy<IReadOnlyDictionary<(string Cover, string With), (bool Mixes, string Because, Provenance Source)>> Rows = new(() =>
        EmbeddedTables.Facts("cover-mixing.tsv", "cover", "with", "mixes", "because").Rows
            .ToDictionary(r => (r.Text("cover"), r.Text("with")), r => (r.YesNo("mixes"), r.Text("because"), r.Provenance)));

    /// <summary>The group under which a cover stands in the table.</summary>
    public static string GroupOf(Cover cover) => cover.Name.StartsWith("sulfuric acid", StringComparison.Ordinal) ? "sulfuric acid"
        : cover.Name.EndsWith("oil", StringComparison.Ordinal) ? "oil" : cover.Name;

    /// <summary>Null where nothing is known.</summary>
    public static (bool Mixes, string Because, Provenance Source)? Find(Content content, Cover cover, ContactProfile profile, PropertyFacts facts)
    {
        var group = GroupOf(cover);
        if (content.Pure is { } pure)
        {
            if (Rows.Value.TryGetValue((group, pure.Name), out var own))
                return own;
            if (facts.ThroughCover(pure, cover.Name) is { } transport)
                return (transport.Solubility.High.KilogramsPerCubicMetre >= TwoLayers, $"{transport.Solubility.Expected.KilogramsPerCubicMetre:G3} g/L dissolve", transport.Provenance);
            if (pure.State == MatterState.Solid && pure.Element is not null)
                return (false, "an element that stays as it is", new Provenance("common practice", "-", "2026"));
        }

        foreach (var carried in profile.Families)
        {
            if (Rows.Value.TryGetValue((group, Family + carried.Family.Key), out var row))
                return row;
        }

        return null;
    }
}
