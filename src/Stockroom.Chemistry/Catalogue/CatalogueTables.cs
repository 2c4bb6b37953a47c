using System.Globalization;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>Reads the tables that make the catalogue and checks them against each other.</summary>
internal sealed class CatalogueTables
{
    private static readonly Dictionary<string, MatterState> States = new(StringComparer.Ordinal)
    {
        ["solid"] = MatterState.Solid,
        ["liquid"] = MatterState.Liquid,
        ["gas"] = MatterState.Gas,
        ["unknown"] = MatterState.Unknown,
    };

    public required IReadOnlyDictionary<string, double> AtomicWeights { get; init; }

    public required IReadOnlyList<Substance> Substances { get; init; }

    public required IReadOnlyList<Content> Preparations { get; init; }

    public required IReadOnlyList<(string Synonym, string Target)> Synonyms { get; init; }

    public static CatalogueTables ReadEmbedded()
    {
        var weights = ReadWeights();
        var substances = ReadSubstances(weights);
        var byName = substances.ToDictionary(s => s.Name, StringComparer.Ordinal);
        var preparations = ReadPreparations(byName);
        var known = byName.Keys.Concat(preparations.Select(p => p.Name)).ToHashSet(StringComparer.Ordinal);
        return new CatalogueTables
        {
            AtomicWeights = weights,
            Substances = substances,
            Preparations = preparations,
            Synonyms = ReadSynonyms(known),
        };
    }

    private static Dictionary<string, double> ReadWeights() =>
        EmbeddedTables.Facts("atomic-weights.tsv", "symbol", "atomic_number", "element", "weight").Rows
            .ToDictionary(r => r.Text("symbol"), r => r.Positive("weight"), StringComparer.Ordinal);

    private static List<Substance> ReadSubstances(Dictionary<string, double> weights)
    {
        var table = EmbeddedTables.Facts("substances.tsv", "name", "formula", "cas", "state", "element", "dissolved_form_of");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var list = new List<Substance>(table.Rows.Count);
        foreach (var row in table.Rows)
        {
            var name = row.Text("name");
            if (!seen.Add(name))
                throw row.Wrong("name", $"'{name}' stands twice");
            var formula = ReadFormula(row);
            list.Add(new Substance(
                name,
                formula,
                ReadCas(row),
                row.OneOf("state", States),
                row.TextOrNull("element"),
                row.TextOrNull("dissolved_form_of"),
                formula is null ? null : ReadMolarMass(row, formula, weights),
                row.Provenance));
        }

        foreach (var row in table.Rows)
        {
            if (row.TextOrNull("dissolved_form_of") is { } gas && !seen.Contains(gas))
                throw row.Wrong("dissolved_form_of", $"'{gas}' is not a substance of this table");
        }

        return list;
    }

    private static ChemicalFormula? ReadFormula(TableRow row)
    {
        if (row.TextOrNull("formula") is not { } text)
            return null;
        try
        {
            return ChemicalFormula.Parse(text);
        }
        catch (FormatException e)
        {
            throw row.Wrong("formula", e.Message);
        }
    }

    private static MolarMass ReadMolarMass(TableRow row, ChemicalFormula formula, Dictionary<string, double> weights)
    {
        try
        {
            return formula.MolarMassBy(weights);
        }
        catch (FormatException e)
        {
            throw row.Wrong("formula", e.Message);
        }
    }

    private static CasNumber? ReadCas(TableRow row)
    {
        if (row.TextOrNull("cas") is not { } text)
            return null;
        return CasNumber.TryParse(text, out var cas, out var problem) ? cas : throw row.Wrong("cas", problem);
    }

    private static List<Content> ReadPreparations(Dictionary<string, Substance> substances)
    {
        var list = new List<Content>();
        foreach (var row in EmbeddedTables.Facts("preparations.tsv", "name", "parts", "state", "density_g_ml", "moles_per_litre", "note").Rows)
        {
            var parts = row.List("parts").Select(p => ReadPart(row, p, substances)).ToList();
            if (parts.Sum(p => p.Percent) != 100m)
                throw row.Wrong("parts", $"add up to {parts.Sum(p => p.Percent).ToString(CultureInfo.InvariantCulture)}, not 100");
            list.Add(new Content
            {
                Name = row.Text("name"),
                State = row.OneOf("state", States),
                Parts = parts,
                Density = row.PositiveOrNull("density_g_ml") is { } density ? Density.FromGramsPerMillilitre(density) : null,
                MolesPerLitre = row.DecimalOrNull("moles_per_litre"),
                Notes = row.TextOrNull("note") is { } note ? [note] : [],
                Provenance = row.Provenance,
            });
        }

        return list;
    }

    private static Part ReadPart(TableRow row, string text, Dictionary<string, Substance> substances)
    {
        var cut = text.LastIndexOf(' ');
        if (cut < 0 || !decimal.TryParse(text[(cut + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) || percent <= 0)
            throw row.Wrong("parts", $"'{text}' must be a substance and its per cent by mass");
        return substances.TryGetValue(text[..cut], out var substance)
            ? new Part(substance, percent)
            : throw row.Wrong("parts", $"'{text[..cut]}' is not a substance of substances.tsv");
    }

    private static List<(string Synonym, string Target)> ReadSynonyms(HashSet<string> known)
    {
        var list = new List<(string Synonym, string Target)>();
        foreach (var row in EmbeddedTables.Facts("synonyms.tsv", "synonym", "substance").Rows)
        {
            var target = row.Text("substance");
            if (!known.Contains(target))
                throw row.Wrong("substance", $"'{target}' is neither a substance nor a preparation");
            list.Add((row.Text("synonym"), target));
        }

        return list;
    }
}
