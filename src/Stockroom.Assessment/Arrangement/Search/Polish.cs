using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>Sends what is moved anyway to the spots that suit it best, like to like, without moving anything else.</summary>
internal static class Polish
{
    private const int SameContent = 8;
    private const int SameSubstance = 6;
    private const int MostOfFamilies = 4;
    private const int MostRounds = 10;

    public static void Improve(Placement placement)
    {
        var again = true;
        for (var round = 0; again && round < MostRounds; round++)
        {
            again = false;
            for (var i = 0; i < placement.Layout.Things; i++)
            {
                if (!placement.IsMoved(i))
                    continue;
                var best = Better(placement, i);
                again |= best != placement.At[i];
                placement.Put(i, best);
            }
        }
    }

    private static int Better(Placement placement, int thing)
    {
        var best = placement.At[thing];
        var points = Points(placement, thing, best);
        foreach (var q in placement.Layout.Offered[placement.Layout.Group[thing]])
        {
            if (q == placement.At[thing] || placement.Layout.Barred.Contains((thing, q)) || q == placement.Layout.Home[thing] || placement.ClashesIf(thing, q) > 0 || placement.OverloadChangeIf(thing, q) > 0)
                continue;
            var there = Points(placement, thing, q);
            if (there < points)
                (best, points) = (q, there);
        }

        return best;
    }

    /// <summary>How little a spot suits a thing, less what speaks for it by what stands there already.</summary>
    public static int Points(Placement placement, int thing, int spot) => placement.Layout.Unease(thing, spot) - Kinship(placement, thing, spot);

    private static int Kinship(Placement placement, int thing, int spot)
    {
        var layout = placement.Layout;
        var kin = 0;
        for (var j = 0; j < layout.Things && kin < SameContent; j++)
        {
            if (j == thing || placement.At[j] != spot)
                continue;
            if (layout.Group[j] == layout.Group[thing])
                return SameContent;
            kin = Math.Max(kin, Likeness(layout.Members[layout.Group[thing]].Profile, layout.Members[layout.Group[j]].Profile));
        }

        return kin;
    }

    /// <summary>How like two different contents are: one substance in both, or families that both carry.</summary>
    public static int Likeness(ContactProfile a, ContactProfile b)
    {
        if (a.Content.Parts.Any(p => p.Substance.Name != "water" && b.Content.Parts.Any(q => q.Substance.Name == p.Substance.Name)))
            return SameSubstance;
        return Math.Min(MostOfFamilies, a.Families.Count(f => b.Carries(f.Family.Key)));
    }
}
