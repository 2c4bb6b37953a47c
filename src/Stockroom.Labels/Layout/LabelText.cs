using Stockroom.Labels.Designs;
using Stockroom.Labels.Rules;

namespace Stockroom.Labels.Layout;

/// <summary>A hazard or precautionary statement: its code and its words in full.</summary>
public readonly record struct Statement(string Code, string Text);

/// <summary>One fact about the container, such as amount, cover, opened, place, keeper.</summary>
public readonly record struct Detail(string Label, string Value, LabelPart Part = LabelPart.Other);

/// <summary>What a label may be reduced to where not all of it fits.</summary>
/// <param name="Text">The reduced label.</param>
/// <param name="Says">What is left off, by which clause and on what condition; for the keeper.</param>
public sealed record Relief(LabelText Text, string Says);

/// <summary>What one label has to say. Everything comes from the caller; the label invents nothing and repeats it as given.</summary>
public sealed record LabelText
{
    /// <summary>Container id; null prints SAMPLE.</summary>
    public string? Id { get; init; }

    /// <summary>Name of the content, or "Contents unknown".</summary>
    public required string Title { get; init; }

    /// <summary>Formula or composition under the name; digits of a formula are set as subscripts.</summary>
    public string? TitleNote { get; init; }

    /// <summary>"Danger", "Warning" or null.</summary>
    public string? SignalWord { get; init; }

    /// <summary>GHS01 to GHS09 in the order to be printed.</summary>
    public IReadOnlyList<string> Pictograms { get; init; } = [];

    public IReadOnlyList<Statement> HazardStatements { get; init; } = [];

    public IReadOnlyList<Statement> PrecautionaryStatements { get; init; } = [];

    /// <summary>Short warnings beyond the GHS, such as RADIOACTIVE or HANDS OFF.</summary>
    public IReadOnlyList<string> Extra { get; init; } = [];

    /// <summary>In the order in which those of one kind stand; the design says which kind goes first where room is short.</summary>
    public IReadOnlyList<Detail> Details { get; init; } = [];

    /// <summary>Small print, such as which law and edition the classification follows.</summary>
    public IReadOnlyList<string> Footnotes { get; init; } = [];

    /// <summary>Sentences that the label must print about itself, such as where the full label is.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>What the edition asks of sizes and looks.</summary>
    public LabelDemands Demands { get; init; } = LabelDemands.Usual;

    /// <summary>What it may be reduced to where it does not fit, the least reduced first.</summary>
    public IReadOnlyList<Relief> Reliefs { get; init; } = [];
}
