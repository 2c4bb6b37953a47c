using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>How a material stands long contact with a content.</summary>
public enum ResistanceRating
{
    Poor = 0,
    Limited,
    Good,
}

/// <summary>One row of material-resistance.tsv.</summary>
/// <remarks>Strength: By mass in water; null for the substance itself.</remarks>
public sealed record MaterialResistance(Substance Substance, Fraction? Strength, string Material, ResistanceRating Rating, string Remark, Provenance Provenance);

/// <summary>Reads material-resistance.tsv.</summary>
internal sealed class MaterialResistanceTable
{
    private static readonly Dictionary<string, ResistanceRating> Ratings = new(StringComparer.Ordinal)
    {
        ["good"] = ResistanceRating.Good,
        ["limited"] = ResistanceRating.Limited,
        ["poor"] = ResistanceRating.Poor,
    };

    private readonly Dictionary<(string, string), List<MaterialResistance>> _rows = [];

    private MaterialResistanceTable(IReadOnlyList<string> materials) => Materials = materials;

    public IReadOnlyList<string> Materials { get; }

    public static MaterialResistanceTable Read(SubstanceCatalogue catalogue)
    {
        var rows = EmbeddedTables.Facts("material-resistance.tsv", "substance", "percent", "material", "rating", "remark").Rows;
        var table = new MaterialResistanceTable([.. rows.Select(r => r.Text("material")).Distinct(StringComparer.Ordinal)]);
        foreach (var row in rows)
        {
            var entry = new MaterialResistance(
                row.SubstanceOf(catalogue, "substance"),
                row.PositiveOrNull("percent") is { } percent ? Fraction.FromPercent(percent) : null,
                row.Text("material"),
                row.OneOf("rating", Ratings),
                row.Text("remark"),
                row.Provenance);
            var key = (entry.Substance.Name, entry.Material);
            if (!table._rows.TryGetValue(key, out var list))
                table._rows[key] = list = [];
            if (list.Exists(e => e.Strength == entry.Strength))
                throw row.Wrong("material", $"{entry.Substance.Name} on {entry.Material} is rated twice at this strength");
            list.Add(entry);
        }

        return table;
    }

    public IReadOnlyList<MaterialResistance> Find(Substance substance, string material) =>
        _rows.TryGetValue((substance.Name, material), out var list) ? list : [];
}
