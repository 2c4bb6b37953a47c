using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// A shelving in numbers: things of one content are a group, every pair of groups has one need, every pair of spots one
/// nearness, and whether the two clash is looked up.
/// </summary>
internal sealed class Layout
{
    public const int Nowhere = -1;

    private const int HandsOffPoints = 20;
    private const int CrowdPoints = 25;
    private const int MostCrowd = 3;

    private readonly byte[] _needs;
    private readonly byte[] _nearness;
    private readonly byte[] _shortfalls;
    private readonly byte[] _distances;
    private readonly int[] _packed;

    public Layout(Shelving shelving, PairJudge judge, PlaceFit fit)
    {
        Shelving = shelving;
        Things = shelving.Things.Count;
        Spots = shelving.Spots.Count;
        SpotIndex = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var q = 0; q < Spots; q++)
            SpotIndex.Add(shelving.Spots[q].Id, q);
        Home = [.. shelving.Things.Select(t => t.Spot is { } spot ? SpotIndex[spot] : Nowhere)];
        Stays = [.. shelving.Things.Select(t => t.Stays)];
        (Group, Members) = Grouping(shelving, judge);
        Groups = Members.Length;
        _needs = NeedTable.Of(Members, judge);
        _nearness = NearnessTable.Of(shelving.Spots);
        _shortfalls = ShortfallTable.All;
        _packed = [.. Members.Select(m => m.IsInOwnPacking ? 1 : 0)];
        Near = [.. Enumerable.Range(0, Spots).Select(q => Enumerable.Range(0, Spots).Where(p => NearnessTable.CanClash(_nearness[(q * Spots) + p])).ToArray())];
        Foes = [.. Enumerable.Range(0, Groups).Select(g => Enumerable.Range(0, Groups).Where(h => _needs[(g * Groups) + h] != 0).ToArray())];
        Fits = [.. Members.Select(m => shelving.Spots.Select(s => fit.Of(m, s).Rank).ToArray())];
        Offered = [.. Fits.Select(f => Enumerable.Range(0, Spots).Where(q => shelving.Spots[q].IsOffered && f[q] < PlaceFit.Never).ToArray())];
        Limits = new LimitTable(shelving, Home);
        _distances = DistanceTable.Of(shelving.Spots);
        NearHandsOff = [.. shelving.Spots.Select(s => shelving.Things.Any(t => t.HandsOff is not null && t.Spot is { } spot
            && Nearness.SharesCabinet(s.Stand, shelving.Spots[SpotIndex[spot]].Stand)))];
        Crowd = Crowds();
    }

    public Shelving Shelving { get; }

    public int Things { get; }

    public int Spots { get; }

    public int Groups { get; }

    public Dictionary<string, int> SpotIndex { get; }

    /// <summary>Of each thing: its group.</summary>
    public int[] Group { get; }

    /// <summary>Of each group: one of its things.</summary>
    public Thing[] Members { get; }

    /// <summary>Of each thing: the spot it stands in, or <see cref="Nowhere"/>.</summary>
    public int[] Home { get; }

    /// <summary>Of each thing: true where it is pinned, hands off, or was found to have no safe way out.</summary>
    public bool[] Stays { get; }

    /// <summary>Of each spot: those in which something could clash with what stands in it, itself among them.</summary>
    public int[][] Near { get; }

    /// <summary>Of each group: those with which it can clash.</summary>
    public int[][] Foes { get; }

    /// <summary>Of each group and spot: how ill the spot suits it, as <see cref="PlaceFit"/> ranks it.</summary>
    public int[][] Fits { get; }

    /// <summary>Of each group: the spots it may be sent to.</summary>
    public int[][] Offered { get; }

    public LimitTable Limits { get; }

    /// <summary>Of each spot: true where something that nobody may touch stands in its cabinet.</summary>
    public bool[] NearHandsOff { get; }

    /// <summary>Of each group and spot: how much that stands there now would clash with it, and would have to leave first.</summary>
    public int[][] Crowd { get; }

    /// <summary>True where a thing was found to have no safe way to a spot.</summary>
    public HashSet<(int Thing, int Spot)> Barred { get; } = [];

    /// <summary>How little a spot suits a thing that is moved there, in points: unfit kind, long way, something untouchable near, what must leave first.</summary>
    public int Unease(int thing, int spot)
    {
        var home = Home[thing];
        var way = home < 0 ? 0 : _distances[(home * Spots) + spot];
        return (4 * Fits[Group[thing]][spot]) + way + (NearHandsOff[spot] ? HandsOffPoints : 0) + (CrowdPoints * Math.Min(MostCrowd, Crowd[Group[thing]][spot]));
    }

    /// <summary>By how many steps of the scale group g at spot p and group h at spot q stand too near; 0 where they may.</summary>
    public int Shortfall(int g, int p, int h, int q) => _shortfalls[(_needs[(g * Groups) + h] * NearnessTable.Count) + _nearness[(((((_packed[g] * 2) + _packed[h]) * Spots) + p) * Spots) + q]];

    /// <summary>True where a thing of the group must not stand at the spot, whatever stands near.</summary>
    public bool MustLeave(int g, int spot) => Fits[g][spot] == PlaceFit.MustNot;

    public bool Clashes(int g, int p, int h, int q) => Shortfall(g, p, h, q) != 0;

    private int[][] Crowds()
    {
        var crowds = Members.Select(_ => new int[Spots]).ToArray();
        for (var i = 0; i < Things; i++)
        {
            if (Home[i] < 0)
                continue;
            foreach (var g in Foes[Group[i]])
            {
                foreach (var q in Near[Home[i]])
                    crowds[g][q] += Clashes(g, q, Group[i], Home[i]) ? 1 : 0;
            }
        }

        return crowds;
    }

    private static (int[] Group, Thing[] Members) Grouping(Shelving shelving, PairJudge judge)
    {
        var known = new Dictionary<(int Profile, bool IsFlameSealed, bool IsInOwnPacking, IReadOnlyDictionary<string, Ban> Bans), int>();
        var members = new List<Thing>();
        var group = new int[shelving.Things.Count];
        for (var i = 0; i < group.Length; i++)
        {
            var thing = shelving.Things[i];
            var key = (judge.Intern(thing.Profile), thing.IsFlameSealed, thing.IsInOwnPacking, thing.Bans);
            if (!known.TryGetValue(key, out group[i]))
            {
                known[key] = group[i] = members.Count;
                members.Add(thing);
            }
        }

        return (group, [.. members]);
    }
}
