using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Layout;

/// <summary>
/// The free part of a label, filled from top to bottom with lines that keep clear of what already stands at its left
/// (pictograms) and right (the code).
/// </summary>
internal sealed class FlowArea(Box area)
{
    /// <summary>Distance from one baseline to the next as a multiple of the type size (CLP Annex I 1.2.1.5: 120 % or more).</summary>
    public const double LineSpacing = 1.2;

    private readonly List<Box> _left = [];
    private readonly List<Box> _right = [];
    private readonly List<Box> _fixedLeft = [];
    private readonly List<Func<DrawingItem>> _items = [];

    /// <summary>Another area that begins as full as this one.</summary>
    public FlowArea Copy()
    {
        var copy = new FlowArea(Area) { Y = Y, Bottom = Bottom, LeftBottom = LeftBottom };
        copy._left.AddRange(_left);
        copy._fixedLeft.AddRange(_fixedLeft);
        copy._right.AddRange(_right);
        copy._items.AddRange(_items);
        return copy;
    }

    /// <summary>Goes on where a copy of this one has got to.</summary>
    public void TakeOver(FlowArea copy)
    {
        (Y, Bottom, LeftBottom) = (copy.Y, copy.Bottom, copy.LeftBottom);
        _items.Clear();
        _items.AddRange(copy._items);
    }

    /// <summary>Adds what is drawn only once the whole label is found to fit.</summary>
    public void Add(Func<DrawingItem> item) => _items.Add(item);

    public IReadOnlyList<DrawingItem> Drawn() => [.. _items.Select(i => i())];

    public Box Area { get; } = area;

    /// <summary>Where the next line begins.</summary>
    public double Y { get; set; } = area.Top;

    /// <summary>Nothing is set below this.</summary>
    public double Bottom { get; set; } = area.Bottom;

    /// <summary>Keeps the column beside <paramref name="box"/> open down to the bottom, until <see cref="ReleaseLeft"/>.</summary>
    public void HoldLeft(Box box)
    {
        LeftBottom = box.Bottom;
        _left.Add(box with { Height = Bottom - box.Top });
    }

    /// <summary>From here on text may use the full width below what stands at the left.</summary>
    public void ReleaseLeft() => _left.Clear();

    public void KeepClearAtRight(Box box) => _right.Add(box);

    /// <summary>Keeps a box clear for good: text passes it on the side that has more room.</summary>
    public void KeepClear(Box box) => (box.Left + (box.Width / 2) < Area.Left + (Area.Width / 2) ? _fixedLeft : _right).Add(box);

    /// <summary>Lowest edge of what stands at the left.</summary>
    public double LeftBottom { get; private set; } = area.Top;

    /// <summary>The next height at which the free interval may widen, or null.</summary>
    public double? NextEdgeBelow(double top)
    {
        double? next = null;
        foreach (var box in _left.Concat(_fixedLeft).Concat(_right))
        {
            if (box.Bottom > top + 0.001 && box.Bottom < (next ?? double.MaxValue))
            {
                next = box.Bottom;
            }
        }

        return next;
    }

    /// <summary>Free interval between the obstacles for a line from <paramref name="top"/> downwards.</summary>
    public (double From, double To) Free(double top, double height)
    {
        var (from, to) = (Area.Left, Area.Right);
        foreach (var box in _left.Concat(_fixedLeft))
        {
            if (Meets(box))
            {
                from = Math.Max(from, box.Right);
            }
        }

        foreach (var box in _right)
        {
            if (Meets(box))
            {
                to = Math.Min(to, box.Left);
            }
        }

        return (from, to);

        bool Meets(Box box) => box.Top < top + height - 0.001 && box.Bottom > top + 0.001;
    }

    /// <summary>Sets a paragraph from <see cref="Y"/> on and moves <see cref="Y"/> below it; false, and nothing set, where it does not fit.</summary>
    /// <param name="paragraph">May be empty.</param>
    /// <param name="sizeMm">Type size.</param>
    /// <param name="mostLines">More lines than these count as not fitting.</param>
    /// <param name="leastWidthMm">Where the free interval is narrower, the text goes on below the obstacle.</param>
    public bool Set(Paragraph paragraph, double sizeMm, int mostLines = int.MaxValue, double leastWidthMm = 0)
    {
        var step = LineSpacing * sizeMm;
        var starts = new List<(double X, double Y)>();
        var lines = paragraph.Lines(sizeMm, Room);
        if (lines is null || lines.Count > mostLines)
        {
            return false;
        }

        var font = Fonts.LabelFont.Of(paragraph.Face);
        var ascent = (step - (sizeMm * (font.AscentEm + font.DescentEm))) / 2 + (sizeMm * font.AscentEm);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, at) = (lines[i], new Position(starts[i].X, starts[i].Y + ascent));
            Add(() => new TextRun(paragraph.Text[line], paragraph.Face, sizeMm, at));
            Y = starts[i].Y + step;
        }

        return true;

        double Room(int line)
        {
            if (line >= mostLines)
            {
                return 0;
            }

            var top = line == 0 ? Y : starts[line - 1].Y + step;
            var least = Math.Max(leastWidthMm, sizeMm);
            while (top + step <= Bottom + 0.001)
            {
                var (from, to) = Free(top, step);
                if (to - from >= least)
                {
                    starts.Add((from, top));
                    return to - from;
                }

                top = NextEdgeBelow(top) ?? double.MaxValue;
            }

            return 0;
        }
    }
}
