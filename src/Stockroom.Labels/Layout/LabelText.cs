namespace Stockroom.Labels.Layout;

/// <summary>A hazard or precautionary statement: its code and its words in full.</summary>
public readonly record struct Statement(string Code, string Text);

/// <summary>One fact about the container, such as amount, cover, opened, place, keeper.</summary>
public readonly record struct Detail(string Label, string Value);

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

    /// <summary>Most important first; the last ones are the first to go where room is short.</summary>
    public IReadOnlyList<Detail> Details { get; init; } = [];

    /// <summary>Small print, such as which law and edition the classification follows.</summary>
    public IReadOnlyList<string> Footnotes { get; init; } = [];
}
