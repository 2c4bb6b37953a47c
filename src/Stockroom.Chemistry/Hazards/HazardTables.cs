using System.Globalization;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Reads the tables of hazards and checks every name in them against the catalogue.</summary>
internal sealed class HazardTables(SubstanceCatalogue catalogue)
{
    private static readonly Dictionary<string, EntryStatus> Statuses = new(StringComparer.Ordinal)
    {
        ["harmonised"] = EntryStatus.Harmonised,
        ["group"] = EntryStatus.Group,
        ["self"] = EntryStatus.Self,
    };

    public Dictionary<string, HazardProfile> ReadProfiles()
    {
        var categories = Group("hazards.tsv", ReadCategory, "category", "statement", "minimum", "organs", "leaves_open", "over_percent", "up_to_percent", "status");
        var limits = Group("concentration-limits.tsv", ReadLimit, "category", "statement", "from_percent", "above", "to_percent", "to_included");
        var estimates = Group("ates.tsv", ReadEstimate, "route", "value", "unit", "over_percent", "up_to_percent");
        var factors = Group("m-factors.tsv", r => (Acute: r.DecimalOrNull("acute"), Chronic: r.DecimalOrNull("chronic")), "acute", "chronic", "status");
        var shares = Group("limit-basis.tsv", r => (CountedAs: r.Text("counted_as"), Note: r.Text("note"), Row: r), "counted_as", "note");
        var summed = Group("summed-groups.tsv", r => r.Text("group_name"), "group_name", "note");
        var none = Group("not-classified.tsv", r => r.Provenance, "why");

        var profiles = new Dictionary<string, HazardProfile>(StringComparer.Ordinal);
        foreach (var substance in catalogue.Substances)
        {
            var name = substance.Name;
            var assigned = categories.GetValueOrDefault(name);
            var notClassified = none.GetValueOrDefault(name)?[0];
            if (assigned is not null && notClassified is not null)
                throw new TableException("not-classified.tsv", 1, "substance", $"'{name}' also has rows in hazards.tsv");
            var share = shares.GetValueOrDefault(name)?[0];
            profiles[name] = new HazardProfile
            {
                Name = name,
                Knowledge = assigned is not null ? HazardKnowledge.Classified : notClassified is not null ? HazardKnowledge.NotClassified : HazardKnowledge.Unknown,
                Categories = assigned ?? [],
                Limits = limits.GetValueOrDefault(name) ?? [],
                Estimates = estimates.GetValueOrDefault(name) ?? [],
                AcuteFactor = factors.GetValueOrDefault(name)?[0].Acute,
                ChronicFactor = factors.GetValueOrDefault(name)?[0].Chronic,
                CountedShare = share is { } s ? CountedShare(substance, s.CountedAs, s.Row) : 1m,
                CountedNote = share?.Note,
                SummedAs = summed.GetValueOrDefault(name)?[0],
                NotClassifiedBy = notClassified,
            };
        }

        return profiles;
    }

    private static AssignedCategory ReadCategory(TableRow row) => new(
        row.Text("category"),
        row.TextOrNull("statement") ?? "",
        row.Provenance,
        row.YesNo("minimum"),
        row.TextOrNull("organs"),
        row.TextOrNull("leaves_open"),
        row.DecimalOrNull("over_percent"),
        row.DecimalOrNull("up_to_percent"),
        row.OneOf("status", Statuses));

    private static ConcentrationLimit ReadLimit(TableRow row) => new(
        row.Text("category"),
        row.Text("statement"),
        row.Decimal("from_percent"),
        row.YesNo("above"),
        row.DecimalOrNull("to_percent"),
        row.YesNo("to_included"),
        row.Provenance);

    private static AcuteToxicityEstimate ReadEstimate(TableRow row) => new(
        row.OneOf("route", ExposureRoutes.Words),
        row.Decimal("value"),
        row.Provenance,
        row.DecimalOrNull("over_percent"),
        row.DecimalOrNull("up_to_percent"));

    private Dictionary<string, List<T>> Group<T>(string file, Func<TableRow, T> read, params string[] columns)
    {
        var groups = new Dictionary<string, List<T>>(StringComparer.Ordinal);
        foreach (var row in EmbeddedTables.Facts(file, ["substance", .. columns]).Rows)
        {
            var name = row.Text("substance");
            if (catalogue.Find(name) is null)
                throw row.Wrong("substance", $"'{name}' is not a substance of substances.tsv");
            if (!groups.TryGetValue(name, out var list))
                groups[name] = list = [];
            list.Add(read(row));
        }

        return groups;
    }

    // Mass of the counted part in one unit of mass of the substance: of the element, or of the ion that holds it.
    private decimal CountedShare(Substance substance, string countedAs, TableRow row)
    {
        var part = ChemicalFormula.Parse(countedAs);
        var element = part.Atoms.Keys.First(a => a != "O");
        if (substance.Formula is null || substance.MolarMass is not { } whole || !substance.Formula.Contains(element))
            throw row.Wrong("counted_as", string.Create(CultureInfo.InvariantCulture, $"'{countedAs}' is not a part of {substance.Name}"));
        var mass = substance.Formula.CountOf(element) * part.MolarMassBy(catalogue.AtomicWeights).GramsPerMole / whole.GramsPerMole;
        return Math.Round((decimal)mass, 6);
    }
}
