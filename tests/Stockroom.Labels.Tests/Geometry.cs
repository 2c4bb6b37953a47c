using Stockroom.Labels.Drawings;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Tests;

/// <summary>Finds fault with a drawn label: ink outside it, things that lie over each other.</summary>
internal static class Geometry
{
    /// <summary>One line for each fault; none is good.</summary>
    public static IReadOnlyList<string> Faults(Box label, IReadOnlyList<DrawingItem> items)
    {
        var faults = new List<string>();
        var things = Things(items).ToList();
        foreach (var thing in things.Where(t => !label.Contains(t.Box, 0.01)))
        {
            faults.Add($"{thing.Name} at {thing.Box} is outside the label {label}");
        }

        for (var i = 0; i < things.Count; i++)
        {
            for (var j = i + 1; j < things.Count; j++)
            {
                if (Overlap(things[i], things[j]))
                {
                    faults.Add($"{things[i].Name} at {things[i].Box} overlaps {things[j].Name} at {things[j].Box}");
                }
            }
        }

        return faults;
    }

    private sealed record Thing(string Name, Box Box, bool IsDiamond);

    private static IEnumerable<Thing> Things(IReadOnlyList<DrawingItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case Group group:
                    // What is grouped may lie over its own ground, but not reach beyond it.
                    foreach (var leaf in group.Items.Leaves().Where(l => !group.Area.Contains(l.Bounds, 0.01)))
                    {
                        yield return new Thing($"part of {group.Name} beyond its area", new Box(-1000, -1000, leaf.Bounds.Width, 1), false);
                    }

                    yield return new Thing(group.Name, group.Area, group.Name.StartsWith("GHS", StringComparison.Ordinal));
                    break;
                case TextRun text:
                    yield return new Thing($"'{text.Text}'", text.Bounds, false);
                    break;
                default:
                    yield return new Thing(item.GetType().Name, item.Bounds, false);
                    break;
            }
        }
    }

    private static bool Overlap(Thing a, Thing b)
    {
        const double Touch = 0.01;
        if (!a.IsDiamond && !b.IsDiamond)
        {
            return a.Box.Overlaps(b.Box, Touch);
        }

        if (a.IsDiamond && b.IsDiamond)
        {
            var (ca, cb) = (Centre(a.Box), Centre(b.Box));
            return Math.Abs(ca.X - cb.X) + Math.Abs(ca.Y - cb.Y) < ((a.Box.Width + b.Box.Width) / 2) - Touch;
        }

        var (diamond, box) = a.IsDiamond ? (a.Box, b.Box) : (b.Box, a.Box);
        var centre = Centre(diamond);
        var dx = Math.Max(0, Math.Max(box.Left - centre.X, centre.X - box.Right));
        var dy = Math.Max(0, Math.Max(box.Top - centre.Y, centre.Y - box.Bottom));
        return dx + dy < (diamond.Width / 2) - Touch;
    }

    private static Position Centre(Box box) => new(box.Left + (box.Width / 2), box.Top + (box.Height / 2));

    /// <summary>All words of the drawing in drawing order.</summary>
    public static string Words(IEnumerable<DrawingItem> items) =>
        string.Join(' ', items.Leaves().OfType<TextRun>().Select(t => t.Text));

    /// <summary>Without spaces, so that it does not matter where a line was broken.</summary>
    public static string Solid(string text) => text.Replace(" ", string.Empty);

    public static IEnumerable<Group> PictogramsOf(IEnumerable<DrawingItem> items) =>
        items.OfType<Group>().Where(g => Pictogram.Codes.Any(c => g.Name.StartsWith(c, StringComparison.Ordinal)));
}
