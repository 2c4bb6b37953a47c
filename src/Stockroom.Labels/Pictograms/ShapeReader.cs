using System.Globalization;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Pictograms;

/// <summary>
/// Reads a symbol from its shape file, one shape a line, drawn in order in a square of 100 by 100, y downwards:
/// <c>black|white fill PATH</c>, <c>black|white stroke WIDTH PATH</c>, <c>black|white circle X Y RADIUS</c>.
/// PATH holds M, L, C and Z with absolute coordinates, as in SVG path data. Lines that begin with # are remarks.
/// </summary>
internal static class ShapeReader
{
    public static IReadOnlyList<DrawingItem> Read(string text, string name)
    {
        var items = new List<DrawingItem>();
        var number = 0;
        foreach (var line in text.Split('\n'))
        {
            number++;
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (words.Length == 0 || words[0].StartsWith('#'))
            {
                continue;
            }

            try
            {
                items.Add(Shape(words));
            }
            catch (Exception e) when (e is FormatException or IndexOutOfRangeException or ArgumentException)
            {
                throw new InvalidDataException($"{name} line {number}: '{line.Trim()}' is not a shape: {e.Message}", e);
            }
        }

        return items;
    }

    private static DrawingItem Shape(string[] words)
    {
        var ink = words[0] switch
        {
            "black" => Ink.Black,
            "white" => Ink.White,
            _ => throw new FormatException($"the ink '{words[0]}' is neither black nor white"),
        };
        return words[1] switch
        {
            "fill" => new FilledPath(Path(words, 2), ink),
            "stroke" => new StrokedPath(Path(words, 3), ink, Number(words[2])),
            "circle" => new FilledPath(
                new PathBuilder().Circle(Number(words[2]), Number(words[3]), Number(words[4])).Build(), ink),
            _ => throw new FormatException($"'{words[1]}' is none of fill, stroke, circle"),
        };
    }

    private static VectorPath Path(string[] words, int from)
    {
        var builder = new PathBuilder();
        var step = ' ';
        var i = from;
        while (i < words.Length)
        {
            if (words[i].Length == 1 && char.IsAsciiLetterUpper(words[i][0]))
            {
                step = words[i++][0];
            }

            switch (step)
            {
                case 'M':
                    builder.Move(Next(), Next());
                    break;
                case 'L':
                    builder.Line(Next(), Next());
                    break;
                case 'C':
                    builder.Cubic(Next(), Next(), Next(), Next(), Next(), Next());
                    break;
                case 'Z':
                    builder.Close();
                    step = ' ';
                    break;
                default:
                    throw new FormatException($"'{step}' is none of M, L, C, Z");
            }
        }

        return builder.Build();

        double Next() => Number(words[i++]);
    }

    private static double Number(string word) => double.Parse(word, NumberStyles.Float, CultureInfo.InvariantCulture);
}
