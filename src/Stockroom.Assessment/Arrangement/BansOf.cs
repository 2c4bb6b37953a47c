using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Book;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Arrangement;

/// <summary>What the place rules would say of every container in every place: each rule is asked as if everything stood there.</summary>
internal static class BansOf
{
    /// <summary>By container, what speaks against which place.</summary>
    public static IReadOnlyDictionary<ContainerId, IReadOnlyDictionary<string, Ban>> Stock(StockAssessment stock, IReadOnlyList<Holding> holdings)
    {
        var found = holdings.ToDictionary(h => h.Id, _ => new Dictionary<string, Ban>(StringComparer.Ordinal));
        foreach (var alike in stock.State.Places.Keys.Order(StringComparer.Ordinal).GroupBy(id => Traits(id, stock.State)))
        {
            var asIf = stock.With([.. holdings.Select(h => h.StandingIn(alike.First(), stock.State))]);
            foreach (var finding in PlaceRuleList.All.Where(r => r is not (KeepersLimits or FlammableVolume)).SelectMany(r => r.Find(asIf)))
            {
                var ban = new Ban(finding.Rule, finding.Severity >= Severity.Warning);
                foreach (var container in finding.Containers)
                {
                    foreach (var id in alike)
                        found[container][id] = found[container].TryGetValue(id, out var before) && before.MustLeave ? before : ban;
                }
            }
        }

        return Shared(found);
    }

    // Everything that a place rule looks at; places alike in it need be asked about once.
    private static (string? Kind, PlaceLimits Limits, bool Holds, bool HasTrays) Traits(string placeId, BookState state)
    {
        var path = state.PathTo(placeId);
        var limits = state.LimitsAt(placeId) with { Position = null, MaxContainers = null, MaxLoadKilograms = null, MaxLitres = null, MaxFlammableLitres = null };
        return (
            path.FirstOrDefault(p => p.Level == PlaceLevel.Cabinet)?.Kind.Word,
            limits,
            path.Any(p => p.Limits.LeakTight == true),
            state.PlacesInside(placeId).Any(p => p.Level == PlaceLevel.Tray && p.Limits.LeakTight == true));
    }

    // Containers against which the same speaks share one object, so that they count as one group.
    private static Dictionary<ContainerId, IReadOnlyDictionary<string, Ban>> Shared(Dictionary<ContainerId, Dictionary<string, Ban>> found)
    {
        var known = new Dictionary<string, IReadOnlyDictionary<string, Ban>>(StringComparer.Ordinal) { [""] = Ban.None };
        var shared = new Dictionary<ContainerId, IReadOnlyDictionary<string, Ban>>();
        foreach (var (id, bans) in found)
        {
            var key = string.Join('|', bans.OrderBy(b => b.Key, StringComparer.Ordinal).Select(b => $"{b.Key}={b.Value.Because}:{b.Value.MustLeave}"));
            known.TryAdd(key, bans);
            shared[id] = known[key];
        }

        return shared;
    }
}
