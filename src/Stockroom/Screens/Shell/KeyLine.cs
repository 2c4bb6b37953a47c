using Stockroom.Screens.Drawing;
using Stockroom.Themes;

namespace Stockroom.Screens.Shell;

/// <summary>The last row: the keys that work now, as many as there is room for, or one line that is said to the keeper.</summary>
internal sealed class KeyLine(Theme theme, Func<IEnumerable<KeyAction>> keys, Func<IEnumerable<KeyAction>> always) : LinePane(theme)
{
    private string _said = "";

    public void Say(string text)
    {
        _said = text;
        SetNeedsDraw();
    }

    protected override Line Compose(int row, int columns)
    {
        if (_said.Length > 0) return Line.Of(" " + _said, Tone.Notice);
        List<Piece> right = Pieces(always(), columns);
        int rightWidth = right.Sum(p => p.Text.Length);
        List<Piece> left = Pieces(keys(), columns - rightWidth - 1);
        int gap = columns - rightWidth - 1 - left.Sum(p => p.Text.Length);
        return new Line([new(" ", Tone.Plain), .. left, new(new string(' ', Math.Max(0, gap)), Tone.Plain), .. right]);
    }

    private static List<Piece> Pieces(IEnumerable<KeyAction> actions, int room)
    {
        var pieces = new List<Piece>();
        foreach (KeyAction action in actions.Where(a => a.Brief is not null && a.Works))
        {
            int width = action.Name.Length + action.Brief!.Length + 4;
            if (width > room) break;
            room -= width;
            pieces.Add(new(action.Name, Tone.Heading));
            pieces.Add(new($" {action.Brief}   ", Tone.Plain));
        }

        return pieces;
    }
}
