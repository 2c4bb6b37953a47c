namespace Stockroom.Labels.Drawings;

/// <summary>Builds a <see cref="VectorPath"/> step by step.</summary>
public sealed class PathBuilder
{
    /// <summary>Control-point distance for a quarter circle of radius 1: 4/3 (sqrt 2 - 1).</summary>
    private static readonly double QuarterCircle = 4.0 / 3.0 * (Math.Sqrt(2) - 1);

    private readonly List<Segment> _segments = [];
    private Position _start;

    public PathBuilder Move(double x, double y)
    {
        _start = new Position(x, y);
        _segments.Add(new Segment(SegmentKind.Move, default, default, _start));
        return this;
    }

    public PathBuilder Line(double x, double y)
    {
        _segments.Add(new Segment(SegmentKind.Line, default, default, new Position(x, y)));
        return this;
    }

    public PathBuilder Cubic(double x1, double y1, double x2, double y2, double x, double y)
    {
        _segments.Add(new Segment(SegmentKind.Cubic, new Position(x1, y1), new Position(x2, y2), new Position(x, y)));
        return this;
    }

    public PathBuilder Close()
    {
        _segments.Add(new Segment(SegmentKind.Close, default, default, _start));
        return this;
    }

    public PathBuilder Polygon(params ReadOnlySpan<Position> corners)
    {
        Move(corners[0].X, corners[0].Y);
        foreach (var corner in corners[1..])
        {
            Line(corner.X, corner.Y);
        }

        return Close();
    }

    public PathBuilder Rectangle(Box box) => Polygon(
        new Position(box.Left, box.Top), new Position(box.Right, box.Top),
        new Position(box.Right, box.Bottom), new Position(box.Left, box.Bottom));

    public PathBuilder Circle(double x, double y, double radius) =>
        RoundedRectangle(new Box(x - radius, y - radius, 2 * radius, 2 * radius), radius);

    /// <summary>A square of the given diagonal standing on its point, as the frame of a hazard pictogram.</summary>
    public PathBuilder Diamond(double centreX, double centreY, double diagonal)
    {
        var half = diagonal / 2;
        return Polygon(
            new Position(centreX, centreY - half), new Position(centreX + half, centreY),
            new Position(centreX, centreY + half), new Position(centreX - half, centreY));
    }

    public PathBuilder RoundedRectangle(Box box, double radius)
    {
        var r = Math.Min(radius, Math.Min(box.Width, box.Height) / 2);
        var c = r * (1 - QuarterCircle);
        return Move(box.Left + r, box.Top)
            .Line(box.Right - r, box.Top)
            .Cubic(box.Right - c, box.Top, box.Right, box.Top + c, box.Right, box.Top + r)
            .Line(box.Right, box.Bottom - r)
            .Cubic(box.Right, box.Bottom - c, box.Right - c, box.Bottom, box.Right - r, box.Bottom)
            .Line(box.Left + r, box.Bottom)
            .Cubic(box.Left + c, box.Bottom, box.Left, box.Bottom - c, box.Left, box.Bottom - r)
            .Line(box.Left, box.Top + r)
            .Cubic(box.Left, box.Top + c, box.Left + c, box.Top, box.Left + r, box.Top)
            .Close();
    }

    public VectorPath Build() => new(_segments);
}
