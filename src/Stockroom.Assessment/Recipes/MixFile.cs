using System.Text.Json;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Recipes;

/// <summary>A mixture read from JSON, whose ingredients bring their own data, and the rules it asks for.</summary>
public sealed record MixFile(Mixture Mixture, RuleSet? Rules)
{
    private static readonly string[] Known =
        ["rules", "state", "ph", "flash_point_c", "boiling_point_c", "kinematic_viscosity_mm2_s", "ingredients", "name"];

    private static readonly Dictionary<string, MatterState> States = new(StringComparer.OrdinalIgnoreCase)
    {
        ["liquid"] = MatterState.Liquid,
        ["solid"] = MatterState.Solid,
        ["gas"] = MatterState.Gas,
    };

    /// <summary>Reads the whole file.</summary>
    /// <exception cref="BookRefusal">It is not JSON, or a field is not what it must be; one line says which.</exception>
    public static MixFile Read(string json, HazardFacts facts, SubstanceCatalogue catalogue)
    {
        try
        {
            using var document = JsonDocument.Parse(json, new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            return Read(document.RootElement, facts, catalogue);
        }
        catch (JsonException e)
        {
            throw new BookRefusal($"the file is not JSON: line {(e.LineNumber ?? 0) + 1}, place {(e.BytePositionInLine ?? 0) + 1}", e);
        }
        catch (InvalidOperationException e)
        {
            throw new BookRefusal("a text in the file holds half a character (such as \\uD800 alone); write it whole", e);
        }
    }

    /// <summary>Reads liquid, solid or gas.</summary>
    /// <exception cref="BookRefusal">It is none of them.</exception>
    public static MatterState State(string text) => States.TryGetValue(text, out var state)
        ? state
        : throw new BookRefusal($"'{text}' is not a state; it must be liquid, solid or gas");

    private static MixFile Read(JsonElement root, HazardFacts facts, SubstanceCatalogue catalogue)
    {
        var notes = new List<string>();
        var fields = new FileFields(root, "the file", Known, notes);
        var state = fields.Text("state") is { } word ? State(word) : MatterState.Liquid;
        var reader = new FileIngredient(facts, catalogue, notes);
        var ingredients = fields.List("ingredients").Select((e, i) => reader.Read(e, i + 1, state)).ToList();
        if (ingredients.Count == 0)
            throw new BookRefusal("the file names no ingredients; write \"ingredients\": [{\"name\": \"A\", \"percent\": 10, \"categories\": [\"Skin Irrit. 2\"]}]");
        var total = ingredients.Sum(i => i.Percent);
        if (total > 100m)
            throw new BookRefusal($"the ingredients add up to {total:0.####} %, more than 100 %");
        var measured = new Measured
        {
            Ph = Between(fields, "ph", -2m, 16m),
            FlashPointCelsius = fields.Number("flash_point_c"),
            BoilingPointCelsius = fields.Number("boiling_point_c"),
            KinematicViscosity = fields.Number("kinematic_viscosity_mm2_s"),
        };
        var mixture = new Mixture { Ingredients = Merged(ingredients, notes), State = state, Notes = notes };
        return new MixFile(mixture.With(measured), fields.Text("rules") is { } rules ? Rule(rules) : null);
    }

    private static RuleSet Rule(string text)
    {
        try
        {
            return RuleSets.Parse(text);
        }
        catch (FormatException e)
        {
            throw new BookRefusal(e.Message, e);
        }
    }

    internal static decimal? Between(FileFields fields, string field, decimal low, decimal high) => fields.Number(field) is not { } value ? null
        : value >= low && value <= high ? value
        : throw fields.Wrong(field, $"from {low} to {high}");

    // One ingredient named twice with the same data is one ingredient.
    private static List<Ingredient> Merged(List<Ingredient> ingredients, List<string> notes)
    {
        var merged = new List<Ingredient>();
        foreach (var group in ingredients.GroupBy(i => NameKey.Of(i.Name)))
        {
            var parts = group.ToList();
            if (parts.Count == 1)
            {
                merged.Add(parts[0]);
                continue;
            }

            if (parts.Exists(p => !FileIngredient.SameData(p.Profile, parts[0].Profile)))
                throw new BookRefusal($"'{parts[0].Name}' stands twice with different data; give it two names, or one set of data");
            notes.Add($"{parts[0].Name} stands {parts.Count} times and was added up");
            merged.Add(parts[0] with { Percent = parts.Sum(p => p.Percent) });
        }

        return merged;
    }
}
