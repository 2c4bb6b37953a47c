using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards.Reactions;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Classifies a content: a pure substance by its entry, a mixture by the rules of each class, an orphan as unknown.</summary>
public static class Classifier
{
    /// <summary>The hazards of a content as the stock book names it.</summary>
    public static Classification Classify(Content content, HazardFacts facts, RuleSet rules) => Classify(content, facts, rules, Measured.Nothing);

    /// <summary>The same with what was measured on the whole.</summary>
    public static Classification Classify(Content content, HazardFacts facts, RuleSet rules, Measured measured)
    {
        if (content.IsUnknown)
            return Orphan(content, facts, rules);
        content = Settling.Settle(content, facts);
        var classification = Classify(Mixture.Of(content, facts).With(measured), facts, rules);
        var notes = content.Notes.Concat(classification.Notes).ToList();
        if (facts.Radioactive.In(content) is not { } radioactive)
            return classification with { Notes = notes };
        notes.Add($"radioactive by {string.Join(", ", radioactive.Elements)} ({radioactive.Source}); these rules do not judge radiation");
        return classification with { Notes = notes, WordsBeside = [radioactive.Word] };
    }

    /// <summary>The hazards of a mixture whose ingredients bring their own data.</summary>
    /// <exception cref="ArgumentException">A share is not above zero, or they make more than 100 %.</exception>
    public static Classification Classify(Mixture mixture, HazardFacts facts, RuleSet rules)
    {
        var whole = mixture.Ingredients.Sum(i => i.Percent);
        if (mixture.Ingredients.Any(i => i.Percent <= 0) || whole > 100.0001m)
            throw new ArgumentException($"the ingredients add up to {Explain.Percent(whole)}; each must be above 0 and all together at most 100 %", nameof(mixture));
        var findings = new Findings(facts, rules);
        if (whole < 99.9999m)
            findings.Note($"the ingredients add up to {Explain.Percent(whole)}; the rest is taken as without hazards, which nobody has said");
        foreach (var note in mixture.Notes)
            findings.Note(note);
        var concerned = HazardClasses.ConcernedBy(mixture);
        foreach (var hazard in HazardClasses.All.Where(h => h.JudgedAlways || concerned.Contains(h)))
        {
            if (mixture.IsPure)
                hazard.JudgePure(mixture.Ingredients[0], mixture, findings);
            else
                hazard.Judge(mixture, findings);
        }

        ExtremePh.NoteMildness(mixture, findings);
        SupplementalStatements.Judge(mixture, findings);
        var unclassified = mixture.Ingredients.Where(i => i.Profile.Knowledge == HazardKnowledge.Unknown).Select(i => i.Name).ToList();
        AddNotes(mixture, unclassified, findings);
        return new Classification
        {
            Rules = rules,
            Categories = [.. findings.Categories.OrderBy(c => HazardClasses.OrderOf(c.Category)).ThenBy(c => c.Statement, StringComparer.Ordinal)],
            Supplemental = [.. findings.Supplemental],
            Sensitisers = [.. findings.Sensitisers],
            Reasons = findings.Reasons,
            Notes = findings.Notes,
            AcuteEstimates = findings.Estimates,
            UnknownShares = findings.Unknown,
            Unclassified = unclassified,
        };
    }

    private static void AddNotes(Mixture mixture, List<string> unclassified, Findings findings)
    {
        foreach (var name in unclassified)
            findings.Note($"{name} is unclassified: no source is held for its hazards, which is not the same as harmless");
        foreach (var ingredient in mixture.Ingredients)
            NoteOn(ingredient, mixture.IsPure, findings);
        foreach (var sentence in findings.Facts.Reactions.Among([.. mixture.Ingredients.Select(i => i.Name)]))
            findings.Note(sentence);
        foreach (var category in mixture.Ingredients.SelectMany(i => i.Categories).Where(c => c.Status is EntryStatus.Harmonised or EntryStatus.Group).Select(c => c.Provenance.AsOf).Distinct())
            findings.Note($"harmonised entries as of {category}");
        if (mixture.Ph is null && mixture.WaterPercent > 0 && mixture.Ingredients.Any(i => i.Categories.Any(c => Classes.SkinCorrosion.IsCorrosive(c.Category))))
            findings.Note("pH not known; the published limits were used");
        if (findings.Rules != RuleSet.Eu && mixture.Ingredients.Any(i => i.Profile.Limits.Any(l => l.Provenance.Source.Contains("Annex VI", StringComparison.Ordinal))))
            findings.Note("the specific limits used are those of CLP Annex VI");
        if (findings.Rules != RuleSet.Eu)
            findings.Note("not judged: categories that CLP does not have (flammable liquids 4, acute toxicity 5 and the like), where the entries are those of CLP");
        if (findings.Rules == RuleSet.Us)
            findings.Note("not judged: hazards to the environment, which the US rules leave out");
    }

    private static void NoteOn(Ingredient ingredient, bool isPure, Findings findings)
    {
        if (ingredient.Profile.OwnNote is { } own)
            findings.Note(own);
        var index = ingredient.Profile.Index;
        if ((index.HasBounds ? ProfileIndex.SelfNoteOf(ingredient.Name, ingredient.Categories) : index.SelfNote) is { } self)
            findings.Note(self);
        foreach (var open in ingredient.Categories.Where(c => c.LeavesOpen is not null && findings.Any(f => f.Category[..^1] == c.Category[..^1])))
            findings.Note($"{ingredient.Name}, {open.Category}: {open.LeavesOpen}");
        if (isPure && ingredient.Profile.NotClassifiedBy is { } source)
            findings.Note($"{ingredient.Name}: no classification applies ({source})");
    }

    private static Classification Orphan(Content content, HazardFacts facts, RuleSet rules) => new()
    {
        Rules = rules,
        Categories = [],
        Supplemental = [],
        Reasons = [],
        Notes = ["contents unknown: nothing can be classified; judged in the worst light until identified"],
        UnknownShares = Enum.GetValues<ExposureRoute>().ToDictionary(r => r, _ => 100m),
        IsUnknown = true,
        Suspected = [.. facts.Orphans.SuspectedFrom(content.Name).Where(c => facts.Elements.Has(c.Category, c.Statement, rules))],
    };
}
