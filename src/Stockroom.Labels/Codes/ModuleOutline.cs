using System.Numerics;
using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Codes;

/// <summary>
/// Traces the dark modules of a matrix as closed outlines in module units, so that neighbouring modules are one shape
/// without seams between them.
/// </summary>
internal static class ModuleOutline
{
    private static readonly (int Dx, int Dy)[] Directions = [(1, 0), (0, 1), (-1, 0), (0, -1)];

    public static VectorPath Trace(bool[,] modules)
    {
        var size = modules.GetLength(0);

        // Each border edge runs with the dark module on its right hand; at a corner where two dark modules touch
        // diagonally two edges start, and turning right keeps their outlines apart. One bit for each direction.
        var edges = new byte[size + 1, size + 1];
        for (var y = 0; y < size; y++)
        {
            for (var x = 0; x < size; x++)
            {
                if (!modules[y, x])
                {
                    continue;
                }

                Border(!Dark(x, y - 1), x, y, 0);
                Border(!Dark(x + 1, y), x + 1, y, 1);
                Border(!Dark(x, y + 1), x + 1, y + 1, 2);
                Border(!Dark(x - 1, y), x, y + 1, 3);
            }
        }

        var builder = new PathBuilder();
        for (var y = 0; y <= size; y++)
        {
            for (var x = 0; x <= size; x++)
            {
                while (edges[y, x] != 0)
                {
                    Loop(builder, edges, x, y);
                }
            }
        }

        return builder.Build();

        bool Dark(int x, int y) => x >= 0 && y >= 0 && x < size && y < size && modules[y, x];

        void Border(bool here, int x, int y, int direction) => edges[y, x] |= (byte)(here ? 1 << direction : 0);
    }

    private static void Loop(PathBuilder builder, byte[,] edges, int startX, int startY)
    {
        builder.Move(startX, startY);
        var (x, y) = (startX, startY);
        var direction = Take(ref edges[y, x], coming: 0);
        while (true)
        {
            (x, y) = (x + Directions[direction].Dx, y + Directions[direction].Dy);
            if (x == startX && y == startY)
            {
                break;
            }

            var next = Take(ref edges[y, x], direction);
            if (next != direction)
            {
                builder.Line(x, y);
            }

            direction = next;
        }

        builder.Close();
    }

    /// <summary>Takes the edge to the right of where one comes from, or else the first there is.</summary>
    private static int Take(ref byte from, int coming)
    {
        var right = (coming + 1) % 4;
        var taken = (from & (1 << right)) != 0 ? right : BitOperations.TrailingZeroCount(from);
        from ^= (byte)(1 << taken);
        return taken;
    }
}
