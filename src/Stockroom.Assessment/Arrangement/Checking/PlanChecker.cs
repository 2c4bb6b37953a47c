using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Checking;

/// <summary>
/// Checks a plan against the shelving it is for, step by step, from nothing but the things, the spots and the judgement of
/// pairs. It shares nothing with what makes plans.
/// </summary>
public static class PlanChecker
{
    /// <summary>What is wrong with a plan, each a sentence; empty where it holds.</summary>
    /// <param name="shelving">What stands where, and what could.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="judge">Judges the pairs; a new one if not given.</param>
    /// <param name="fit">Which places suit what; the program's own if not given.</param>
    public static IReadOnlyList<string> Check(Shelving shelving, Plan plan, PairJudge? judge = null, PlaceFit? fit = null)
    {
        var check = new Run(shelving, judge ?? new PairJudge(), fit ?? PlaceFit.Default);
        foreach (var move in plan.Moves)
            check.Make(move);
        check.TheEnd(plan);
        check.WhatIsSaid(plan);
        return check.Mistakes;
    }

    private sealed class Run
    {
        private readonly Shelving _shelving;
        private readonly PairJudge _judge;
        private readonly PlaceFit _fit;
        private readonly Dictionary<string, Thing> _things;
        private readonly Dictionary<string, Spot> _spots;
        private readonly Dictionary<string, string?> _where;

        public Run(Shelving shelving, PairJudge judge, PlaceFit fit)
        {
            _fit = fit;
            _shelving = shelving;
            _judge = judge;
            _things = shelving.Things.ToDictionary(t => t.Key, StringComparer.Ordinal);
            _spots = shelving.Spots.ToDictionary(s => s.Id, StringComparer.Ordinal);
            _where = shelving.Things.ToDictionary(t => t.Key, t => t.Spot, StringComparer.Ordinal);
        }

        public List<string> Mistakes { get; } = [];

        public void Make(Move move)
        {
            if (!_things.TryGetValue(move.Key, out var thing) || !_spots.TryGetValue(move.To, out var goal))
            {
                Mistakes.Add($"{move.Key} to {move.To}: no such thing or place");
                return;
            }

            Expect(_where[move.Key] == move.From, $"{move.Key} is not in {move.From}");
            Expect(move.From != move.To, $"{move.Key} is moved to where it stands");
            Expect(thing.HandsOff is null, $"{move.Key} may not be touched and is moved");
            Expect(thing.Pinned is null, $"{move.Key} is pinned and is moved");
            Expect(goal.IsOffered, $"{move.Key} is sent to {move.To}, where nothing is sent");
            Expect(_fit.Of(thing, goal).IsOffered, $"{move.Key} is sent to {move.To}, which does not suit it");
            foreach (var other in _shelving.Things)
            {
                if (other.Key == move.Key || _where[other.Key] is not { } there)
                    continue;
                var then = PairReading.Missing(thing, goal, other, _spots[there], _judge);
                var now = then > 0 && move.From is { } from ? PairReading.Missing(thing, _spots[from], other, _spots[there], _judge) : 0;
                Expect(then <= now, $"{move.Key} to {move.To} makes it worse with {other.Key}");
            }

            var concerned = _shelving.Limits.Where(l => goal.Within.Contains(l.Place, StringComparer.Ordinal)).ToList();
            var before = concerned.ConvertAll(Carried);
            _where[move.Key] = move.To;
            for (var i = 0; i < before.Count; i++)
                Expect(Carried(concerned[i]) <= Math.Max(before[i], concerned[i].Most), $"{move.Key} to {move.To} passes the limit of {concerned[i].Place}");
        }

        // What is not left is safe; what was moved is safe from what is left as well.
        public void TheEnd(Plan plan)
        {
            var left = plan.Left.Select(l => l.Key).ToHashSet(StringComparer.Ordinal);
            var moved = plan.Moves.Select(m => m.Key).ToHashSet(StringComparer.Ordinal);
            foreach (var key in left)
                Expect(_things.ContainsKey(key) && !moved.Contains(key), $"{key} is left and moved, or not there");
            for (var i = 0; i < _shelving.Things.Count; i++)
            {
                var a = _shelving.Things[i];
                if (_where[a.Key] is not { } here)
                {
                    Expect(left.Contains(a.Key), $"{a.Key} has no place and is not among what is left");
                    continue;
                }

                Expect(left.Contains(a.Key) || !_fit.Of(a, _spots[here]).MustLeave, $"{a.Key} stands in {here}, where it must not");
                for (var j = i + 1; j < _shelving.Things.Count; j++)
                {
                    var b = _shelving.Things[j];
                    var counts = (!left.Contains(a.Key) || moved.Contains(b.Key)) && (!left.Contains(b.Key) || moved.Contains(a.Key));
                    if (counts && _where[b.Key] is { } there)
                        Expect(PairReading.Missing(a, _spots[here], b, _spots[there], _judge) == 0, $"{a.Key} and {b.Key} stand too near in the end");
                }
            }

            foreach (var limit in _shelving.Limits)
                Expect(Carried(limit, t => !left.Contains(t.Key)) <= limit.Most, $"{limit.Place} carries more than it may in the end");
        }

        public void WhatIsSaid(Plan plan)
        {
            Expect(plan.Left.Select(l => l.Key).Distinct(StringComparer.Ordinal).Count() == plan.Left.Count, "something is left twice");
            foreach (var text in plan.Moves.Select(m => m.Because).Concat(plan.Left.Select(l => l.Because)).Concat(plan.HandsOff.Select(h => h.Because)))
                Expect(text.Length > 0, "something is said without a reason");
            foreach (var thing in _shelving.Things.Where(t => t.HandsOff is not null))
            {
                var near = thing.Spot is { } spot ? plan.Moves.Count(m => IsNear(_spots[spot], m.From) || IsNear(_spots[spot], m.To)) : 0;
                Expect(plan.HandsOff.Any(h => h.Key == thing.Key && h.MovesNear == near), $"{thing.Key} may not be touched, and {near} moves near it are not told");
            }
        }

        private bool IsNear(Spot spot, string? other) =>
            other is not null && spot.Stand.Room is { } room && _spots[other].Stand is var stand && stand.Room?.Id == room.Id && stand.Cabinet?.Id == spot.Stand.Cabinet?.Id;

        private long Carried(SpotLimit limit) => Carried(limit, _ => true);

        private long Carried(SpotLimit limit, Func<Thing, bool> counts) => _shelving.Things
            .Where(t => counts(t) && _where[t.Key] is { } spot && _spots[spot].Within.Contains(limit.Place, StringComparer.Ordinal))
            .Sum(t => t.Burden.Of(limit.Measure) ?? 0);

        private void Expect(bool holds, string mistake)
        {
            if (!holds)
                Mistakes.Add(mistake);
        }
    }
}
