using CsCheck;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>What must hold for every mixture, whatever is in it.</summary>
public sealed class MixturePropertyTests
{
    private static readonly Substance[] Hazardous =
        [.. Given.Catalogue.Substances.Where(s => s.State is MatterState.Liquid or MatterState.Solid && Given.Facts.ProfileOf(s).Knowledge == HazardKnowledge.Classified)];

    // Solids without any hazard that react with nothing here.
    private static readonly Substance[] Inert = [.. ((string[])["sodium chloride", "potassium chloride", "sodium sulfate", "sucrose"]).Select(n => Given.Catalogue[n])];

    private static readonly Gen<Substance> Substance = Gen.Int[0, Hazardous.Length - 1].Select(i => Hazardous[i]);

    private static readonly Gen<(Substance Substance, decimal Percent)> Part =
        Gen.Select(Substance, Gen.Int[1, 2400], (s, p) => (s, p / 100m));

    [Fact]
    public void Classification_IngredientOrder_DoesNotMatter() =>
        Part.Array[2, 4].Sample(parts =>
        {
            var forward = Classify(parts);
            var backward = Classify([.. parts.Reverse()]);
            return forward.Categories.SequenceEqual(backward.Categories) && forward.Supplemental.SequenceEqual(backward.Supplemental);
        }, iter: 500);

    [Fact]
    public void Classification_OneSubstanceNamedTwice_IsMerged() =>
        Part.Array[1, 3].Sample(parts =>
        {
            var once = Classify(parts);
            var twice = Classify([.. parts.Select(p => (p.Substance, p.Percent / 2)), .. parts.Select(p => (p.Substance, p.Percent / 2))]);
            return once.Categories.SequenceEqual(twice.Categories);
        }, iter: 500);

    [Fact]
    public void Classification_AddingWater_AddsNoHazard() =>
        Gen.Select(Part.Array[1, 3], Gen.Int[1, 90]).Sample((parts, dilution) =>
        {
            var strong = Classify(parts);
            var weak = Classify([.. parts.Select(p => (p.Substance, p.Percent * (100 - dilution) / 100m))]);
            var worse = weak.Categories.Where(c => !strong.Categories.Any(s => Covers(s, c))).ToList();
            Assert.True(worse.Count == 0, $"{Text(parts)} diluted by {dilution} %: {string.Join(", ", worse)}\nbefore: {string.Join(", ", strong.Categories)}");
        }, iter: 1000);

    [Fact]
    public void Classification_AddingAnInertIngredient_AddsNoHazard() =>
        Gen.Select(Part.Array[1, 3], Gen.Int[0, Inert.Length - 1], Gen.Int[1, 90]).Sample((parts, inert, added) =>
        {
            var before = Classify(parts);
            Chemistry.Catalogue.Part[] after = [.. parts.Select(p => new Chemistry.Catalogue.Part(p.Substance, p.Percent * (100 - added) / 100m)), new Chemistry.Catalogue.Part(Inert[inert], added), new Chemistry.Catalogue.Part(Given.Catalogue["water"], (100m - parts.Sum(p => p.Percent)) * (100 - added) / 100m)];
            var found = Classifier.Classify(new Content { Name = "any", State = MatterState.Liquid, Parts = after }, Given.Facts, RuleSet.Eu);
            var worse = found.Categories.Where(c => !before.Categories.Any(b => Covers(b, c))).ToList();
            Assert.True(worse.Count == 0, $"{Text(parts)} with {added} % of {Inert[inert]}: {string.Join(", ", worse)}");
        }, iter: 1000);

    [Fact]
    public void Classification_ConcentratingOneIngredient_NeverMakesHealthMilder() =>
        Gen.Select(Substance, Gen.Int[1, 9999], Gen.Int[1, 10000]).Sample((substance, a, b) =>
        {
            var weak = Health(Given.Solution(substance.Name, Math.Min(a, b) / 100m));
            var strong = Health(Given.Solution(substance.Name, Math.Max(a, b) / 100m));
            var lost = weak.Where(c => !strong.Any(s => Covers(s, c))).ToList();
            Assert.True(lost.Count == 0, $"{substance} {Math.Min(a, b) / 100m} -> {Math.Max(a, b) / 100m}: lost {string.Join(", ", lost)}");
        }, iter: 3000);

    private static Classification Classify((Substance Substance, decimal Percent)[] parts) => Classifier.Classify(
        new Content
        {
            Name = "any",
            State = MatterState.Liquid,
            Parts = [.. parts.Select(p => new Part(p.Substance, p.Percent)), new Part(Given.Catalogue["water"], 100m - parts.Sum(p => p.Percent))],
        },
        Given.Facts,
        RuleSet.Eu);

    private static List<ClassifiedCategory> Health(Classification classification) =>
        [.. classification.Categories.Where(c => c.Statement.StartsWith("H3", StringComparison.Ordinal))];

    // A category covers one of the same class that is no more severe; skin corrosion covers harm to skin, eyes and airways.
    private static bool Covers(ClassifiedCategory a, ClassifiedCategory b)
    {
        if (a.Category.StartsWith("Skin Corr.", StringComparison.Ordinal) && (b.Category.StartsWith("Skin", StringComparison.Ordinal) || b.Category.StartsWith("Eye", StringComparison.Ordinal) || b.Statement == "H335") && !b.Category.StartsWith("Skin Sens", StringComparison.Ordinal))
            return !b.Category.StartsWith("Skin Corr.", StringComparison.Ordinal) || HazardClasses.Of(a.Category)!.Severity(a.Category) <= HazardClasses.Of(a.Category)!.Severity(b.Category);
        if (a.Statement.Length > 3 && b.Statement.Length > 3 && a.Category.StartsWith("Acute", StringComparison.Ordinal) && a.Statement[..3] != b.Statement[..3])
            return false;
        var owner = HazardClasses.Of(a.Category)!;
        return owner.Owns(b.Category) && (owner.Severity(a.Category) <= owner.Severity(b.Category) || b.Category.Contains("Sens.", StringComparison.Ordinal));
    }

    private static string Text((Substance Substance, decimal Percent)[] parts) => string.Join("; ", parts.Select(p => $"{p.Substance}={p.Percent}"));
}
