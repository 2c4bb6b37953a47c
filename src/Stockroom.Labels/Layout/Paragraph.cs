using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>A text cut into the pieces between which a line may break, each measured once.</summary>
internal sealed class Paragraph
{
    private const string BreakAfter = "-,)]}/·>+";

    private readonly List<Piece> _pieces = [];
    private readonly LabelFont _font;

    public Paragraph(string text, Face face)
    {
        Text = text;
        Face = face;
        _font = LabelFont.Of(face);
        WidthEm = _font.WidthMm(text, 1);
        SpaceEm = _font.WidthMm(" ", 1);
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            Cut(word);
        }

        LongestPieceEm = _pieces.Count == 0 ? 0 : _pieces.Max(p => LongestPartEm(p.Text));
    }

    public string Text { get; }

    public Face Face { get; }

    public bool IsEmpty => _pieces.Count == 0;

    /// <summary>Width of the widest part that only a cut between two letters can divide.</summary>
    public double LongestPieceEm { get; }

    private double SpaceEm { get; }

    /// <summary>Set width on one line, in ems.</summary>
    public double WidthEm { get; }

    /// <summary>
    /// The lines at a type size. <paramref name="widthOf"/> gives the room in millimetres of line 0, 1, 2 ... ;
    /// zero or less ends the setting and returns null.
    /// </summary>
    public IReadOnlyList<string>? Lines(double sizeMm, Func<int, double> widthOf)
    {
        var lines = new List<string>();
        var queue = new Queue<Piece>(_pieces);
        Piece? rest = null;
        while (rest is not null || queue.Count > 0)
        {
            var room = widthOf(lines.Count) / sizeMm;
            if (room <= 0)
            {
                return null;
            }

            var (line, used) = (string.Empty, 0.0);
            while (rest is not null || queue.Count > 0)
            {
                var piece = rest ?? queue.Peek();
                var space = line.Length > 0 && piece.SpaceBefore ? SpaceEm : 0;
                if (used + space + piece.Em <= room + 1e-9)
                {
                    line += (space > 0 ? " " : string.Empty) + piece.Text;
                    used += space + piece.Em;
                    Consume();
                }
                else if (line.Length > 0)
                {
                    break;
                }
                else
                {
                    var (head, tail) = Split(piece, room);
                    if (head is null)
                    {
                        return null;
                    }

                    line = head;
                    Consume();
                    rest = tail;
                    break;
                }
            }

            lines.Add(line);
        }

        return lines;

        void Consume()
        {
            if (rest is null)
            {
                queue.Dequeue();
            }
            else
            {
                rest = null;
            }
        }
    }

    private void Cut(string word)
    {
        // A hyphen between letters is a good place to break, as in "water-reactive"; "2-methyl" is not.
        var from = 0;
        for (var i = 3; i < word.Length - 3; i++)
        {
            if (word[i] == '-' && char.IsLetter(word[i - 1]) && char.IsLetter(word[i - 2]) && char.IsLetter(word[i + 1]))
            {
                Add(word[from..(i + 1)], from == 0);
                from = i + 1;
            }
        }

        Add(word[from..], from == 0);
    }

    private void Add(string text, bool spaceBefore) => _pieces.Add(new Piece(text, _font.WidthMm(text, 1), spaceBefore));

    /// <summary>Cuts a piece that is wider than a whole line, behind a bracket, comma or hyphen where one is near.</summary>
    private (string? Head, Piece? Tail) Split(Piece piece, double room)
    {
        var (fits, good, em) = (0, 0, 0.0);
        foreach (var rune in piece.Text.EnumerateRunes())
        {
            em += _font.WidthMm(rune.ToString(), 1);
            if (em > room)
            {
                break;
            }

            fits += rune.Utf16SequenceLength;
            good = IsGoodBreak(piece.Text, fits) ? fits : good;
        }

        var at = good > 0 ? good : fits;
        return at == 0
            ? (null, null)
            : (piece.Text[..at], new Piece(piece.Text[at..], _font.WidthMm(piece.Text.AsSpan(at), 1), SpaceBefore: false));
    }

    private double LongestPartEm(string text)
    {
        var (longest, em, at) = (0.0, 0.0, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            em += _font.WidthMm(rune.ToString(), 1);
            at += rune.Utf16SequenceLength;
            longest = Math.Max(longest, em);
            em = IsGoodBreak(text, at) ? 0 : em;
        }

        return longest;
    }

    /// <summary>Behind a bracket, hyphen or comma of a long chemical name, unless another one follows.</summary>
    private static bool IsGoodBreak(string text, int at) =>
        BreakAfter.Contains(text[at - 1]) && (at >= text.Length || !BreakAfter.Contains(text[at]));

    private sealed record Piece(string Text, double Em, bool SpaceBefore);
}
