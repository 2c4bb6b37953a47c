namespace Stockroom.Views;

/// <summary>Everything known of one thing, as headed groups of label and value: printed by a verb, shown by a screen.</summary>
public sealed record Card(string Title, IReadOnlyList<CardSection> Sections);

/// <summary>One headed group of a card.</summary>
public sealed record CardSection(string Heading, IReadOnlyList<CardLine> Lines);

/// <summary>One line of a card. A line without a label goes on from the one before.</summary>
/// <param name="Label">Such as "net"; empty for running text.</param>
/// <param name="Value">Such as "62.1 g".</param>
/// <param name="Weight">How much attention it asks for.</param>
public sealed record CardLine(string Label, string Value, Attention Weight = Attention.None);

/// <summary>How much attention a line asks for. Shown by a word or a sign, never by colour alone.</summary>
public enum Attention
{
    None = 0,
    Notice,
    Warning,
    Danger,
}
