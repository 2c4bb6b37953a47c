using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>What a strong acid or a base does when the two neutralise each other.</summary>
internal enum IonKind
{
    Acid = 0,
    Hydroxide,
    Carbonate,
    Hydrogencarbonate,
    Ammonia,
}

/// <summary>The ion that an acid or base leaves in a salt.</summary>
/// <param name="Substance">The acid or base.</param>
/// <param name="Kind">Acid, or which sort of base.</param>
/// <param name="Ion">Formula of the ion without its charge, such as Na or SO4.</param>
/// <param name="Name">Name of the ion in the salt's name.</param>
/// <param name="Charge">Charge of the ion, without sign.</param>
/// <param name="Equivalents">Equivalents of acid or base in one mole.</param>
/// <param name="CrystalWater">Water that one mole brings in its crystals.</param>
internal sealed record IonRow(string Substance, IonKind Kind, string Ion, string Name, int Charge, int Equivalents, int CrystalWater);

/// <summary>The acids and bases whose neutralisation is computed, from reaction-ions.tsv.</summary>
internal sealed class IonTable
{
    private static readonly Dictionary<string, IonKind> Kinds = new(StringComparer.Ordinal)
    {
        ["acid"] = IonKind.Acid,
        ["hydroxide"] = IonKind.Hydroxide,
        ["carbonate"] = IonKind.Carbonate,
        ["hydrogencarbonate"] = IonKind.Hydrogencarbonate,
        ["ammonia"] = IonKind.Ammonia,
    };

    private readonly Dictionary<string, IonRow> _rows;

    private IonTable(Dictionary<string, IonRow> rows) => _rows = rows;

    public static IonTable Read(SubstanceCatalogue catalogue) => new(
        EmbeddedTables.Facts("reaction-ions.tsv", "substance", "kind", "ion", "ion_name", "charge", "equivalents", "crystal_water").Rows.Select(r => new IonRow(
            catalogue.Find(r.Text("substance"))?.Name ?? throw r.Wrong("substance", $"'{r.Text("substance")}' is not a substance of substances.tsv"),
            r.OneOf("kind", Kinds), r.Text("ion"), r.Text("ion_name"), r.Integer("charge"), r.Integer("equivalents"), r.Integer("crystal_water")))
        .ToDictionary(r => r.Substance, StringComparer.Ordinal));

    public IEnumerable<IonRow> All => _rows.Values;

    public IonRow? Of(string substance) => _rows.GetValueOrDefault(substance);

    public bool Is(string substance, IonKind kind) => Of(substance)?.Kind == kind;
}
