namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// Where everything would stand, with counts kept up to date of what it would clash with there: trying a thing at a spot
/// costs a few additions, whatever the size of the store.
/// </summary>
/// <remarks>
/// A thing is at a spot, or left: then it stays at home, the others need not keep from it where they stand already, but
/// nothing that is moved may come near it. Things without a home are left until they are put somewhere.
/// </remarks>
internal sealed class Placement
{
    private readonly int[] _placed;
    private readonly int[] _moved;
    private readonly int[] _left;
    private readonly long[] _used;
    private readonly long[] _usedByLeft;
    private readonly int[] _brought;
    private readonly int _spots;

    /// <summary>Everything at home; what has no home is left.</summary>
    public Placement(Layout layout)
    {
        Layout = layout;
        _spots = layout.Spots;
        _placed = new int[layout.Groups * layout.Spots];
        _moved = new int[_placed.Length];
        _left = new int[_placed.Length];
        _used = new long[layout.Limits.Count];
        _usedByLeft = new long[layout.Limits.Count];
        _brought = new int[layout.Limits.Count];
        At = [.. layout.Home.Select(_ => Layout.Nowhere)];
        for (var i = 0; i < layout.Things; i++)
            Enter(i, layout.Home[i]);
    }

    public Layout Layout { get; }

    /// <summary>Of each thing: its spot, or <see cref="Layout.Nowhere"/> where it is left.</summary>
    public int[] At { get; }

    public int LeftCount { get; private set; }

    public int MovedCount { get; private set; }

    /// <summary>Pairs that clash, what is left at home against what is moved near it included, and things that must not stand where they do.</summary>
    public int Clashes { get; private set; }

    /// <summary>How far limits are passed, in rough steps; 0 where all are kept.</summary>
    public int Overload { get; private set; }

    /// <summary>How ill the new spots suit what is moved, all together.</summary>
    public int Misfit { get; private set; }

    public bool IsSafe => Clashes == 0 && Overload == 0;

    public bool IsMoved(int thing) => At[thing] != Layout.Nowhere && At[thing] != Layout.Home[thing];

    public bool IsLeft(int thing) => At[thing] == Layout.Nowhere;

    /// <summary>Pairs in which a thing would clash if it were at a spot, or left, and all others as they are.</summary>
    public int ClashesIf(int thing, int spot)
    {
        var g = Layout.Group[thing];
        var home = Layout.Home[thing];
        var now = At[thing];
        if (spot == Layout.Nowhere)
        {
            if (home < 0)
                return 0;
            var near = _moved[(g * _spots) + home];
            return now >= 0 && now != home && Layout.Clashes(g, home, g, now) ? near - 1 : near;
        }

        var count = _placed[(g * _spots) + spot];
        if (now >= 0 && Layout.Clashes(g, spot, g, now))
            count--;
        if (spot == home)
            return Layout.MustLeave(g, spot) ? count + 1 : count;
        count += _left[(g * _spots) + spot];
        return now < 0 && home >= 0 && Layout.Clashes(g, spot, g, home) ? count - 1 : count;
    }

    /// <summary>True where a limit that counts for the thing's spot is passed.</summary>
    public bool IsOverloaded(int thing)
    {
        foreach (var c in Layout.Limits.At(At[thing]))
        {
            if (Layout.Limits.Use(c, thing) > 0 && Over(c) > 0)
                return true;
        }

        return false;
    }

    /// <summary>What a limit's place carries, what is left in it included.</summary>
    public long Carried(int limit) => _used[limit] + _usedByLeft[limit];

    /// <summary>By how much the overload would change if a thing were put at a spot, or left.</summary>
    public int OverloadChangeIf(int thing, int spot)
    {
        if (Layout.Limits.Count == 0)
            return 0;
        var now = At[thing];
        var before = Overload;
        Weigh(thing, now, -1);
        Weigh(thing, spot, 1);
        var change = Overload - before;
        Weigh(thing, spot, -1);
        Weigh(thing, now, 1);
        return change;
    }

    /// <summary>Puts a thing at a spot, or leaves it.</summary>
    public void Put(int thing, int spot)
    {
        if (At[thing] == spot)
            return;
        Clashes -= ClashesIf(thing, At[thing]);
        Leave(thing);
        At[thing] = Layout.Nowhere;
        Clashes += ClashesWithoutItself(thing, spot);
        EnterCounts(thing, spot);
    }

    public int[] Copy() => [.. At];

    /// <summary>Takes over another distribution of the same things.</summary>
    public void Take(int[] at)
    {
        for (var i = 0; i < at.Length; i++)
            Put(i, at[i]);
    }

    private void Enter(int thing, int spot)
    {
        Clashes += ClashesWithoutItself(thing, spot);
        EnterCounts(thing, spot);
    }

    private int ClashesWithoutItself(int thing, int spot)
    {
        var g = Layout.Group[thing];
        var home = Layout.Home[thing];
        if (spot == Layout.Nowhere)
            return home < 0 ? 0 : _moved[(g * _spots) + home];
        return _placed[(g * _spots) + spot] + (spot == home ? (Layout.MustLeave(g, spot) ? 1 : 0) : _left[(g * _spots) + spot]);
    }

    private void EnterCounts(int thing, int spot)
    {
        At[thing] = spot;
        Count(thing, 1);
        Weigh(thing, spot, 1);
    }

    private void Leave(int thing)
    {
        Count(thing, -1);
        Weigh(thing, At[thing], -1);
    }

    private void Count(int thing, int sign)
    {
        var spot = At[thing];
        var home = Layout.Home[thing];
        var g = Layout.Group[thing];
        if (spot == Layout.Nowhere)
        {
            LeftCount += sign;
            if (home >= 0)
                Spread(_left, g, home, sign);
            return;
        }

        Spread(_placed, g, spot, sign);
        if (spot == home)
            return;
        MovedCount += sign;
        Misfit += sign * Layout.Unease(thing, spot);
        Spread(_moved, g, spot, sign);
    }

    private void Spread(int[] counts, int h, int p, int sign)
    {
        foreach (var g in Layout.Foes[h])
        {
            foreach (var q in Layout.Near[p])
            {
                if (Layout.Clashes(g, q, h, p))
                    counts[(g * _spots) + q] += sign;
            }
        }
    }

    private void Weigh(int thing, int spot, int sign)
    {
        var limits = Layout.Limits;
        var home = Layout.Home[thing];
        foreach (var c in limits.At(spot == Layout.Nowhere ? home : spot))
        {
            var use = sign * limits.Use(c, thing);
            if (use == 0)
                continue;
            Overload -= Over(c);
            if (spot == Layout.Nowhere)
            {
                _usedByLeft[c] += use;
            }
            else
            {
                _used[c] += use;
                if (!limits.Covers(c, home))
                    _brought[c] += sign;
            }

            Overload += Over(c);
        }
    }

    // What is left counts only where something is brought to it: it cannot be helped, but it may not get worse.
    private int Over(int limit)
    {
        var most = Layout.Limits.Most[limit];
        var over = Math.Max(0, _used[limit] - most);
        if (_brought[limit] > 0)
            over = Math.Max(over, _used[limit] + _usedByLeft[limit] - most);
        return over == 0 ? 0 : 1 + (int)Math.Min(50, over * 8 / most);
    }
}
