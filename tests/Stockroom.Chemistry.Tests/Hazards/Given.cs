using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Contents and mixtures for the tests, from few words.</summary>
internal static class Given
{
    private static readonly Provenance Stated = new("stated by the test", "-", "2026");

    public static HazardFacts Facts => HazardFacts.Default;

    public static SubstanceCatalogue Catalogue => SubstanceCatalogue.Default;

    /// <summary>"hydrochloric acid=10; water=90"; what is missing to 100 is water.</summary>
    public static Content Content(string parts, MatterState state = MatterState.Liquid)
    {
        var list = parts.Split(';', StringSplitOptions.TrimEntries).Select(p =>
        {
            var cut = p.Split('=');
            return new Part(Catalogue[cut[0]], decimal.Parse(cut[1], System.Globalization.CultureInfo.InvariantCulture));
        }).ToList();
        var rest = 100m - list.Sum(p => p.Percent);
        if (rest > 0)
            list.Add(new Part(Catalogue["water"], rest));
        return new Content { Name = parts, State = state, Parts = list };
    }

    public static Classification Solution(string substance, decimal percent, RuleSet rules = RuleSet.Eu) =>
        Classifier.Classify(
            new Content
            {
                Name = substance,
                State = MatterState.Liquid,
                Parts = percent == 100m ? [new Part(Catalogue[substance], 100m)] : [new Part(Catalogue[substance], percent), new Part(Catalogue["water"], 100m - percent)],
            },
            Facts,
            rules);

    public static Classification Pure(string substance, RuleSet rules = RuleSet.Eu) =>
        Classifier.Classify(Chemistry.Catalogue.Content.Of(Catalogue[substance]), Facts, rules);

    /// <summary>An ingredient with categories written as "Skin Corr. 1B H314".</summary>
    public static Ingredient Ingredient(string name, decimal percent, params string[] categories) => new(
        new HazardProfile
        {
            Name = name,
            Knowledge = categories.Length == 0 ? HazardKnowledge.NotClassified : HazardKnowledge.Classified,
            Categories = [.. categories.Select(Category)],
        },
        percent,
        MatterState.Liquid);

    public static Ingredient WithAte(string name, decimal percent, ExposureRoute route, decimal ate) => new(
        new HazardProfile
        {
            Name = name,
            Knowledge = HazardKnowledge.Classified,
            Estimates = [new AcuteToxicityEstimate(route, ate, Stated)],
        },
        percent,
        MatterState.Liquid);

    public static Ingredient Unknown(string name, decimal percent) =>
        new(new HazardProfile { Name = name, Knowledge = HazardKnowledge.Unknown }, percent, MatterState.Liquid);

    /// <summary>A mixture; what is missing to 100 is an ingredient without hazards.</summary>
    public static Mixture Mixture(params Ingredient[] ingredients) => Mixture(MatterState.Liquid, ingredients);

    public static Mixture Mixture(MatterState state, params Ingredient[] ingredients)
    {
        var rest = 100m - ingredients.Sum(i => i.Percent);
        return new Mixture { State = state, Ingredients = rest > 0 ? [.. ingredients, Ingredient("inert", rest)] : ingredients };
    }

    public static Classification Classified(Mixture mixture, RuleSet rules = RuleSet.Eu) => Classifier.Classify(mixture, Facts, rules);

    public static string[] Names(Classification classification) => [.. classification.Categories.Select(c => c.Category)];

    public static string[] Codes(Classification classification) => [.. classification.Categories.Select(c => c.Statement)];

    public static ConcentrationLimit Limit(string category, string statement, decimal from, decimal? to = null) =>
        new(category, statement, from, false, to, false, Stated);

    public static AssignedCategory Category(string text)
    {
        var cut = text.LastIndexOf(' ');
        return new AssignedCategory(text[..cut], text[(cut + 1)..], Stated, Status: EntryStatus.Given);
    }
}
