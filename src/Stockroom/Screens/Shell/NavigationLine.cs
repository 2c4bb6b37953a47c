using Stockroom.Screens.Drawing;
using Stockroom.Themes;

namespace Stockroom.Screens.Shell;

/// <summary>The name of the book and the rooms; the room where the reader stands is in capitals.</summary>
internal sealed class NavigationLine(Theme theme, string book, IReadOnlyList<string> titles) : LinePane(theme)
{
    private int _current;

    public void StandIn(int index)
    {
        _current = index;
        SetNeedsDraw();
    }

    protected override Line Compose(int row, int columns)
    {
        var pieces = new List<Piece>();
        int rooms = titles.Sum(t => t.Length + 5);
        string name = TextFit.Cut(Theme.Show(TextFit.Clean(book)), Math.Max(0, columns - rooms - 3), Theme.Glyphs.Cut);
        pieces.Add(new(" " + name, Tone.Quiet));
        pieces.Add(new(new string(' ', Math.Max(2, columns - rooms - 1 - TextFit.Columns(name))), Tone.Plain));
        for (int i = 0; i < titles.Count; i++)
        {
            bool here = i == _current;
            pieces.Add(new(string.Create(null, $"{i + 1} "), Tone.Quiet));
            pieces.Add(new(here ? titles[i].ToUpperInvariant() : titles[i], here ? Tone.Heading : Tone.Plain));
            pieces.Add(new("   ", Tone.Plain));
        }

        return new Line(pieces);
    }
}
