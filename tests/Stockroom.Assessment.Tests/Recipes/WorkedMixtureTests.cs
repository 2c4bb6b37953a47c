using System.Globalization;
using Stockroom.Assessment.Intake;
using Stockroom.Assessment.Recipes;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Tests.Recipes;

/// <summary>Published worked examples, and mixtures computed by hand from a rule, as worked-mixtures.tsv has them with their sources.</summary>
public sealed class WorkedMixtureTests
{
    private static readonly Table Mixtures = Read();

    public static TheoryData<string> Cases() => [.. Mixtures.Rows.Select(r => r.Text("case"))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Mixture_AsItsSourceHasIt_GivesTheAnswerOfTheSource(string name)
    {
        var row = Mixtures.Rows.Single(r => r.Text("case") == name);
        var found = Classify(row.Text("mixture"), RuleSets.Parse(row.Text("rules")));
        var label = LabelElements.Of(found, HazardFacts.Default);
        CheckCategories(row, found);
        if (row.TextOrNull("ate") is { } ate)
            CheckEstimate(ate, found);
        if (row.TextOrNull("pictograms") is { } pictograms)
            Assert.Equal(pictograms, string.Join(' ', label.Pictograms));
        if (row.TextOrNull("signal_word") is { } signal)
            Assert.Equal(signal, label.SignalWord);
        if (row.TextOrNull("statements") is { } statements)
            Assert.Equal(statements, string.Join(' ', label.HazardStatements.Select(s => s.Code).Order(StringComparer.Ordinal)));
        if (row.TextOrNull("note") is { } note)
            Assert.Contains(found.Notes, n => n.Contains(note, StringComparison.Ordinal));
    }

    [Fact]
    public void Table_HasEveryCaseOnceWithItsSource()
    {
        Assert.True(Mixtures.Rows.Count > 50);
        Assert.Equal(Mixtures.Rows.Count, Mixtures.Rows.Select(r => r.Text("case")).Distinct().Count());
        Assert.All(Mixtures.Rows, r => Assert.NotEmpty(r.Provenance.Source));
    }

    private static void CheckCategories(TableRow row, Classification found)
    {
        var judged = row.Text("judged");
        if (judged == "none")
            return;
        var beginnings = judged.Split('|');
        var ours = found.Categories.Select(c => c.Category).Where(c => judged == "-" || Array.Exists(beginnings, b => c.StartsWith(b, StringComparison.Ordinal))).Distinct();
        Assert.Equal(row.TextOrNull("categories") ?? "", string.Join("; ", ours));
    }

    private static void CheckEstimate(string expected, Classification found)
    {
        var words = expected.Split(' ');
        var (value, within) = (double.Parse(words[1], CultureInfo.InvariantCulture), double.Parse(words[2], CultureInfo.InvariantCulture));
        Assert.Equal(value, (double)found.AcuteEstimates[ExposureRoutes.Words[words[0]]], within);
    }

    private static Classification Classify(string mixture, RuleSet rules) => mixture[0] == '{'
        ? Classifier.Classify(MixFile.Read(mixture, HazardFacts.Default, SubstanceCatalogue.Default).Mixture, HazardFacts.Default, rules)
        : Classifier.Classify(MixtureWords.Read(mixture, mixture, SubstanceCatalogue.Default), HazardFacts.Default, rules);

    private static Table Read()
    {
        using var stream = typeof(WorkedMixtureTests).Assembly.GetManifestResourceStream("worked-mixtures.tsv")!;
        using var reader = new StreamReader(stream);
        return TableReader.ReadFacts("worked-mixtures.tsv", reader.ReadToEnd(), "case", "rules", "mixture", "judged", "categories", "ate", "pictograms", "signal_word", "statements", "note");
    }
}
