using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Tests.Arrangement;

/// <summary>The best that can be reached at all, by walking through every state that moves without harm lead to. For very small stores.</summary>
internal sealed class Exhaustive
{
    private readonly Shelving _shelving;
    private readonly PairJudge _judge = new();
    private readonly bool[,] _offered;
    private readonly bool[,] _mustLeave;

    private Exhaustive(Shelving shelving)
    {
        _shelving = shelving;
        _offered = new bool[shelving.Things.Count, shelving.Spots.Count];
        _mustLeave = new bool[shelving.Things.Count, shelving.Spots.Count];
        for (var i = 0; i < shelving.Things.Count; i++)
        {
            for (var q = 0; q < shelving.Spots.Count; q++)
            {
                var fit = PlaceFit.Default.Of(shelving.Things[i], shelving.Spots[q]);
                (_offered[i, q], _mustLeave[i, q]) = (fit.IsOffered && shelving.Spots[q].IsOffered, fit.MustLeave);
            }
        }
    }

    /// <summary>Fewest left, then fewest moved.</summary>
    public static (int Left, int Moved) Best(Shelving shelving)
    {
        var search = new Exhaustive(shelving);
        var home = shelving.Things.Select(t => t.Spot is null ? -1 : search.IndexOf(t.Spot)).ToArray();
        var seen = new HashSet<string>(StringComparer.Ordinal) { string.Join(',', home) };
        var queue = new Queue<int[]>([home]);
        var best = (Left: int.MaxValue, Moved: int.MaxValue);
        while (queue.TryDequeue(out var state))
        {
            if (search.Judge(state, home) is { } score && score.CompareTo(best) < 0)
                best = score;
            foreach (var next in search.Next(state))
            {
                if (seen.Add(string.Join(',', next)))
                    queue.Enqueue(next);
            }
        }

        return best;
    }

    private int IndexOf(string spot) => _shelving.Spots.Select((s, q) => (s.Id, q)).Single(s => s.Id == spot).q;

    private int Missing(int i, int p, int j, int q) =>
        p < 0 || q < 0 ? 0 : PairReading.Missing(_shelving.Things[i], _shelving.Spots[p], _shelving.Things[j], _shelving.Spots[q], _judge);

    private IEnumerable<int[]> Next(int[] state)
    {
        for (var i = 0; i < state.Length; i++)
        {
            if (_shelving.Things[i].Stays)
                continue;
            for (var q = 0; q < _shelving.Spots.Count; q++)
            {
                if (q == state[i] || !_offered[i, q] || Enumerable.Range(0, state.Length).Any(j => j != i && Missing(i, q, j, state[j]) > Missing(i, state[i], j, state[j])))
                    continue;
                var next = state.ToArray();
                next[i] = q;
                if (_shelving.Limits.All(l => Carried(next, l, _ => true) <= Math.Max(l.Most, Carried(state, l, _ => true))))
                    yield return next;
            }
        }
    }

    // The fewest that must be called left in a state; null where something that was moved is not safe.
    private (int Left, int Moved)? Judge(int[] state, int[] home)
    {
        var things = state.Length;
        (int, int)? best = null;
        for (var mask = 0; mask < 1 << things; mask++)
        {
            bool IsLeft(int i) => (mask & (1 << i)) != 0;
            if (!Enumerable.Range(0, things).All(i => IsLeft(i) ? state[i] == home[i] : state[i] >= 0 && !_mustLeave[i, state[i]]))
                continue;
            var isSafe = true;
            for (var i = 0; i < things && isSafe; i++)
            {
                for (var j = i + 1; j < things && isSafe; j++)
                {
                    var counts = (!IsLeft(i) || state[j] != home[j]) && (!IsLeft(j) || state[i] != home[i]);
                    isSafe = !counts || Missing(i, state[i], j, state[j]) == 0;
                }
            }

            isSafe = isSafe && _shelving.Limits.All(l => Carried(state, l, i => !IsLeft(i)) <= l.Most
                && (Carried(state, l, _ => true) <= l.Most || !Enumerable.Range(0, things).Any(i => IsBrought(i, state, home, l))));
            var score = (int.PopCount(mask), Enumerable.Range(0, things).Count(i => state[i] != home[i]));
            if (isSafe && (best is null || score.CompareTo(best.Value) < 0))
                best = score;
        }

        return best;
    }

    private bool IsBrought(int thing, int[] state, int[] home, SpotLimit limit) =>
        state[thing] >= 0 && Covers(limit, state[thing]) && !(home[thing] >= 0 && Covers(limit, home[thing]));

    private bool Covers(SpotLimit limit, int spot) => _shelving.Spots[spot].Within.Contains(limit.Place, StringComparer.Ordinal);

    private long Carried(int[] state, SpotLimit limit, Func<int, bool> counts) => Enumerable.Range(0, state.Length)
        .Where(i => counts(i) && state[i] >= 0 && Covers(limit, state[i]))
        .Sum(i => _shelving.Things[i].Burden.Of(limit.Measure) ?? 0);
}
