namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// The fewest things that must leave their homes so that what stays no longer clashes: a vertex cover of the clashes as
/// things stand. It bounds every plan from below, and what it names is where a search begins.
/// </summary>
internal sealed class HomeCover
{
    private const long StayWeight = 1_000_000;

    private readonly Layout _layout;
    private readonly List<List<int>> _nodes = [];
    private readonly List<List<int>> _edges = [];
    private readonly List<int> _mustLeave = [];
    private readonly List<int> _homeless = [];

    private HomeCover(Layout layout) => _layout = layout;

    /// <summary>Fewest that must be left because neither of two may be moved.</summary>
    public int LeastLeft { get; private set; }

    /// <summary>Fewest that must be moved where no more than that are left; what has no home yet included.</summary>
    public int LeastMoved { get; private set; }

    /// <summary>Things whose going would settle all clashes.</summary>
    public IReadOnlyList<int> Leaving { get; private set; } = [];

    public static HomeCover Of(Layout layout)
    {
        var cover = new HomeCover(layout);
        cover.MakeNodes();
        cover.MakeEdges();
        cover.Solve();
        return cover;
    }

    // Things of one group at one home act as one; where they clash among themselves each is a node of its own.
    private void MakeNodes()
    {
        var known = new Dictionary<(int Group, int Home, bool Stays), List<int>>();
        for (var i = 0; i < _layout.Things; i++)
        {
            var (g, home) = (_layout.Group[i], _layout.Home[i]);
            if (home < 0)
            {
                _homeless.Add(i);
                continue;
            }

            if (_layout.MustLeave(g, home))
            {
                _mustLeave.Add(i);
                continue;
            }

            var key = (g, home, _layout.Stays[i]);
            if (!_layout.Clashes(g, home, g, home) && known.TryGetValue(key, out var node))
            {
                node.Add(i);
                continue;
            }

            known[key] = node = [i];
            _nodes.Add(node);
        }
    }

    private void MakeEdges()
    {
        var bySpot = Enumerable.Range(0, _layout.Spots).Select(_ => new List<int>()).ToArray();
        for (var v = 0; v < _nodes.Count; v++)
        {
            bySpot[_layout.Home[_nodes[v][0]]].Add(v);
            _edges.Add([]);
        }

        for (var v = 0; v < _nodes.Count; v++)
        {
            var (g, p) = (_layout.Group[_nodes[v][0]], _layout.Home[_nodes[v][0]]);
            foreach (var q in _layout.Near[p])
                _edges[v].AddRange(bySpot[q].Where(w => w != v && _layout.Clashes(g, p, _layout.Group[_nodes[w][0]], q)));
        }
    }

    private void Solve()
    {
        var weights = _nodes.ConvertAll(n => n.Count * (_layout.Stays[n[0]] ? StayWeight : 1));
        var (bound, covered) = VertexCover.Of(weights, _edges);
        LeastLeft = (int)(bound / StayWeight) + _mustLeave.Concat(_homeless).Count(i => _layout.Stays[i]);
        LeastMoved = (int)(bound % StayWeight) + _mustLeave.Concat(_homeless).Count(i => !_layout.Stays[i]);
        Leaving = [.. covered.SelectMany(v => _nodes[v]).Concat(_mustLeave).Order()];
    }
}
