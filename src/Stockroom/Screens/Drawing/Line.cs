using Stockroom.Themes;

namespace Stockroom.Screens.Drawing;

/// <summary>A run of text in one tone.</summary>
internal readonly record struct Piece(string Text, Tone Tone);

/// <summary>One row of a pane: pieces from the left; the rest is blank in the tone of the ground.</summary>
internal sealed record Line(IReadOnlyList<Piece> Pieces, Tone Ground = Tone.Plain)
{
    public static Line Blank { get; } = new([]);

    public static Line Of(string text, Tone tone = Tone.Plain) => new([new Piece(text, tone)]);

    public static Line Chosen(string text) => new([new Piece(text, Tone.Chosen)], Tone.Chosen);

    public bool Looks(Line? other) => other is not null && Ground == other.Ground && Pieces.SequenceEqual(other.Pieces);
}
