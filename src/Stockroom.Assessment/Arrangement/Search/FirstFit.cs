namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// The plain way: whatever clashes is put into the first spot that would take it as everything stands then. What is still
/// at odds in the end is left. The yardstick, and a plan whose moves can always be made in the order they were found.
/// </summary>
internal static class FirstFit
{
    /// <summary>The placement, and the things moved in order.</summary>
    public static (Placement Placement, IReadOnlyList<int> Order) Of(Layout layout)
    {
        var placement = new Placement(layout);
        var order = new List<int>();
        for (var i = 0; i < layout.Things; i++)
        {
            if (!layout.Stays[i] && IsAtOdds(placement, i) && FirstSafe(placement, i) is { } spot)
            {
                placement.Put(i, spot);
                order.Add(i);
            }
        }

        LeaveWhatIsAtOdds(placement);
        return (placement, order);
    }

    /// <summary>Leaves things, those that clash most first, until nothing else clashes. What was moved is not among them.</summary>
    public static void LeaveWhatIsAtOdds(Placement placement)
    {
        while (!placement.IsSafe)
        {
            var worst = -1;
            var most = 0;
            for (var i = 0; i < placement.Layout.Things; i++)
            {
                if (placement.IsLeft(i) || placement.IsMoved(i))
                    continue;
                var weight = placement.ClashesIf(i, placement.At[i]) + (placement.IsOverloaded(i) ? 1 : 0);
                if (weight > most || (weight == most && weight > 0 && placement.Layout.Stays[worst] && !placement.Layout.Stays[i]))
                    (worst, most) = (i, weight);
            }

            if (worst < 0)
                throw new InvalidOperationException("things that were moved clash with each other");
            placement.Put(worst, Layout.Nowhere);
        }
    }

    private static bool IsAtOdds(Placement placement, int thing) =>
        placement.IsLeft(thing) || placement.ClashesIf(thing, placement.At[thing]) > 0 || placement.IsOverloaded(thing);

    private static int? FirstSafe(Placement placement, int thing)
    {
        foreach (var spot in placement.Layout.Offered[placement.Layout.Group[thing]])
        {
            if (spot != placement.At[thing] && placement.ClashesIf(thing, spot) == 0 && !WouldOverload(placement, thing, spot))
                return spot;
        }

        return null;
    }

    private static bool WouldOverload(Placement placement, int thing, int spot)
    {
        var limits = placement.Layout.Limits;
        foreach (var c in limits.OfSpot[spot])
        {
            var use = limits.Use(c, thing);
            if (use > 0 && placement.Carried(c) + (limits.Covers(c, placement.At[thing]) ? 0 : use) > limits.Most[c])
                return true;
        }

        return false;
    }
}
