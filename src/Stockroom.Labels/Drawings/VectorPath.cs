namespace Stockroom.Labels.Drawings;

public enum SegmentKind
{
    Move,
    Line,
    Cubic,
    Close,
}

/// <summary>One step of a path. <see cref="First"/> and <see cref="Second"/> are the control points of a cubic Bezier curve.</summary>
public readonly record struct Segment(SegmentKind Kind, Position First, Position Second, Position End);

/// <summary>An outline in millimetres; where filled, by the even-odd rule.</summary>
public sealed class VectorPath
{
    private readonly Segment[] _segments;

    public VectorPath(IEnumerable<Segment> segments)
    {
        _segments = [.. segments];
        if (_segments.Length > 0 && _segments[0].Kind != SegmentKind.Move)
        {
            throw new ArgumentException("a path begins with a move", nameof(segments));
        }

        Bounds = Measure(_segments);
    }

    public IReadOnlyList<Segment> Segments => _segments;

    /// <summary>The box around all points and control points; the outline lies wholly inside it.</summary>
    public Box Bounds { get; }

    public VectorPath Transform(double scale, double dx, double dy)
    {
        Position Map(Position p) => new((p.X * scale) + dx, (p.Y * scale) + dy);
        return new VectorPath(_segments.Select(s => new Segment(s.Kind, Map(s.First), Map(s.Second), Map(s.End))));
    }

    private static Box Measure(Segment[] segments)
    {
        double left = double.MaxValue, top = double.MaxValue, right = double.MinValue, bottom = double.MinValue;
        foreach (var segment in segments)
        {
            if (segment.Kind == SegmentKind.Close)
            {
                continue;
            }

            Grow(segment.End);
            if (segment.Kind == SegmentKind.Cubic)
            {
                Grow(segment.First);
                Grow(segment.Second);
            }
        }

        return segments.Length == 0 ? default : Box.FromEdges(left, top, right, bottom);

        void Grow(Position p)
        {
            left = Math.Min(left, p.X);
            right = Math.Max(right, p.X);
            top = Math.Min(top, p.Y);
            bottom = Math.Max(bottom, p.Y);
        }
    }
}
