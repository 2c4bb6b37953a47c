using System.Diagnostics.CodeAnalysis;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>The words in which a keeper states a substance, under the names of the columns of an import.</summary>
/// <param name="Name">Preferred name; one that the catalogue has already is corrected by it.</param>
/// <param name="Formula">Such as CuSO4.5H2O; null where it is not one compound.</param>
/// <param name="Cas">CAS number; null where it has none.</param>
/// <param name="State">solid, liquid, gas or unknown.</param>
/// <param name="Synonyms">Other names, parted by semicolons.</param>
/// <param name="Hazards">"Flam. Liq. 2 H225; EUH066"; "none" where a source says that no classification applies; null where nothing is known.</param>
/// <param name="Source">Who says so.</param>
/// <param name="AsOf">Date or edition it was good for.</param>
public sealed record OwnSubstanceWords(string Name, string? Formula, string? Cas, string State, string? Synonyms, string? Hazards, string Source, string AsOf);

/// <summary>A substance that the keeper stated: it wins over the catalogue, and its source says whose it is.</summary>
public sealed record OwnSubstance
{
    private const string NoClassification = "none";

    private OwnSubstance(OwnSubstanceWords words, Substance substance, IReadOnlyList<string> synonyms, HazardProfile? profile)
    {
        Words = words;
        Substance = substance;
        Synonyms = synonyms;
        Profile = profile;
    }

    public OwnSubstanceWords Words { get; }

    public Substance Substance { get; }

    public IReadOnlyList<string> Synonyms { get; }

    /// <summary>Its classification; null where the keeper states none, so that the catalogue's stays.</summary>
    public HazardProfile? Profile { get; }

    /// <summary>Reads the words; where they are wrong says in which column and what would be right.</summary>
    public static bool TryMake(OwnSubstanceWords words, [NotNullWhen(true)] out OwnSubstance? own, out string column, out string problem)
    {
        own = null;
        (column, problem) = Missing(words);
        if (problem.Length > 0)
            return false;
        if (!Enum.TryParse<MatterState>(words.State, ignoreCase: true, out var state) || char.IsDigit(words.State[0]))
            return Wrong("state", $"'{words.State}' must be solid, liquid, gas or unknown", out column, out problem);
        CasNumber? cas = null;
        if (words.Cas is { } number)
        {
            if (!CasNumber.TryParse(number, out var parsed, out problem))
                return Wrong("cas", problem, out column, out problem);
            cas = parsed;
        }

        if (!TryFormula(words.Formula, out var formula, out problem))
            return Wrong("formula", problem, out column, out problem);
        var provenance = new Provenance("the keeper: " + words.Source, "-", words.AsOf);
        var weights = SubstanceCatalogue.Default.AtomicWeights;
        var known = SubstanceCatalogue.Default.Find(words.Name);
        var substance = new Substance(
            words.Name, formula, cas, state, known?.Element, known?.DissolvedFormOf, formula?.MolarMassBy(weights), provenance);
        if (!TryProfile(words, provenance, out var profile, out problem))
            return Wrong("hazards", problem, out column, out problem);
        own = new OwnSubstance(words, substance, List(words.Synonyms), profile);
        return true;
    }

    private static (string Column, string Problem) Missing(OwnSubstanceWords words)
    {
        if (string.IsNullOrWhiteSpace(words.Name))
            return ("name", "is empty; a substance needs a name");
        if (string.IsNullOrWhiteSpace(words.State))
            return ("state", "is empty; it must be solid, liquid, gas or unknown");
        if (string.IsNullOrWhiteSpace(words.Source))
            return ("source", "is empty; say who says so");
        return string.IsNullOrWhiteSpace(words.AsOf) ? ("as_of", "is empty; say of which date or edition") : ("", "");
    }

    private static bool Wrong(string where, string what, out string column, out string problem)
    {
        (column, problem) = (where, what);
        return false;
    }

    private static bool TryFormula(string? text, out ChemicalFormula? formula, out string problem)
    {
        (formula, problem) = (null, "");
        try
        {
            formula = text is null ? null : ChemicalFormula.Parse(text);
            _ = formula?.MolarMassBy(SubstanceCatalogue.Default.AtomicWeights);
            return true;
        }
        catch (FormatException e)
        {
            problem = e.Message;
            return false;
        }
    }

    private static bool TryProfile(OwnSubstanceWords words, Provenance provenance, out HazardProfile? profile, out string problem)
    {
        (profile, problem) = (null, "");
        if (words.Hazards is null)
            return true;
        if (words.Hazards.Trim() == NoClassification)
        {
            profile = new HazardProfile { Name = words.Name, Knowledge = HazardKnowledge.NotClassified, NotClassifiedBy = provenance };
            return true;
        }

        var categories = new List<AssignedCategory>();
        foreach (var hazard in List(words.Hazards))
        {
            var cut = hazard.LastIndexOf(' ');
            var (category, statement) = hazard.StartsWith("EUH", StringComparison.Ordinal) ? ("EUH", hazard) : cut < 0 ? (hazard, "") : (hazard[..cut].Trim(), hazard[(cut + 1)..]);
            var known = category == "EUH"
                ? HazardFacts.Default.Texts.All.ContainsKey((statement, RuleSet.Eu))
                : HazardFacts.Default.Elements.Of(category, statement) is not null;
            if (!known)
            {
                problem = $"'{hazard}' must be a category and its statement, such as 'Skin Corr. 1B H314' or 'EUH066', or the whole cell none";
                return false;
            }

            categories.Add(new AssignedCategory(category, statement, provenance));
        }

        profile = new HazardProfile { Name = words.Name, Knowledge = HazardKnowledge.Classified, Categories = categories };
        return true;
    }

    private static string[] List(string? text) => (text ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
