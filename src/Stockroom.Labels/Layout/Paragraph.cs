using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>A text cut into the pieces between which a line may break, each measured once.</summary>
internal sealed class Paragraph
{
    private const string BreakAfter = "-,)]}/·>+";

    private readonly List<Piece> _pieces = [];
    private readonly LabelFont _font;
    private readonly double _spaceEm;

    public Paragraph(string text, Face face)
    {
        Text = string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Face = face;
        _font = LabelFont.Of(face);
        _spaceEm = _font.WidthMm(" ", 1);
        WidthEm = _font.WidthMm(Text, 1);
        var from = 0;
        while (from < Text.Length)
        {
            var space = Text.IndexOf(' ', from);
            var to = space < 0 ? Text.Length : space;
            Cut(from, to);
            from = to + 1;
        }

        LongestPieceEm = _pieces.Count == 0 ? 0 : _pieces.Max(p => LongestPartEm(Text.AsSpan(p.From, p.To - p.From)));
    }

    public string Text { get; }

    public Face Face { get; }

    public bool IsEmpty => _pieces.Count == 0;

    /// <summary>Set width on one line, in ems.</summary>
    public double WidthEm { get; }

    /// <summary>Width of the widest part that only a cut between two letters can divide.</summary>
    public double LongestPieceEm { get; }

    /// <summary>
    /// The lines at a type size, as ranges of <see cref="Text"/>. <paramref name="widthOf"/> gives the room in millimetres of
    /// line 0, 1, 2 ... ; zero or less ends the setting and returns null.
    /// </summary>
    public List<Range>? Lines(double sizeMm, Func<int, double> widthOf)
    {
        var lines = new List<Range>();
        var next = 0;
        Piece? rest = null;
        while (rest is not null || next < _pieces.Count)
        {
            var room = (widthOf(lines.Count) / sizeMm) + 1e-9;
            if (room <= 1e-9)
            {
                return null;
            }

            var first = rest ?? _pieces[next];
            next += rest is null ? 1 : 0;
            rest = null;
            if (first.Em > room)
            {
                var at = FitsBefore(first, room);
                if (at == first.From)
                {
                    return null;
                }

                lines.Add(first.From..at);
                rest = new Piece(at, first.To, _font.WidthMm(Text.AsSpan(at, first.To - at), 1), SpaceBefore: false);
                continue;
            }

            var (used, end) = (first.Em, first.To);
            while (next < _pieces.Count)
            {
                var piece = _pieces[next];
                used += piece.Em + (piece.SpaceBefore ? _spaceEm : 0);
                if (used > room)
                {
                    break;
                }

                end = piece.To;
                next++;
            }

            lines.Add(first.From..end);
        }

        return lines;
    }

    /// <summary>Cuts a word behind hyphens that stand between letters, as in "water-reactive"; "2-methyl" stays whole.</summary>
    private void Cut(int from, int to)
    {
        var (start, isFirst) = (from, true);
        for (var i = from + 3; i < to - 3; i++)
        {
            if (Text[i] == '-' && char.IsLetter(Text[i - 1]) && char.IsLetter(Text[i - 2]) && char.IsLetter(Text[i + 1]))
            {
                Add(start, i + 1, isFirst);
                (start, isFirst) = (i + 1, false);
            }
        }

        Add(start, to, isFirst);
    }

    private void Add(int from, int to, bool spaceBefore) =>
        _pieces.Add(new Piece(from, to, _font.WidthMm(Text.AsSpan(from, to - from), 1), spaceBefore));

    /// <summary>Where to cut a piece that is wider than a whole line: behind a bracket, comma or hyphen if there is one.</summary>
    private int FitsBefore(Piece piece, double room)
    {
        var (fits, good, em) = (piece.From, piece.From, 0.0);
        foreach (var rune in Text.AsSpan(piece.From, piece.To - piece.From).EnumerateRunes())
        {
            em += _font.WidthMm(rune);
            if (em > room)
            {
                break;
            }

            fits += rune.Utf16SequenceLength;
            good = IsGoodBreak(Text, fits) ? fits : good;
        }

        return good > piece.From ? good : fits;
    }

    private double LongestPartEm(ReadOnlySpan<char> text)
    {
        var (longest, em, at) = (0.0, 0.0, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            em += _font.WidthMm(rune);
            at += rune.Utf16SequenceLength;
            longest = Math.Max(longest, em);
            em = IsGoodBreak(text, at) ? 0 : em;
        }

        return longest;
    }

    /// <summary>Behind a bracket, hyphen or comma of a long chemical name, unless another one follows.</summary>
    private static bool IsGoodBreak(ReadOnlySpan<char> text, int at) =>
        BreakAfter.Contains(text[at - 1]) && (at >= text.Length || !BreakAfter.Contains(text[at]));

    private sealed record Piece(int From, int To, double Em, bool SpaceBefore);
}
