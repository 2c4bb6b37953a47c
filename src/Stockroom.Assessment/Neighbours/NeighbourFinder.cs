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
            var cabinets = room
                .GroupBy(c => c.Stand.Cabinet?.Id ?? "", StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => g.ToList())
                .ToList();
            foreach (var cabinet in cabinets)
                AddWithin(cabinet, conflicts);
            AddAcross(cabinets, conflicts);
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

    private void AddWithin(List<Cluster> cabinet, List<Conflict> conflicts)
    {
        for (var i = 0; i < cabinet.Count; i++)
        {
            for (var j = i; j < cabinet.Count; j++)
            {
                if (i != j || cabinet[i].Items.Count > 1)
                    Add(cabinet[i], cabinet[j], conflicts);
            }
        }
    }

    // From one cabinet to another only what must stand far apart is still at odds.
    private void AddAcross(List<List<Cluster>> cabinets, List<Conflict> conflicts)
    {
        var needy = cabinets.ConvertAll(c => c.FindAll(x => _judge.MayNeedToStandFarApart(x.Profile)));
        for (var i = 0; i < cabinets.Count; i++)
        {
            for (var j = i + 1; j < cabinets.Count; j++)
            {
                foreach (var a in needy[i])
                {
                    foreach (var b in needy[j])
                        Add(a, b, conflicts);
                }
            }
        }
    }

    private void Add(Cluster a, Cluster b, List<Conflict> conflicts)
    {
        if (!_judge.MayConflict(a.Profile, b.Profile))
            return;
        var judgement = _judge.Judge(a.Profile, a.ProfileNumber, b.Profile, b.ProfileNumber);
        if (Conflict.Between(a, b, judgement) is { } conflict)
            conflicts.Add(conflict);
    }
}
