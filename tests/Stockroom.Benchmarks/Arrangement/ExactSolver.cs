using Google.OrTools.Sat;
using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Benchmarks.Arrangement;

/// <summary>What the exact solver found in its time.</summary>
/// <param name="Left">Containers left in its best answer.</param>
/// <param name="Moved">Containers moved in its best answer.</param>
/// <param name="BoundLeft">No answer leaves fewer.</param>
/// <param name="BoundMoved">No answer that leaves so few moves fewer.</param>
/// <param name="IsProven">True where its answer is the optimum.</param>
internal sealed record ExactAnswer(int Left, int Moved, int BoundLeft, int BoundMoved, bool IsProven);

/// <summary>
/// The arrangement as a constraint model: fewest left, then fewest moved; the order of the moves is not asked for, so that its
/// bound holds for every plan. Built from the checker's reading of pairs, not from the planner's tables.
/// </summary>
internal sealed class ExactSolver
{
    private readonly Shelving _shelving;
    private readonly PairJudge _judge = new();
    private readonly CpModel _model = new();
    private readonly Dictionary<(int Thing, int Spot), BoolVar> _at = [];
    private readonly BoolVar[] _left;
    private readonly int[] _home;
    private readonly int[] _group;
    private readonly List<Thing> _members = [];
    private readonly List<int>[] _cabinets;
    private readonly HashSet<(int, int)> _apart = [];
    private readonly List<(BoolVar Brought, SpotLimit Limit)> _brought = [];
    private readonly Dictionary<(int Group, int Spot), BoolVar> _atSpot = [];
    private readonly Dictionary<(int Group, int Cabinet), BoolVar> _inCabinet = [];
    private readonly Dictionary<(int Group, int Spot), BoolVar> _movedTo = [];
    private readonly Dictionary<(int Group, int Spot), BoolVar> _leftAt = [];

    private ExactSolver(Shelving shelving)
    {
        _shelving = shelving;
        var spots = shelving.Spots.Select((s, q) => (s.Id, q)).ToDictionary(s => s.Id, s => s.q, StringComparer.Ordinal);
        _home = [.. shelving.Things.Select(t => t.Spot is null ? -1 : spots[t.Spot])];
        _left = [.. shelving.Things.Select(t => _model.NewBoolVar($"left {t.Key}"))];
        var groups = new Dictionary<(string, bool, bool), int>();
        _group = [.. shelving.Things.Select(GroupOf)];
        _cabinets = [.. shelving.Spots.Select((s, q) => (Cabinet: $"{s.Stand.Room?.Id}|{s.Stand.Cabinet?.Id}", q)).GroupBy(s => s.Cabinet, s => s.q).Select(g => g.ToList())];

        int GroupOf(Thing thing)
        {
            if (!groups.TryGetValue((thing.Label, thing.IsFlameSealed, thing.IsInOwnPacking), out var group))
            {
                groups[(thing.Label, thing.IsFlameSealed, thing.IsInOwnPacking)] = group = _members.Count;
                _members.Add(thing);
            }

            return group;
        }
    }

    /// <summary>Solves for so many seconds, beginning at a plan.</summary>
    public static ExactAnswer Solve(Shelving shelving, double seconds, Plan hint)
    {
        var exact = new ExactSolver(shelving);
        exact.Places();
        exact.Occupied();
        exact.KeepApart();
        exact.Cliques();
        exact.KeepFromWhatIsLeft();
        exact.Limits();
        exact.Hint(hint);
        return exact.Run(seconds);
    }

    private void Places()
    {
        for (var i = 0; i < _shelving.Things.Count; i++)
        {
            var thing = _shelving.Things[i];
            var choices = new List<ILiteral> { _left[i] };
            for (var q = 0; q < _shelving.Spots.Count; q++)
            {
                var fit = PlaceFit.Default.Of(thing, _shelving.Spots[q]);
                var may = q == _home[i] ? !fit.MustLeave : !thing.Stays && _shelving.Spots[q].IsOffered && fit.IsOffered;
                if (may)
                    choices.Add(_at[(i, q)] = _model.NewBoolVar(""));
            }

            _model.AddExactlyOne(choices);
        }
    }

    private void Occupied()
    {
        var cabinetOf = new int[_shelving.Spots.Count];
        for (var c = 0; c < _cabinets.Length; c++)
        {
            foreach (var q in _cabinets[c])
                cabinetOf[q] = c;
        }

        foreach (var ((i, q), at) in _at)
        {
            var g = _group[i];
            _model.AddImplication(at, Var(_atSpot, (g, q)));
            _model.AddImplication(at, Var(_inCabinet, (g, cabinetOf[q])));
            if (q != _home[i])
                _model.AddImplication(at, Var(_movedTo, (g, q)));
        }

        for (var i = 0; i < _left.Length; i++)
        {
            if (_home[i] >= 0)
                _model.AddImplication(_left[i], Var(_leftAt, (_group[i], _home[i])));
        }
    }

    private BoolVar Var<T>(Dictionary<T, BoolVar> vars, T key)
        where T : notnull
    {
        if (!vars.TryGetValue(key, out var variable))
            vars[key] = variable = _model.NewBoolVar("");
        return variable;
    }

    private bool Clashes(int g, int p, int h, int q) => PairReading.Missing(_members[g], _shelving.Spots[p], _members[h], _shelving.Spots[q], _judge) > 0;

    private bool MayClash(int g, int h) => !_judge.Judge(_members[g].Profile, _members[h].Profile).IsFree;

    // Said of whole cabinets where it holds for them, else of spots.
    private void KeepApart()
    {
        for (var g = 0; g < _members.Count; g++)
        {
            for (var h = g; h < _members.Count; h++)
            {
                if (!MayClash(g, h))
                    continue;
                for (var c = 0; c < _cabinets.Length; c++)
                {
                    for (var d = 0; d < _cabinets.Length; d++)
                    {
                        if (_shelving.Spots[_cabinets[c][0]].Stand.Room?.Id == _shelving.Spots[_cabinets[d][0]].Stand.Room?.Id)
                            KeepApart(g, c, h, d);
                    }
                }
            }
        }
    }

    private void KeepApart(int g, int c, int h, int d)
    {
        if (!_inCabinet.TryGetValue((g, c), out var one) || !_inCabinet.TryGetValue((h, d), out var other))
            return;
        var rows = _cabinets[c].ConvertAll(p => _cabinets[d].FindAll(q => Clashes(g, p, h, q)));
        if (rows.TrueForAll(r => r.Count == _cabinets[d].Count))
        {
            if (g != h || c != d)
                _apart.Add((one.Index, other.Index));
            return;
        }

        for (var k = 0; k < rows.Count; k++)
        {
            if (!_atSpot.TryGetValue((g, _cabinets[c][k]), out var here))
                continue;
            if (rows[k].Count == _cabinets[d].Count)
            {
                _model.AddAtMostOne([here, other]);
                continue;
            }

            foreach (var q in rows[k])
            {
                if (_atSpot.TryGetValue((h, q), out var there))
                    _model.AddAtMostOne([here, there]);
            }
        }
    }

    // Pairs of which no two go together are said at once, as large as they can be had: the bound is much better for it.
    private void Cliques()
    {
        var variables = _inCabinet.Values.ToDictionary(v => v.Index);
        var foes = variables.Keys.ToDictionary(v => v, _ => new HashSet<int>());
        foreach (var (a, b) in _apart)
        {
            foes[a].Add(b);
            foes[b].Add(a);
        }

        var said = new HashSet<(int, int)>();
        foreach (var (a, b) in _apart.Order())
        {
            if (said.Contains((a, b)))
                continue;
            List<int> clique = [a, b];
            foreach (var v in foes[a].Where(foes[b].Contains).Order())
            {
                if (clique.TrueForAll(foes[v].Contains))
                    clique.Add(v);
            }

            foreach (var v in clique)
                said.UnionWith(clique.Select(w => (v, w)));
            _model.AddAtMostOne(clique.Select(v => (ILiteral)variables[v]));
        }
    }

    private void KeepFromWhatIsLeft()
    {
        foreach (var ((g, p), left) in _leftAt)
        {
            foreach (var ((h, q), moved) in _movedTo)
            {
                if (MayClash(g, h) && Clashes(g, p, h, q))
                    _model.AddAtMostOne([left, moved]);
            }
        }
    }

    private bool Covers(SpotLimit limit, int spot) => spot >= 0 && _shelving.Spots[spot].Within.Contains(limit.Place, StringComparer.Ordinal);

    private void Limits()
    {
        foreach (var limit in _shelving.Limits)
        {
            long Use(int i) => _shelving.Things[i].Burden.Of(limit.Measure) ?? 0;
            var inside = _at.Where(a => Covers(limit, a.Key.Spot) && Use(a.Key.Thing) > 0).ToList();
            var placed = LinearExpr.Sum(inside.Select(a => a.Value * Use(a.Key.Thing)));
            _model.Add(placed <= limit.Most);
            var brought = _model.NewBoolVar("");
            _brought.Add((brought, limit));
            foreach (var a in inside.Where(a => !Covers(limit, _home[a.Key.Thing])))
                _model.AddImplication(a.Value, brought);
            var staying = Enumerable.Range(0, _left.Length).Where(i => Covers(limit, _home[i]) && Use(i) > 0).ToList();
            var all = placed + LinearExpr.Sum(staying.Select(i => _left[i] * Use(i)));
            var slack = staying.Sum(Use);
            _model.Add(all <= limit.Most + slack - (slack * brought));
        }
    }

    private void Hint(Plan plan)
    {
        var end = plan.Moves.ToLookup(m => m.Key).ToDictionary(g => g.Key, g => g.Last().To, StringComparer.Ordinal);
        var left = plan.Left.Select(l => l.Key).ToHashSet(StringComparer.Ordinal);
        bool IsAt(int i, int q) => !left.Contains(_shelving.Things[i].Key) && _shelving.Spots[q].Id == end.GetValueOrDefault(_shelving.Things[i].Key, _shelving.Things[i].Spot!);
        var things = _group.Select((g, i) => (g, i)).ToLookup(t => t.g, t => t.i);
        for (var i = 0; i < _left.Length; i++)
            _model.AddHint(_left[i], left.Contains(_shelving.Things[i].Key));
        foreach (var ((i, q), at) in _at)
            _model.AddHint(at, IsAt(i, q));
        foreach (var ((g, q), at) in _atSpot)
            _model.AddHint(at, things[g].Any(i => IsAt(i, q)));
        foreach (var ((g, c), at) in _inCabinet)
            _model.AddHint(at, things[g].Any(i => _cabinets[c].Any(q => IsAt(i, q))));
        foreach (var ((g, q), moved) in _movedTo)
            _model.AddHint(moved, things[g].Any(i => q != _home[i] && IsAt(i, q)));
        foreach (var (brought, limit) in _brought)
            _model.AddHint(brought, _at.Keys.Any(a => IsAt(a.Thing, a.Spot) && Covers(limit, a.Spot) && !Covers(limit, _home[a.Thing])));
        foreach (var ((g, q), stays) in _leftAt)
            _model.AddHint(stays, things[g].Any(i => q == _home[i] && left.Contains(_shelving.Things[i].Key)));
    }

    private ExactAnswer Run(double seconds)
    {
        var weight = _left.Length + 1L;
        var moved = _at.Where(a => a.Key.Spot != _home[a.Key.Thing]).Select(a => a.Value).ToList();
        _model.Minimize((LinearExpr.Sum(_left) * weight) + LinearExpr.Sum(moved));
        var solver = new CpSolver { StringParameters = $"max_time_in_seconds:{seconds} num_workers:4 random_seed:1 symmetry_level:0 cp_model_probing_level:0" };
        var status = solver.Solve(_model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return new ExactAnswer(-1, -1, 0, 0, false);
        var bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        return new ExactAnswer(
            _left.Count(l => solver.BooleanValue(l)), moved.Count(m => solver.BooleanValue(m)),
            (int)(bound / weight), (int)(bound % weight), status == CpSolverStatus.Optimal);
    }
}
