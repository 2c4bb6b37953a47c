using System.Text.Json;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Recipes;

/// <summary>Reads one ingredient of a mixture file with the data it brings.</summary>
internal sealed class FileIngredient(HazardFacts facts, SubstanceCatalogue catalogue, List<string> notes)
{
    private static readonly string[] Known =
        ["name", "percent", "categories", "ate", "m_acute", "m_chronic", "limits", "ph", "toxicity_unknown", "state"];

    private static readonly string[] LimitFields = ["category", "from_percent", "below_percent"];

    private static readonly string[] Data = ["categories", "ate", "m_acute", "m_chronic", "limits", "ph", "toxicity_unknown"];

    private static readonly Dictionary<string, ExposureRoute> AteFields = new(StringComparer.Ordinal)
    {
        ["oral_mg_kg"] = ExposureRoute.Oral,
        ["dermal_mg_kg"] = ExposureRoute.Dermal,
        ["inhalation_gas_ppm"] = ExposureRoute.Gas,
        ["inhalation_vapour_mg_l"] = ExposureRoute.Vapour,
        ["inhalation_dust_mg_l"] = ExposureRoute.Dust,
    };

    private static readonly Provenance Stated = new("stated by the file", "-", "as given");

    private readonly CategoryWords _words = new(facts.Elements);

    public static bool SameData(HazardProfile a, HazardProfile b) =>
        a.Categories.SequenceEqual(b.Categories) && a.Limits.SequenceEqual(b.Limits) && a.Estimates.SequenceEqual(b.Estimates)
        && a.UnknownRoutes.SequenceEqual(b.UnknownRoutes) && (a.AcuteFactor, a.ChronicFactor, a.Ph, a.Knowledge) == (b.AcuteFactor, b.ChronicFactor, b.Ph, b.Knowledge);

    public Ingredient Read(JsonElement element, int number, MatterState whole)
    {
        var fields = new FileFields(element, $"ingredient {number}", Known, notes);
        var name = fields.Text("name") ?? throw new BookRefusal($"ingredient {number} has no name");
        var percent = fields.Number("percent") ?? throw new BookRefusal($"ingredient {number} ({name}) has no percent");
        if (percent is <= 0 or > 100)
            throw fields.Wrong("percent", "above 0 and up to 100");
        var state = fields.Text("state") is { } word ? MixFile.State(word) : whole;
        if (!Array.Exists(Data, fields.Has))
            return WithoutData(name, percent, state);
        return new Ingredient(Profile(name, fields), percent, state);
    }

    // Nothing said about a substance that the catalogue knows is no statement that it is harmless.
    private Ingredient WithoutData(string name, decimal percent, MatterState state)
    {
        if (catalogue.ResolveSubstance(name) is { } substance)
        {
            if (facts.ProfileOf(substance).Knowledge != HazardKnowledge.NotClassified)
                notes.Add($"{name} brings no data; the catalogue's were taken");
            return new Ingredient(facts.ProfileOf(substance), percent, substance.State);
        }

        notes.Add($"{name} brings no data; taken as not classified, as nothing else is stated");
        return new Ingredient(new HazardProfile { Name = name, Knowledge = HazardKnowledge.NotClassified }, percent, state);
    }

    private HazardProfile Profile(string name, FileFields fields)
    {
        var estimates = Estimates(fields);
        var categories = fields.Texts("categories").SelectMany(c => Categories(c, name, estimates)).ToList();
        var limits = fields.List("limits").SelectMany((e, i) => Limit(e, $"{name}, limit {i + 1}")).ToList();
        return new HazardProfile
        {
            Name = name,
            Knowledge = categories.Count + limits.Count + estimates.Count > 0 ? HazardKnowledge.Classified : HazardKnowledge.NotClassified,
            Categories = categories,
            Limits = limits,
            Estimates = estimates,
            AcuteFactor = Factor(fields, "m_acute"),
            ChronicFactor = Factor(fields, "m_chronic"),
            Ph = MixFile.Between(fields, "ph", -2m, 16m),
            UnknownRoutes = [.. fields.Texts("toxicity_unknown").SelectMany(r => Routes(r, name)).Distinct()],
        };
    }

    private List<AcuteToxicityEstimate> Estimates(FileFields fields)
    {
        if (fields.Inner("ate", [.. AteFields.Keys], notes) is not { } ate)
            return [];
        return [.. AteFields.Where(f => ate.Has(f.Key)).Select(f => new AcuteToxicityEstimate(
            f.Value, ate.Number(f.Key) is > 0 and { } value ? value : throw ate.Wrong(f.Key, "above 0"), Stated))];
    }

    // A category of acute toxicity without its route is the one of the estimates given, else of every route.
    private IEnumerable<AssignedCategory> Categories(string text, string name, List<AcuteToxicityEstimate> estimates)
    {
        var meant = Words(text);
        if (meant.Count < 2 || meant[0].Category.StartsWith("Aerosol", StringComparison.Ordinal))
            return meant;
        var stated = meant.Where(c => estimates.Exists(e => StatesRoute(c.Statement, e.Route))).ToList();
        if (stated.Count > 0)
            return stated;
        notes.Add($"{name}: '{text}' does not say which of {string.Join(", ", meant.Select(c => c.Statement))} is meant; all were taken");
        return meant;
    }

    private IEnumerable<ConcentrationLimit> Limit(JsonElement element, string where)
    {
        var fields = new FileFields(element, where, LimitFields, notes);
        var from = MixFile.Between(fields, "from_percent", 0m, 100m) ?? 0m;
        var below = MixFile.Between(fields, "below_percent", 0m, 100m);
        if (below <= from)
            throw fields.Wrong("below_percent", $"above from_percent {from}");
        var category = fields.Text("category") ?? throw new BookRefusal($"{where}: a category is needed");
        return Words(category).Select(c => new ConcentrationLimit(c.Category, c.Statement, from, Above: false, below, ToIncluded: false, Stated));
    }

    private IReadOnlyList<AssignedCategory> Words(string text)
    {
        try
        {
            return _words.Read(text, Stated);
        }
        catch (FormatException e)
        {
            throw new BookRefusal(e.Message, e);
        }
    }

    private static decimal? Factor(FileFields fields, string field) => fields.Number(field) is { } factor
        ? factor >= 1m ? factor : throw fields.Wrong(field, "1 or more")
        : null;

    private static bool StatesRoute(string statement, ExposureRoute route) => route switch
    {
        ExposureRoute.Oral => statement.StartsWith("H30", StringComparison.Ordinal),
        ExposureRoute.Dermal => statement.StartsWith("H31", StringComparison.Ordinal),
        _ => statement.StartsWith("H33", StringComparison.Ordinal),
    };

    private static IEnumerable<ExposureRoute> Routes(string word, string name) => word switch
    {
        "oral" => [ExposureRoute.Oral],
        "dermal" => [ExposureRoute.Dermal],
        "inhalation" => [ExposureRoute.Gas, ExposureRoute.Vapour, ExposureRoute.Dust],
        "inhalation_gas" or "gas" => [ExposureRoute.Gas],
        "inhalation_vapour" or "vapour" => [ExposureRoute.Vapour],
        "inhalation_dust" or "dust" => [ExposureRoute.Dust],
        _ => throw new BookRefusal($"{name}: toxicity_unknown '{word}' is not a route; it must be oral, dermal or inhalation"),
    };
}
