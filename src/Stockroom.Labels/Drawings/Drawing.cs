using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Drawings;

/// <summary>The three colours a label is printed in.</summary>
public enum Ink
{
    Black,
    White,

    /// <summary>The red of a hazard pictogram's frame (CLP Annex I 1.2.1.1).</summary>
    Red,
}

/// <summary>One thing drawn; all lengths in millimetres.</summary>
public abstract record DrawingItem
{
    /// <summary>The box that the item's ink stays inside.</summary>
    public abstract Box Bounds { get; }
}

public sealed record FilledPath(VectorPath Path, Ink Ink) : DrawingItem
{
    public override Box Bounds => Path.Bounds;
}

/// <summary>A line along a path, with round ends and joins.</summary>
public sealed record StrokedPath(VectorPath Path, Ink Ink, double WidthMm) : DrawingItem
{
    public override Box Bounds => Path.Bounds.Inset(-WidthMm / 2);
}

/// <summary>One line of text. <see cref="SizeMm"/> is the type size (the em); <see cref="Baseline"/> is its left end.</summary>
public sealed record TextRun(string Text, Face Face, double SizeMm, Position Baseline, Ink Ink = Ink.Black) : DrawingItem
{
    public double WidthMm => LabelFont.Of(Face).WidthMm(Text, SizeMm);

    public override Box Bounds
    {
        get
        {
            var font = LabelFont.Of(Face);
            return Box.FromEdges(
                Baseline.X, Baseline.Y - (font.AscentEm * SizeMm), Baseline.X + WidthMm, Baseline.Y + (font.DescentEm * SizeMm));
        }
    }
}

/// <summary>Items that belong together under a name, such as a pictogram or a code; <see cref="Area"/> is what they claim of the label.</summary>
public sealed record Group(string Name, Box Area, IReadOnlyList<DrawingItem> Items) : DrawingItem
{
    public override Box Bounds => Area;
}

/// <summary>Items of which only the part inside <see cref="Window"/> is drawn.</summary>
public sealed record Clipped(Box Window, IReadOnlyList<DrawingItem> Items) : DrawingItem
{
    public override Box Bounds => Window;
}

/// <summary>
/// Items drawn in units of their own, scaled and then moved to where they stand. Items with a <see cref="Name"/> are the same wherever
/// the name is used, so that a file need hold them only once.
/// </summary>
public sealed record Placed(IReadOnlyList<DrawingItem> Items, double Scale, double Dx, double Dy, string? Name = null) : DrawingItem
{
    public override Box Bounds => Items.Select(i => i.Bounds).Aggregate((a, b) => a.Union(b)).Scaled(Scale).Offset(Dx, Dy);
}

/// <summary>A sheet, label or symbol as a list of things drawn in order, in millimetres; independent of any output format.</summary>
public sealed record Drawing(double WidthMm, double HeightMm, IReadOnlyList<DrawingItem> Items);
