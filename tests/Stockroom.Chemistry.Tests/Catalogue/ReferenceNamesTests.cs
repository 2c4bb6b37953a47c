using System.Text.RegularExpressions;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Catalogue;

/// <summary>
/// Every substance that the reference tables name is in the catalogue. The folder of those tables is named by
/// STOCKROOM_REFERENCE; without it the test is skipped. What is left out on purpose stands below, with its reason.
/// </summary>
public sealed partial class ReferenceNamesTests
{
    private const string Kind = "a kind of goods, not one substance";
    private const string Remark = "a remark on the substance before it";
    private const string Material = "a material of construction, not a stock";

    private static readonly Dictionary<string, string> LeftOut = new(StringComparer.Ordinal)
    {
        ["acids (table row: reducing agents)"] = Kind,
        ["air"] = "the surroundings",
        ["moisture"] = "the surroundings",
        ["moist air"] = "the surroundings",
        ["alcohols"] = Kind,
        ["isocyanates"] = Kind,
        ["organics"] = Kind,
        ["organic solvents"] = Kind,
        ["fine organics"] = Kind,
        ["metals"] = Kind,
        ["mercury salts"] = Kind,
        ["chromium salts"] = Kind,
        ["arsenic compounds"] = Kind,
        ["selenides"] = Kind,
        ["reducing agents"] = Kind,
        ["acid"] = Kind,
        ["peroxides"] = Kind,
        ["oil"] = Kind,
        ["grease"] = Kind,
        ["other secondary alcohols"] = Kind,
        ["any class C monomer without inhibitor"] = Kind,
        ["any peroxide former"] = Kind,
        ["solvents"] = Kind,
        ["paper"] = Material,
        ["wood"] = Material,
        ["sawdust"] = Material,
        ["glass"] = Material,
        ["silica"] = "glass is meant, a material of construction",
        ["brass"] = Material,
        ["steel"] = Material,
        ["base"] = Kind,
        ["alkali metals"] = Kind,
        ["iodophenetoles"] = Kind,
        ["selenium compounds"] = Kind,
        ["zirconium compounds"] = Kind,
        ["copper oxide"] = "either of two: the catalogue asks which",
        ["compounds"] = Remark,
        ["inorganic"] = Remark,
        ["soluble"] = Remark,
        ["insoluble"] = Remark,
        ["dusts"] = Remark,
        ["mists"] = Remark,
        ["alcoholic"] = Remark,
        ["wet"] = Remark,
        ["KI solution"] = "in which the iodine is dissolved",
    };

    public static TheoryData<string, string> Columns => new()
    {
        { "physics/vapour_pressure_coefficients.tsv", "substance" },
        { "physics/substance_properties.tsv", "substance" },
        { "physics/liquid_density_coefficients.tsv", "substance" },
        { "physics/diffusion_in_air.tsv", "substance" },
        { "physics/occupational_exposure_limits.tsv", "substance" },
        { "physics/material_compatibility.tsv", "chemical" },
        { "physics/peroxide_formers.tsv", "substance" },
        { "segregation/reference_substances.tsv", "name" },
        { "segregation/incompatible_pairs.tsv", "substance_a" },
        { "segregation/incompatible_pairs.tsv", "substance_b" },
        { "segregation/peroxide_formers.tsv", "substance" },
        { "segregation/element_families.tsv", "name" },
    };

    [Theory]
    [MemberData(nameof(Columns))]
    public void Catalogue_SubstancesOfAReferenceTable_Resolve(string file, string column)
    {
        var rows = Rows(file);
        Assert.NotEmpty(rows);
        Assert.True(rows[0].ContainsKey(column), $"{file} has no column {column}");
        var missing = rows.Select(r => r[column]).Distinct().SelectMany(Parts).Where(n => !Resolves(n)).Distinct().ToList();
        Assert.True(missing.Count == 0, $"{file}, {column}: {string.Join("; ", missing)}");
    }

    [Fact]
    public void Catalogue_CasNumbersOfTheReferenceTables_LeadToTheSameSubstanceAsTheNames()
    {
        var wrong = new List<string>();
        foreach (var (file, column) in new[] { ("physics/substance_properties.tsv", "substance"), ("segregation/reference_substances.tsv", "name"), ("segregation/peroxide_formers.tsv", "substance"), ("physics/occupational_exposure_limits.tsv", "substance") })
        {
            foreach (var row in Rows(file).Where(r => r["cas"].Length > 2))
            {
                var byName = Catalogue.Resolve(row[column]).Content;
                var byNumber = Catalogue.ResolveSubstance(row["cas"]);
                if (byName?.Pure is { } named && byNumber is { } numbered && named.Formula?.Text != numbered.Formula?.Text && !named.Name.StartsWith(numbered.Name, StringComparison.Ordinal))
                    wrong.Add($"{row[column]}: {named} by name, {numbered} by {row["cas"]}");
            }
        }

        // 7723-14-0 stands for phosphorus in every form; the catalogue keeps it for the red.
        wrong.RemoveAll(w => w.StartsWith("phosphorus", StringComparison.Ordinal));
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    // Left out of the sample: group entries, which have no CAS number of their own.
    [Fact]
    public void Catalogue_HarmonisedSample_IsCovered()
    {
        var cited = Catalogue.Substances.SelectMany(s => HazardFacts.Default.ProfileOf(s).Categories)
            .Select(c => c.Provenance.Locator.Split(',')[0].Replace("index no. ", "", StringComparison.Ordinal)).ToHashSet(StringComparer.Ordinal);
        var missing = Rows("ghs/harmonised_sample.tsv")
            .Where(r => r["group"] != "group entry" && CasNumbers().IsMatch(r["cas_no"]))
            .Where(r => !cited.Contains(r["index_no"]))
            .Where(r => !CasNumbers().Matches(r["cas_no"]).Any(c => Catalogue.ResolveSubstance(c.Value) is not null))
            .Select(r => $"{r["index_no"]} {r["name"]}")
            .ToList();
        Assert.True(missing.Count == 0, string.Join("; ", missing));
    }

    private static SubstanceCatalogue Catalogue => SubstanceCatalogue.Default;

    private static bool Resolves(string name) => LeftOut.ContainsKey(name) || Catalogue.Resolve(name).Content is not null;

    // "zinc + acid (reducing agent)", "copper / brass", "toluene / xylene / benzene": each part; a remark in brackets goes
    // where the whole is no name.
    private static IEnumerable<string> Parts(string words)
    {
        if (Resolves(words))
            return [];
        var bare = Bracket().Replace(words, "");
        if (Resolves(bare))
            return [];
        var parts = Joint().Split(bare.Replace(" vapour", "", StringComparison.Ordinal)).Select(p => p.Trim()).Where(p => p.Length > 0).ToList();
        var last = parts[^1].LastIndexOf(' ');
        var tail = last < 0 ? "" : parts[^1][last..];
        var head = parts[0].Split(' ')[0] + " ";
        return parts.Where(p => !Resolves(p) && !Resolves(p + tail) && !Resolves(head + p));
    }

    private static List<Dictionary<string, string>> Rows(string file)
    {
        var folder = Environment.GetEnvironmentVariable("STOCKROOM_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "the environment variable STOCKROOM_REFERENCE does not name the folder of reference tables");
        var lines = File.ReadAllLines(Path.Combine(folder!, file)).Where(l => l.Length > 0 && l[0] != '#').ToList();
        var header = lines[0].Split('\t');
        return [.. lines.Skip(1).Select(l => header.Zip(l.Split('\t')).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }

    [GeneratedRegex(@"\s*\([^)]*\)")]
    private static partial Regex Bracket();

    [GeneratedRegex(@"\s(?:/|\+|or|and|under)\s|/|,\s")]
    private static partial Regex Joint();

    [GeneratedRegex(@"\d{2,7}-\d\d-\d")]
    private static partial Regex CasNumbers();
}
