using System.Buffers.Binary;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Fonts;

/// <summary>
/// Reads glyph outlines from a TrueType file (ISO/IEC 14496-22, tables loca and glyf): quadratic curves, written as the cubics that are
/// the same curves; composite glyphs put together from their parts.
/// </summary>
internal sealed class GlyphReader(ReadOnlyMemory<byte> file, int loca, int glyf, bool longOffsets)
{
    private const int MostDepth = 6;

    /// <summary>The outline in font units, y upwards; empty for a space.</summary>
    public IReadOnlyList<GlyphContour> Contours(int glyph, int depth = 0)
    {
        var (from, to) = (Offset(glyph), Offset(glyph + 1));
        if (from == to || depth > MostDepth)
        {
            return [];
        }

        var at = glyf + from;
        var count = I16(at);
        return count >= 0 ? Simple(at + 10, count) : Composite(at + 10, depth);
    }

    private int Offset(int glyph) => longOffsets ? (int)BinaryPrimitives.ReadUInt32BigEndian(file.Span[(loca + (4 * glyph))..]) : 2 * U16(loca + (2 * glyph));

    private List<GlyphContour> Simple(int at, int count)
    {
        var ends = Enumerable.Range(0, count).Select(i => U16(at + (2 * i))).ToList();
        at += 2 * count;
        at += 2 + U16(at);
        var points = count == 0 ? 0 : ends[^1] + 1;
        var flags = new byte[points];
        for (var i = 0; i < points; i++)
        {
            flags[i] = file.Span[at++];
            if ((flags[i] & 8) != 0)
            {
                for (var repeat = (int)file.Span[at++]; repeat > 0 && i + 1 < points; repeat--, i++)
                {
                    flags[i + 1] = flags[i];
                }
            }
        }

        var xs = Coordinates(ref at, flags, shortBit: 2, sameBit: 16);
        var ys = Coordinates(ref at, flags, shortBit: 4, sameBit: 32);
        var contours = new List<GlyphContour>();
        var first = 0;
        foreach (var end in ends)
        {
            contours.Add(new GlyphContour([.. Enumerable.Range(first, end - first + 1).Select(i => new GlyphPoint(xs[i], ys[i], (flags[i] & 1) != 0))]));
            first = end + 1;
        }

        return contours;
    }

    private int[] Coordinates(ref int at, byte[] flags, int shortBit, int sameBit)
    {
        var values = new int[flags.Length];
        var value = 0;
        for (var i = 0; i < flags.Length; i++)
        {
            if ((flags[i] & shortBit) != 0)
            {
                value += (flags[i] & sameBit) != 0 ? file.Span[at] : -file.Span[at];
                at++;
            }
            else if ((flags[i] & sameBit) == 0)
            {
                value += I16(at);
                at += 2;
            }

            values[i] = value;
        }

        return values;
    }

    private List<GlyphContour> Composite(int at, int depth)
    {
        var contours = new List<GlyphContour>();
        int flags;
        do
        {
            flags = U16(at);
            var glyph = U16(at + 2);
            at += 4;
            var words = (flags & 1) != 0;
            var (dx, dy) = words ? (I16(at), I16(at + 2)) : (unchecked((sbyte)file.Span[at]), unchecked((sbyte)file.Span[at + 1]));
            at += words ? 4 : 2;
            if ((flags & 2) == 0)
            {
                throw new InvalidDataException("the label font places a part of a glyph by matching points, which is not read");
            }

            double a = 1, b = 0, c = 0, d = 1;
            if ((flags & 8) != 0)
            {
                a = d = F2Dot14(at);
                at += 2;
            }
            else if ((flags & 64) != 0)
            {
                (a, d) = (F2Dot14(at), F2Dot14(at + 2));
                at += 4;
            }
            else if ((flags & 128) != 0)
            {
                (a, b, c, d) = (F2Dot14(at), F2Dot14(at + 2), F2Dot14(at + 4), F2Dot14(at + 6));
                at += 8;
            }

            contours.AddRange(Contours(glyph, depth + 1).Select(contour => new GlyphContour(
                [.. contour.Points.Select(p => new GlyphPoint((a * p.X) + (c * p.Y) + dx, (b * p.X) + (d * p.Y) + dy, p.OnCurve))])));
        }
        while ((flags & 32) != 0);

        return contours;
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(file.Span[at..]);

    private int I16(int at) => BinaryPrimitives.ReadInt16BigEndian(file.Span[at..]);

    private double F2Dot14(int at) => I16(at) / 16384.0;
}

/// <summary>A point of a glyph in font units, y upwards; one off the curve is the control point of a quadratic curve.</summary>
internal readonly record struct GlyphPoint(double X, double Y, bool OnCurve);

/// <summary>A closed outline; between two control points in a row lies a point of the curve half-way.</summary>
internal sealed record GlyphContour(IReadOnlyList<GlyphPoint> Points)
{
    /// <summary>Adds the contour to a path in ems, y downwards.</summary>
    public void AddTo(PathBuilder path, double unitsPerEm)
    {
        if (Points.Count < 2)
        {
            return;
        }

        // Begin on the curve: at a point of it, or half-way between the first two control points.
        var start = Enumerable.Range(0, Points.Count).Cast<int?>().FirstOrDefault(i => Points[i!.Value].OnCurve);
        var first = start is { } s ? Points[s] : Middle(Points[^1], Points[0]);
        path.Move(X(first), Y(first));
        var at = first;
        GlyphPoint? control = null;
        for (var i = 1; i <= Points.Count; i++)
        {
            var next = i == Points.Count && start is null ? first : Points[((start ?? -1) + i) % Points.Count];
            if (next.OnCurve)
            {
                Curve(control, next);
                control = null;
            }
            else
            {
                if (control is { } before)
                {
                    Curve(before, Middle(before, next));
                }

                control = next;
            }
        }

        if (control is { } last)
        {
            Curve(last, first);
        }

        path.Close();

        void Curve(GlyphPoint? through, GlyphPoint to)
        {
            if (through is not { } q)
            {
                path.Line(X(to), Y(to));
            }
            else
            {
                path.Cubic(
                    X(at) + (2.0 / 3 * (X(q) - X(at))), Y(at) + (2.0 / 3 * (Y(q) - Y(at))),
                    X(to) + (2.0 / 3 * (X(q) - X(to))), Y(to) + (2.0 / 3 * (Y(q) - Y(to))),
                    X(to), Y(to));
            }

            at = to;
        }

        double X(GlyphPoint p) => p.X / unitsPerEm;

        double Y(GlyphPoint p) => -p.Y / unitsPerEm;
    }

    private static GlyphPoint Middle(GlyphPoint a, GlyphPoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2, OnCurve: true);
}
