using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Every class below, at and above each of its thresholds, as class-boundaries.tsv has them with their clauses.</summary>
public sealed class ClassBoundaryTests
{
    private static readonly Table Boundaries = TestTable.Read(
        "class-boundaries.tsv", "hazard_class", "rules", "state", "varied", "ingredient", "below", "at", "above", "result_below", "result_at", "result_above");

    private static readonly Dictionary<string, MatterState> States = new(StringComparer.Ordinal)
    {
        ["liquid"] = MatterState.Liquid,
        ["solid"] = MatterState.Solid,
        ["gas"] = MatterState.Gas,
    };

    public static TheoryData<int> Lines() => [.. Boundaries.Rows.Select(r => r.Line)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Class_BelowAtAndAboveItsThreshold_ChangesThere(int line)
    {
        var row = Boundaries.Rows.Single(r => r.Line == line);
        foreach (var side in (string[])["below", "at", "above"])
            Assert.Equal($"{side}: {row.TextOrNull("result_" + side)}", $"{side}: {Judged(row, row.Decimal(side))}");
    }

    [Fact]
    public void Boundaries_HoldEveryClass() =>
        Assert.Equal(HazardClasses.All.Select(c => c.Name).Order(), Boundaries.Rows.Select(r => r.Text("hazard_class")).Distinct().Order());

    // Every generic limit of the program's table is tried at its own figure.
    [Fact]
    public void Boundaries_HoldEveryGenericLimitOfClp()
    {
        var tried = Boundaries.Rows.Where(r => r.Text("varied") == "percent").Select(r => (Category: r.Text("ingredient")[..r.Text("ingredient").LastIndexOf(' ')], At: r.Decimal("at"))).ToHashSet();
        var limits = Given.Facts.Limits.Rows.Where(l => l.Way is "alone" or "alone gas" && l.Rules.Contains(RuleSet.Eu));
        Assert.All(limits, l => Assert.Contains((l.Ingredient, l.FromPercent), tried));
    }

    // CLP Annex I Tables 3.2.4 and 3.3.4: an ingredient of extreme pH counts from 1 % on.
    [Theory]
    [InlineData(0.99, 1.0, "")]
    [InlineData(1.0, 1.0, "Skin Corr. 1")]
    [InlineData(1.0, 2.0, "Skin Corr. 1")]
    [InlineData(1.0, 2.01, "")]
    [InlineData(1.0, 11.5, "Skin Corr. 1")]
    [InlineData(1.0, 11.49, "")]
    public void IngredientOfExtremePh_CountsFromOnePercent(double percent, double ph, string categories)
    {
        var profile = new HazardProfile { Name = "A", Knowledge = HazardKnowledge.NotClassified, Ph = (decimal)ph };
        Assert.Equal(categories, string.Join(", ", Given.Names(Given.Classified(Given.Mixture(new Ingredient(profile, (decimal)percent, MatterState.Liquid))))));
    }

    // Annex VI states estimates for "over 25 %" and "up to 50 %": the one is not in it, the other is.
    [Theory]
    [InlineData(25, false)]
    [InlineData(25.01, true)]
    [InlineData(50, true)]
    [InlineData(50.01, false)]
    public void Estimate_OfARange_HoldsOverItsFootAndUpToItsHead(double percent, bool holds)
    {
        var estimate = new AcuteToxicityEstimate(ExposureRoutes.Words["oral"], 500, new("stated by the test", "-", "2026"), 25, 50);
        Assert.Equal(holds, estimate.HoldsAt((decimal)percent));
        Assert.Equal(percent > 25, (estimate with { UpToPercent = null }).HoldsAt((decimal)percent));
        Assert.Equal(percent <= 50, (estimate with { OverPercent = null }).HoldsAt((decimal)percent));
    }

    private static string Judged(TableRow row, decimal value)
    {
        var hazard = HazardClasses.All.Single(c => c.Name == row.Text("hazard_class"));
        var found = Given.Classified(MixtureOf(row, value), RuleSets.Parse(row.Text("rules")));
        return string.Join(", ", found.Categories.Where(c => hazard.Owns(c.Category)).Select(c => c.Category));
    }

    // An estimate of the whole is that of one half of it, halved.
    private static Mixture MixtureOf(TableRow row, decimal value)
    {
        var state = row.OneOf("state", States);
        var ingredient = row.TextOrNull("ingredient");
        var plain = Given.Mixture(state, Given.Ingredient("A", 50));
        return row.Text("varied") switch
        {
            "percent" => Given.Mixture(state, Given.Ingredient("A", value, ingredient!)),
            "flash_point_c" => plain with { FlashPointCelsius = value, BoilingPointCelsius = 100m },
            "boiling_point_c" => plain with { FlashPointCelsius = -20m, BoilingPointCelsius = value },
            "viscosity" => Given.Mixture(state, Given.Ingredient("A", 50, ingredient!)) with { KinematicViscosity = value },
            "ph" => plain with { Ph = value },
            var route => Given.Mixture(state, Given.WithAte("A", 50, ExposureRoutes.Words[route], value / 2m)),
        };
    }
}
