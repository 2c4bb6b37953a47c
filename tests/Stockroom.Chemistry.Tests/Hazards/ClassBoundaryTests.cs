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
