namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>One step of an order: a thing, the spot it leaves and the spot it is put in.</summary>
internal readonly record struct OrderedStep(int Thing, int From, int To, bool IsParked);

/// <summary>
/// Finds an order of moves in which no step makes anything worse: nothing is put nearer to anything than it stood, unless
/// it may stand there, and no limit is passed further. What blocks each other in a ring is parked on a free spot; where one parking
/// does not untie it, every way about is tried.
/// </summary>
internal sealed class MoveOrder
{
    private const int FewMoves = 8;

    private readonly Layout _layout;
    private readonly int[] _target;
    private readonly int[] _at;
    private readonly List<int>[] _standing;
    private readonly long[] _carried;
    private readonly List<OrderedStep> _steps = [];
    private readonly SortedSet<int> _pending = [];

    private MoveOrder(Layout layout, int[] target)
    {
        _layout = layout;
        _target = target;
        _at = [.. layout.Home];
        _standing = [.. Enumerable.Range(0, layout.Spots).Select(_ => new List<int>())];
        _carried = [.. layout.Limits.AtHome];
        for (var i = 0; i < layout.Things; i++)
        {
            if (_at[i] >= 0)
                _standing[_at[i]].Add(i);
            if (target[i] != Layout.Nowhere && target[i] != layout.Home[i])
                _pending.Add(i);
        }
    }

    /// <summary>The steps, and what could not be brought to its spot without making something worse on the way.</summary>
    /// <param name="layout">The shelving.</param>
    /// <param name="target">Of each thing: where it is to stand; <see cref="Layout.Nowhere"/> where it is left.</param>
    public static (IReadOnlyList<OrderedStep> Steps, IReadOnlyList<int> Stuck) Of(Layout layout, int[] target)
    {
        var order = new MoveOrder(layout, target);
        order.Run();
        return (order._steps, [.. order._pending]);
    }

    // What goes early may stand in the way of a parking later: where that ends in a knot of few moves, all of them are thought over anew.
    private void Run()
    {
        int[] all = [.. _pending];
        RunStraight();
        if (_pending.Count == 0 || _pending.Count == all.Length || all.Length > FewMoves)
            return;
        TakeBack(0);
        _pending.UnionWith(all);
        if (!GoRoundAbout())
            RunStraight();
    }

    private void RunStraight()
    {
        while (_pending.Count > 0)
        {
            if (!MakeAllThatMay() && !ParkSomething() && !GoRoundAbout())
                return;
        }
    }

    private bool MakeAllThatMay()
    {
        var any = false;
        for (var again = true; again;)
        {
            again = false;
            foreach (var i in Sorted())
            {
                if (!MayGo(i, _target[i]))
                    continue;
                Go(i, _target[i], isParked: false);
                _pending.Remove(i);
                any = again = true;
            }
        }

        return any;
    }

    // What stands worst goes first.
    private List<int> Sorted() => [.. _pending.OrderByDescending(Trouble)];

    private int Trouble(int thing)
    {
        if (_at[thing] < 0)
            return 0;
        var sum = 0;
        foreach (var q in _layout.Near[_at[thing]])
        {
            foreach (var j in _standing[q])
            {
                if (j != thing)
                    sum += _layout.Shortfall(_layout.Group[thing], _at[thing], _layout.Group[j], q);
            }
        }

        return sum;
    }

    private bool MayGo(int thing, int spot) => !Blockers(thing, spot).Any() && !WouldOverload(thing, spot);

    // Things that would have this one nearer than now, and nearer than they may.
    private IEnumerable<int> Blockers(int thing, int spot)
    {
        var g = _layout.Group[thing];
        var now = _at[thing];
        foreach (var q in _layout.Near[spot])
        {
            foreach (var j in _standing[q])
            {
                if (j == thing)
                    continue;
                var then = _layout.Shortfall(g, spot, _layout.Group[j], q);
                if (then > 0 && (now < 0 || then > _layout.Shortfall(g, now, _layout.Group[j], q)))
                    yield return j;
            }
        }
    }

    private bool WouldOverload(int thing, int spot)
    {
        foreach (var c in _layout.Limits.OfSpot[spot])
        {
            if (IsPassed(c, thing))
                return true;
        }

        return false;
    }

    private bool IsPassed(int limit, int thing)
    {
        var use = _layout.Limits.Use(limit, thing);
        return use > 0 && !_layout.Limits.Covers(limit, _at[thing]) && _carried[limit] + use > _layout.Limits.Most[limit];
    }

    private void Go(int thing, int spot, bool isParked)
    {
        _steps.Add(new OrderedStep(thing, _at[thing], spot, isParked));
        Put(thing, spot);
    }

    private void Put(int thing, int spot)
    {
        var from = _at[thing];
        if (from >= 0)
            _standing[from].Remove(thing);
        foreach (var c in _layout.Limits.At(from))
            _carried[c] -= _layout.Limits.Use(c, thing);
        if (spot >= 0)
            _standing[spot].Add(thing);
        foreach (var c in _layout.Limits.At(spot))
            _carried[c] += _layout.Limits.Use(c, thing);
        _at[thing] = spot;
    }

    // Everything that is still to go, by whatever way about leads there: tried in full where there is little of it.
    private bool GoRoundAbout()
    {
        int[] going = [.. _pending];
        var way = RoundAbout.Find([.. going.Select(i => _at[i])], [.. going.Select(i => _target[i])], k => _layout.Offered[_layout.Group[going[k]]], (k, spot) => Put(going[k], spot), (k, spot) => MayGo(going[k], spot));
        if (way is null)
            return false;
        foreach (var (k, spot) in way)
            Go(going[k], spot, isParked: spot != _target[going[k]]);
        _pending.Clear();
        return true;
    }

    // The first thing whose way can be cleared by parking the fewest others, each once at most.
    private bool ParkSomething()
    {
        foreach (var most in (int[])[1, 2, 3, int.MaxValue])
        {
            foreach (var i in Sorted())
            {
                var inTheWay = InTheWay(i);
                if (inTheWay is { Count: > 0 } && inTheWay.Count <= most && TryPark(inTheWay, i))
                    return true;
            }
        }

        return false;
    }

    // Pending things that keep another from its spot; null where something stands there that does not go.
    private List<int>? InTheWay(int thing)
    {
        var spot = _target[thing];
        var blockers = Blockers(thing, spot).ToList();
        foreach (var c in _layout.Limits.OfSpot[spot])
        {
            if (!blockers.Exists(j => _layout.Limits.Covers(c, _at[j])) && IsPassed(c, thing))
            {
                var any = _pending.FirstOrDefault(j => j != thing && _layout.Limits.Covers(c, _at[j]) && _layout.Limits.Use(c, j) > 0, -1);
                if (any < 0)
                    return null;
                blockers.Add(any);
            }
        }

        return blockers.TrueForAll(j => _pending.Contains(j) && !_steps.Exists(s => s.IsParked && s.Thing == j)) ? blockers : null;
    }

    private bool TryPark(List<int> things, int whoseWay)
    {
        var begun = _steps.Count;
        foreach (var j in things)
        {
            var free = ParkingFor(j, whoseWay);
            if (free < 0)
            {
                TakeBack(begun);
                return false;
            }

            Go(j, free, isParked: true);
        }

        if (MayGo(whoseWay, _target[whoseWay]))
            return true;
        TakeBack(begun);
        return false;
    }

    private int ParkingFor(int thing, int whoseWay)
    {
        var g = _layout.Group[thing];
        var goal = _target[whoseWay];
        return _layout.Offered[g]
            .Where(q => q != _at[thing] && !_layout.Clashes(_layout.Group[whoseWay], goal, g, q) && MayGo(thing, q))
            .OrderBy(q => _layout.Unease(thing, q))
            .FirstOrDefault(-1);
    }

    private void TakeBack(int begun)
    {
        while (_steps.Count > begun)
        {
            var last = _steps[^1];
            Put(last.Thing, last.From);
            _steps.RemoveAt(_steps.Count - 1);
        }
    }
}
