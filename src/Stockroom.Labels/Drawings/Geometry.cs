namespace Stockroom.Labels.Drawings;

/// <summary>A point in millimetres from the top left corner of the sheet or label; y grows downwards.</summary>
public readonly record struct Position(double X, double Y)
{
    public Position Offset(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>An upright rectangle in millimetres.</summary>
public readonly record struct Box(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public static Box FromEdges(double left, double top, double right, double bottom) =>
        new(left, top, right - left, bottom - top);

    public Box Inset(double by) => new(Left + by, Top + by, Width - (2 * by), Height - (2 * by));

    public Box Offset(double dx, double dy) => this with { Left = Left + dx, Top = Top + dy };

    public Box Scaled(double by) => new(Left * by, Top * by, Width * by, Height * by);

    /// <summary>True where the two share area; touching edges, within <paramref name="tolerance"/> mm, do not count.</summary>
    public bool Overlaps(Box other, double tolerance = 0.001) =>
        Left < other.Right - tolerance && other.Left < Right - tolerance
        && Top < other.Bottom - tolerance && other.Top < Bottom - tolerance;

    public bool Contains(Box other, double tolerance = 0.001) =>
        other.Left >= Left - tolerance && other.Right <= Right + tolerance
        && other.Top >= Top - tolerance && other.Bottom <= Bottom + tolerance;

    public Box Union(Box other) => FromEdges(
        Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));
}
