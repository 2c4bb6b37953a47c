namespace Stockroom.Assessment.Neighbours;

/// <summary>Finds what stands nearer than it may: one finding a cause and place, not one a pair.</summary>
public sealed class NeighbourFinder
{
    private readonly PairJudge _judge;

    public NeighbourFinder(PairJudge? judge = null) => _judge = judge ?? new PairJudge();

    /// <summary>All findings, the worst first. Things without a place are left out: see <see cref="WithoutPlace"/>.</summary>
    public IReadOnlyList<Finding> Find(IEnumerable<ShelfItem> items)
    {
        var conflicts = new List<Conflict>();
        foreach (var room in Clusters(items).GroupBy(c => c.Stand.Room!.Id, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            foreach (var cabinet in room.GroupBy(c => c.Stand.Cabinet?.Id ?? "", StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
                AddWithin(ByContent(cabinet), conflicts);
            AddAcross(ByContent(room), conflicts);
        }

        return FindingWriter.Write(conflicts);
    }

    /// <summary>Things that have no place, so that nothing can be said of their neighbours.</summary>
    public static IReadOnlyList<ShelfItem> WithoutPlace(IEnumerable<ShelfItem> items) => [.. items.Where(i => !i.Stand.IsPlaced)];

    private List<Cluster> Clusters(IEnumerable<ShelfItem> items) =>
        [.. items
            .Where(i => i.Stand.IsPlaced)
            .OrderBy(i => i.Key, StringComparer.Ordinal)
            .GroupBy(i => (Number: _judge.Intern(i.Profile), i.Stand, i.IsFlameSealed))
            .Select((g, index) => new Cluster(index, g.Key.Number, g.First().Profile, g.Key.Stand, g.Key.IsFlameSealed, [.. g]))];

    private static List<List<Cluster>> ByContent(IEnumerable<Cluster> clusters) => [.. clusters.GroupBy(c => c.ProfileNumber).Select(g => g.ToList())];

    // Each two contents are asked about once, however many containers hold them and wherever these stand.
    private void AddWithin(List<List<Cluster>> contents, List<Conflict> conflicts)
    {
        for (var i = 0; i < contents.Count; i++)
        {
            for (var j = i; j < contents.Count; j++)
            {
                if (_judge.MayConflict(contents[i][0].Profile, contents[j][0].Profile))
                    Add(contents[i], contents[j], (a, b) => true, conflicts);
            }
        }
    }

    // From one cabinet to another only what must stand far apart is still at odds.
    private void AddAcross(List<List<Cluster>> contents, List<Conflict> conflicts)
    {
        for (var i = 0; i < contents.Count; i++)
        {
            for (var j = i; j < contents.Count; j++)
            {
                if (_judge.MustStandFarApart(contents[i][0].Profile, contents[j][0].Profile))
                    Add(contents[i], contents[j], (a, b) => a.Cabinet?.Id != b.Cabinet?.Id, conflicts);
            }
        }
    }

    private void Add(List<Cluster> one, List<Cluster> other, Func<Stand, Stand, bool> concerns, List<Conflict> conflicts)
    {
        var judgement = _judge.Judge(one[0].Profile, one[0].ProfileNumber, other[0].Profile, other[0].ProfileNumber);
        if (judgement.IsFree)
            return;
        var spoken = new SpokenReasons(judgement);
        var same = ReferenceEquals(one, other);
        for (var i = 0; i < one.Count; i++)
        {
            for (var j = same ? i : 0; j < other.Count; j++)
            {
                var (a, b) = (one[i], other[j]);
                var alone = ReferenceEquals(a, b) && a.Items.Count == 1;
                if (!alone && concerns(a.Stand, b.Stand) && Conflict.Between(a, b, judgement, spoken) is { } conflict)
                    conflicts.Add(conflict);
            }
        }
    }
}
