namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>A vertex cover of least weight, part by part, by branching on the busiest vertex; bounded by packing weights on edges.</summary>
internal sealed class VertexCover
{
    private const int MostBranchings = 20_000;

    private readonly IReadOnlyList<long> _weights;
    private readonly IReadOnlyList<List<int>> _edges;
    private readonly List<int> _part;
    private readonly bool[] _gone;
    private readonly long[] _slack;
    private readonly List<int> _chosen = [];
    private List<int> _best = [];
    private long _bestWeight = long.MaxValue;
    private int _branchings;

    private VertexCover(IReadOnlyList<long> weights, IReadOnlyList<List<int>> edges, List<int> part, bool[] gone, long[] slack) =>
        (_weights, _edges, _part, _gone, _slack) = (weights, edges, part, gone, slack);

    /// <summary>A bound that no cover goes below, and a cover; it has the bound's weight unless the graph was too tangled to finish.</summary>
    public static (long Bound, IReadOnlyList<int> Cover) Of(IReadOnlyList<long> weights, IReadOnlyList<List<int>> edges)
    {
        var gone = new bool[weights.Count];
        var slack = new long[weights.Count];
        var seen = new bool[weights.Count];
        long bound = 0;
        var cover = new List<int>();
        for (var v = 0; v < weights.Count; v++)
        {
            if (seen[v] || edges[v].Count == 0)
                continue;
            var search = new VertexCover(weights, edges, PartOf(v, edges, seen), gone, slack);
            var packed = search.Packed();
            search.Branch(0);
            bound += search._branchings > MostBranchings ? packed : search._bestWeight;
            cover.AddRange(search._best);
        }

        return (bound, cover);
    }

    private static List<int> PartOf(int start, IReadOnlyList<List<int>> edges, bool[] seen)
    {
        List<int> part = [start];
        seen[start] = true;
        for (var i = 0; i < part.Count; i++)
        {
            foreach (var w in edges[part[i]])
            {
                if (!seen[w])
                {
                    seen[w] = true;
                    part.Add(w);
                }
            }
        }

        return part;
    }

    private void Branch(long weight)
    {
        var busiest = Busiest();
        if (busiest < 0)
        {
            if (weight < _bestWeight)
                (_bestWeight, _best) = (weight, [.. _chosen]);
            return;
        }

        if (++_branchings > MostBranchings && _bestWeight < long.MaxValue)
            return;
        if (weight + Packed() >= _bestWeight)
            return;
        List<int> others = [.. _edges[busiest].Where(w => !_gone[w])];
        var otherWeight = others.Sum(w => _weights[w]);
        var vertexFirst = _weights[busiest] <= otherWeight;
        if (vertexFirst)
            Choose([busiest], weight + _weights[busiest]);
        Choose(others, weight + otherWeight);
        if (!vertexFirst)
            Choose([busiest], weight + _weights[busiest]);
    }

    private void Choose(List<int> vertices, long weight)
    {
        foreach (var v in vertices)
            _gone[v] = true;
        _chosen.AddRange(vertices);
        Branch(weight);
        _chosen.RemoveRange(_chosen.Count - vertices.Count, vertices.Count);
        foreach (var v in vertices)
            _gone[v] = false;
    }

    private int Busiest()
    {
        var busiest = -1;
        var most = 0;
        foreach (var v in _part)
        {
            if (_gone[v])
                continue;
            var degree = _edges[v].Count(w => !_gone[w]);
            if (degree > most)
                (busiest, most) = (v, degree);
        }

        return busiest;
    }

    // Weight laid on edges so that no vertex carries more than its own: no cover can weigh less (Bar-Yehuda and Even 1981).
    private long Packed()
    {
        foreach (var v in _part)
            _slack[v] = _weights[v];
        long sum = 0;
        foreach (var v in _part)
        {
            foreach (var w in _edges[v])
            {
                if (_gone[v] || _gone[w] || w < v)
                    continue;
                var laid = Math.Min(_slack[v], _slack[w]);
                _slack[v] -= laid;
                _slack[w] -= laid;
                sum += laid;
            }
        }

        return sum;
    }
}
