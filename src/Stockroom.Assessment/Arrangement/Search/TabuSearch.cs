namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// Looks for the safe placement that leaves and moves fewest: each step puts the thing where the whole gains most, or
/// loses least, and forbids its return for a while; what a clash weighs swings, so that the search crosses unsafe ground and
/// comes back. After a barren stretch it starts again from the best with some places put back as they were.
/// </summary>
internal sealed class TabuSearch
{
    private const long MoveWeight = 4000;
    private const long LeftWeight = 40 * MoveWeight;
    private const long LightestClash = MoveWeight / 2;
    private const long HeaviestClash = 200 * MoveWeight;
    private const int TroubledTried = 24;
    private const int StepsBetweenReports = 1 << 18;

    private readonly Layout _layout;
    private readonly Placement _placement;
    private readonly Dice _dice = new();
    private readonly long[] _forbiddenUntil;
    private readonly List<int> _troubled = [];
    private long _clashWeight = 3 * MoveWeight;
    private long _moveWeight = MoveWeight;
    private bool _mayLeave = true;
    private long _round;
    private (int Thing, int Spot, long Value) _step;

    public TabuSearch(Placement start)
    {
        _layout = start.Layout;
        _placement = start;
        _forbiddenUntil = new long[_layout.Things * (_layout.Spots + 1)];
        BestAt = start.Copy();
        if (start.IsSafe)
            Best = Score.Of(start);
    }

    /// <summary><see cref="Score.Worst"/> until something safe was met.</summary>
    public Score Best { get; private set; } = Score.Worst;

    public int[] BestAt { get; private set; }

    /// <summary>Placements tried.</summary>
    public long Steps { get; private set; }

    /// <summary>Searches until the steps are used up, or until nothing can be better.</summary>
    /// <param name="until">Steps at which to stop.</param>
    /// <param name="patience">Steps without a gain after which it stops.</param>
    /// <param name="leastLeft">No placement leaves fewer.</param>
    /// <param name="isEnough">True for a score that cannot be beaten.</param>
    /// <param name="progress">Told now and then how far it is.</param>
    /// <param name="cancel">Stops it with an exception.</param>
    public void Run(long until, long patience, int leastLeft, Func<Score, bool> isEnough, IProgress<ArrangementProgress>? progress, CancellationToken cancel)
    {
        var barren = 0;
        var safeInARow = 0;
        var nextReport = Steps;
        var lastGain = Steps;
        while (Steps < until && Steps < lastGain + patience && !isEnough(Best))
        {
            cancel.ThrowIfCancellationRequested();
            if (Steps >= nextReport)
            {
                progress?.Report(new ArrangementProgress(Steps, Best.Left, Best.Moved));
                nextReport = Steps + StepsBetweenReports;
            }

            Steps++;
            var gained = Step();
            barren = gained ? 0 : barren + 1;
            lastGain = gained ? Steps : lastGain;
            safeInARow = _placement.IsSafe ? Math.Max(1, safeInARow + 1) : Math.Min(-1, safeInARow - 1);
            Swing(safeInARow);
            if (!_mayLeave && _placement.IsSafe)
                Ordinary();
            if (barren > (_mayLeave ? 300 + (4 * _placement.MovedCount) : 1000 + (10 * _layout.Things)))
            {
                StartAgain(Best.Left > leastLeft);
                barren = 0;
            }
        }
    }

    // One step; true where it led to the best so far.
    private bool Step()
    {
        _round++;
        _step = (-1, 0, long.MaxValue);
        Gather();
        var tried = Math.Min(_troubled.Count, TroubledTried);
        for (var k = 0; k < tried; k++)
        {
            if (_troubled.Count > TroubledTried)
            {
                var other = k + _dice.Below(_troubled.Count - k);
                (_troubled[k], _troubled[other]) = (_troubled[other], _troubled[k]);
            }

            TryEverywhere(_troubled[k]);
        }

        if (_step.Thing < 0)
            return false;
        Make(_step.Thing, _step.Spot);
        if (!_placement.IsSafe || !(Score.Of(_placement) < Best))
            return false;
        Best = Score.Of(_placement);
        BestAt = _placement.Copy();
        return true;
    }

    private void Gather()
    {
        _troubled.Clear();
        for (var i = 0; i < _layout.Things; i++)
        {
            if (_placement.IsLeft(i) || _placement.ClashesIf(i, _placement.At[i]) > 0 || _placement.IsOverloaded(i))
            {
                _troubled.Add(i);
            }
            else if (_placement.IsMoved(i))
            {
                Try(i, _layout.Home[i]);
                var offered = _layout.Offered[_layout.Group[i]];
                if (offered.Length > 0)
                    Try(i, offered[_dice.Below(offered.Length)]);
            }
        }
    }

    private void TryEverywhere(int thing)
    {
        if (_mayLeave)
            Try(thing, Layout.Nowhere);
        if (_layout.Home[thing] != Layout.Nowhere)
            Try(thing, _layout.Home[thing]);
        if (_layout.Stays[thing])
            return;
        foreach (var spot in _layout.Offered[_layout.Group[thing]])
            Try(thing, spot);
    }

    private void Try(int thing, int spot)
    {
        var now = _placement.At[thing];
        if (spot == now || (_layout.Barred.Count > 0 && _layout.Barred.Contains((thing, spot))))
            return;
        Steps++;
        var home = _layout.Home[thing];
        var clashes = _placement.ClashesIf(thing, spot) - _placement.ClashesIf(thing, now) + _placement.OverloadChangeIf(thing, spot);
        var value = (_clashWeight * clashes) + Cost(thing, spot, home) - Cost(thing, now, home);
        if (value >= _step.Value)
            return;
        if (_round < _forbiddenUntil[(thing * (_layout.Spots + 1)) + spot + 1] && !WouldBeBest(clashes, thing, spot, now, home))
            return;
        _step = (thing, spot, value);
    }

    private long Cost(int thing, int spot, int home)
    {
        if (spot == Layout.Nowhere)
            return LeftWeight;
        return spot == home ? 0 : _moveWeight + _layout.Unease(thing, spot);
    }

    private bool WouldBeBest(int clashes, int thing, int spot, int now, int home)
    {
        if (_placement.Clashes + _placement.Overload + clashes != 0)
            return false;
        var left = _placement.LeftCount + (spot < 0 ? 1 : 0) - (now < 0 ? 1 : 0);
        var moved = _placement.MovedCount + (spot >= 0 && spot != home ? 1 : 0) - (now >= 0 && now != home ? 1 : 0);
        var misfit = _placement.Misfit + Unease(thing, spot, home) - Unease(thing, now, home);
        return new Score(left, moved, misfit) < Best;
    }

    private int Unease(int thing, int spot, int home) => spot < 0 || spot == home ? 0 : _layout.Unease(thing, spot);

    private void Make(int thing, int spot)
    {
        var now = _placement.At[thing];
        _placement.Put(thing, spot);
        _forbiddenUntil[(thing * (_layout.Spots + 1)) + now + 1] = _round + 6 + _dice.Below(10) + (_troubled.Count / 4);
    }

    private void Swing(int safeInARow)
    {
        if (safeInARow <= -8 && safeInARow % 8 == 0)
            _clashWeight = Math.Min(HeaviestClash, _clashWeight * 5 / 4);
        else if (safeInARow >= 4 && safeInARow % 4 == 0)
            _clashWeight = Math.Max(LightestClash, _clashWeight * 4 / 5);
    }

    private void Ordinary()
    {
        _mayLeave = true;
        _moveWeight = MoveWeight;
        _clashWeight = 3 * MoveWeight;
    }

    // Where things are left that may not have to be, every other start seeks a place for all of them first, and counts moves later.
    private void StartAgain(bool seekPlaceForAll)
    {
        _placement.Take(BestAt);
        Ordinary();
        if (_layout.Spots == 0)
            return;
        if (seekPlaceForAll && _dice.Below(2) == 0)
        {
            _mayLeave = false;
            _moveWeight = MoveWeight / 8;
            PlaceAll();
            return;
        }

        if (_dice.Below(3) == 0)
        {
            PutBack(i => _placement.IsMoved(i) && _dice.Below(6) == 0);
            return;
        }

        var near = _layout.Near[_dice.Below(_layout.Spots)];
        PutBack(i => _placement.At[i] != _layout.Home[i] && (near.Contains(_layout.Home[i]) || near.Contains(_placement.At[i])));
    }

    private void PlaceAll()
    {
        for (var i = 0; i < _layout.Things; i++)
        {
            if (!_placement.IsLeft(i))
                continue;
            var offered = _layout.Offered[_layout.Group[i]];
            if (_layout.Home[i] >= 0)
                _placement.Put(i, _layout.Home[i]);
            else if (offered.Length > 0 && !_layout.Stays[i])
                _placement.Put(i, offered[_dice.Below(offered.Length)]);
        }
    }

    private void PutBack(Func<int, bool> which)
    {
        for (var i = 0; i < _layout.Things; i++)
        {
            if (which(i) && _layout.Home[i] >= 0)
                _placement.Put(i, _layout.Home[i]);
        }
    }
}
