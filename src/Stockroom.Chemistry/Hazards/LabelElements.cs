namespace Stockroom.Chemistry.Hazards;

/// <summary>A statement as a label prints it.</summary>
/// <param name="Code">H314, EUH014, P280, or a combination (H301+H311); empty for words of our own.</param>
/// <param name="Text">In the wording of the edition.</param>
/// <param name="Because">Why it stands.</param>
public sealed record LabelStatement(string Code, string Text, string Because);

/// <summary>Signal word, pictograms and statements of a classification, after every rule of precedence.</summary>
public sealed record LabelElements
{
    /// <summary>Not more precautionary statements than this, unless asked otherwise (CLP Art. 28(3)).</summary>
    public const int UsualPrecautions = 6;

    /// <summary>"Danger", "Warning", or null where none applies.</summary>
    public required string? SignalWord { get; init; }

    /// <summary>GHS01 to GHS09 in that order.</summary>
    public required IReadOnlyList<string> Pictograms { get; init; }

    /// <summary>Pictograms that may stand and need not.</summary>
    public required IReadOnlyList<string> OptionalPictograms { get; init; }

    public required IReadOnlyList<LabelStatement> HazardStatements { get; init; }

    /// <summary>EUH statements and the share of unknown acute toxicity.</summary>
    public required IReadOnlyList<LabelStatement> Supplemental { get; init; }

    public required IReadOnlyList<LabelStatement> Precautionary { get; init; }

    /// <summary>Words beside the GHS elements: radioactive, contents unknown, hazards not known.</summary>
    public required IReadOnlyList<string> WordsBeside { get; init; }

    /// <summary>True where the hazard statements are only suspected (an orphan).</summary>
    public bool Suspected { get; init; }

    /// <summary>The elements of a classification in the wording of its rules.</summary>
    public static LabelElements Of(Classification classification, HazardFacts facts, int precautions = UsualPrecautions)
    {
        var categories = classification.IsUnknown ? classification.Suspected : classification.Categories;
        var rules = classification.Rules;
        var (shown, optional) = PictogramChoice.Of(categories, facts, rules);
        var signals = categories.Select(c => facts.Elements.Of(c.Category, c.Statement)?.SignalWord).ToList();
        return new LabelElements
        {
            SignalWord = classification.IsUnknown || signals.Contains("Danger") ? "Danger" : signals.Find(s => s is not null),
            Pictograms = shown,
            OptionalPictograms = optional,
            HazardStatements = HazardStatementChoice.Of(categories, facts, rules),
            Supplemental = SupplementalOf(classification, facts),
            Precautionary = PrecautionaryChoice.Of(categories, facts, rules, precautions),
            WordsBeside = WordsOf(classification, facts),
            Suspected = classification.IsUnknown,
        };
    }

    private static List<LabelStatement> SupplementalOf(Classification classification, HazardFacts facts)
    {
        var list = new List<LabelStatement>();
        foreach (var code in HazardStatementChoice.WithoutRepetition(classification.Supplemental, facts, classification.Rules))
        {
            var text = facts.Texts.Naming(code, classification.Rules, string.Join(", ", classification.Sensitisers));
            list.Add(new LabelStatement(code, text, classification.Reasons.First(r => r.Category == code).Because));
        }

        var unknown = classification.UnknownShares.Count == 0 ? 0m : classification.UnknownShares.Values.Max();
        if (unknown is >= 1m and < 100m)
        {
            list.Add(new LabelStatement(
                "",
                facts.Orphans.LabelText("unknown_acute").Replace("{0}", Explain.Number(unknown), StringComparison.Ordinal),
                "ingredients without any acute toxicity data"));
        }

        return list;
    }

    private static List<string> WordsOf(Classification classification, HazardFacts facts)
    {
        var words = new List<string>(classification.WordsBeside);
        if (classification.IsUnknown)
            words.AddRange([facts.Orphans.LabelText("contents_unknown"), facts.Orphans.LabelText("worst_light")]);
        else if (classification.Unclassified.Count > 0)
            words.Add(facts.Orphans.LabelText(classification.UnknownShares.Values.Max() >= 100m ? "unclassified" : "part_unclassified"));
        return words;
    }
}
