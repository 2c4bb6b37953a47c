using Stockroom.Labels.Drawings;

namespace Stockroom.Labels.Codes;

/// <summary>
/// Traces the dark modules of a matrix as closed outlines in module units, so that neighbouring modules are one shape
/// without seams between them.
/// </summary>
internal static class ModuleOutline
{
    public static VectorPath Trace(bool[,] modules)
    {
        var size = modules.GetLength(0);

        // Each border edge runs with the dark module on its right hand; at a corner where two dark modules touch
        // diagonally two edges start, and turning right keeps their outlines apart.
        var edges = new Dictionary<(int X, int Y), List<(int Dx, int Dy)>>();
        for (var y = 0; y < size; y++)
        {
            for (var x = 0; x < size; x++)
            {
                if (!modules[y, x])
                {
                    continue;
                }

                AddIf(!Dark(x, y - 1), x, y, 1, 0);
                AddIf(!Dark(x + 1, y), x + 1, y, 0, 1);
                AddIf(!Dark(x, y + 1), x + 1, y + 1, -1, 0);
                AddIf(!Dark(x - 1, y), x, y + 1, 0, -1);
            }
        }

        var builder = new PathBuilder();
        foreach (var start in edges.Keys.OrderBy(k => k.Y).ThenBy(k => k.X).ToList())
        {
            while (edges[start].Count > 0)
            {
                Loop(builder, edges, start);
            }
        }

        return builder.Build();

        bool Dark(int x, int y) => x >= 0 && y >= 0 && x < size && y < size && modules[y, x];

        void AddIf(bool border, int x, int y, int dx, int dy)
        {
            if (!border)
            {
                return;
            }

            if (!edges.TryGetValue((x, y), out var list))
            {
                edges[(x, y)] = list = [];
            }

            list.Add((dx, dy));
        }
    }

    private static void Loop(PathBuilder builder, Dictionary<(int X, int Y), List<(int Dx, int Dy)>> edges, (int X, int Y) start)
    {
        builder.Move(start.X, start.Y);
        var at = start;
        var direction = Take(edges[at], (0, 0));
        while (true)
        {
            at = (at.X + direction.Dx, at.Y + direction.Dy);
            if (at == start)
            {
                break;
            }

            var next = Take(edges[at], direction);
            if (next != direction)
            {
                builder.Line(at.X, at.Y);
            }

            direction = next;
        }

        builder.Close();
    }

    private static (int Dx, int Dy) Take(List<(int Dx, int Dy)> from, (int Dx, int Dy) coming)
    {
        var right = (-coming.Dy, coming.Dx);
        var index = Math.Max(0, from.IndexOf(right));
        var taken = from[index];
        from.RemoveAt(index);
        return taken;
    }
}
