namespace Stockroom.Labels.Drawings;

/// <summary>Moves drawn items to where they stand on a sheet.</summary>
public static class Placement
{
    public static DrawingItem MovedBy(this DrawingItem item, double dx, double dy) => item switch
    {
        FilledPath filled => filled with { Path = filled.Path.Transform(1, dx, dy) },
        StrokedPath stroked => stroked with { Path = stroked.Path.Transform(1, dx, dy) },
        TextRun text => text with { Baseline = text.Baseline.Offset(dx, dy) },
        Group group => group with { Area = group.Area.Offset(dx, dy), Items = group.Items.MovedBy(dx, dy) },
        Clipped clipped => clipped with { Window = clipped.Window.Offset(dx, dy), Items = clipped.Items.MovedBy(dx, dy) },
        Placed placed => placed with { Dx = placed.Dx + dx, Dy = placed.Dy + dy },
        _ => throw new ArgumentOutOfRangeException(nameof(item), item.GetType().Name, "no such drawing item"),
    };

    public static IReadOnlyList<DrawingItem> MovedBy(this IReadOnlyList<DrawingItem> items, double dx, double dy) =>
        [.. items.Select(i => i.MovedBy(dx, dy))];

    /// <summary>The same, larger or smaller, about the origin.</summary>
    public static DrawingItem ScaledBy(this DrawingItem item, double scale) => item switch
    {
        FilledPath filled => filled with { Path = filled.Path.Transform(scale, 0, 0) },
        StrokedPath stroked => stroked with { Path = stroked.Path.Transform(scale, 0, 0), WidthMm = stroked.WidthMm * scale },
        TextRun text => text with { Baseline = new Position(text.Baseline.X * scale, text.Baseline.Y * scale), SizeMm = text.SizeMm * scale },
        Group group => group with { Area = group.Area.Scaled(scale), Items = [.. group.Items.Select(i => i.ScaledBy(scale))] },
        Clipped clipped => clipped with { Window = clipped.Window.Scaled(scale), Items = [.. clipped.Items.Select(i => i.ScaledBy(scale))] },
        Placed placed => placed with { Scale = placed.Scale * scale, Dx = placed.Dx * scale, Dy = placed.Dy * scale },
        _ => throw new ArgumentOutOfRangeException(nameof(item), item.GetType().Name, "no such drawing item"),
    };

    /// <summary>All items with groups, clippings and placings opened, in drawing order.</summary>
    public static IEnumerable<DrawingItem> Leaves(this IEnumerable<DrawingItem> items)
    {
        foreach (var item in items)
        {
            var inner = item switch
            {
                Group group => group.Items,
                Clipped clipped => clipped.Items,
                Placed placed => [.. placed.Items.Select(i => i.ScaledBy(placed.Scale).MovedBy(placed.Dx, placed.Dy))],
                _ => null,
            };
            if (inner is null)
            {
                yield return item;
                continue;
            }

            foreach (var leaf in inner.Leaves())
            {
                yield return leaf;
            }
        }
    }
}
