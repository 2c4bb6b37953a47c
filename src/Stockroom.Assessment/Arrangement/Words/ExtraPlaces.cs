using Stockroom.Assessment.Neighbours;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Arrangement.Words;

/// <summary>The smallest places that are not there and would take what is left: a tray before a cabinet, one for several where it can.</summary>
internal sealed class ExtraPlaces(Scene scene, PlaceFit fit, PairJudge judge)
{
    private const int FarAlong = 1_000_000;

    private static readonly PlaceKind[] Kinds = [PlaceKind.Cabinet, PlaceKind.VentilatedCabinet, PlaceKind.FireCabinet, PlaceKind.AcidCabinet];

    public IReadOnlyList<ExtraPlace> All()
    {
        var made = new List<Made>();
        for (var i = 0; i < scene.Plan.Things; i++)
        {
            if (!scene.IsLeft(i) || scene.Thing(i).Stays || scene.Proposal.Stuck.Contains(i))
                continue;
            var index = i;
            if (made.Find(m => m.Fits(index, this)) is { } shared)
                shared.For.Add(i);
            else if ((Tray(i, made) ?? TrayForTheOther(i, made) ?? Cabinet(i, made)) is { } fresh)
                made.Add(fresh);
        }

        return [.. made.Select(Told)];
    }

    private Made? Tray(int thing, List<Made> made)
    {
        var shelves = scene.Plan.Shelving.Spots
            .Where(s => s is { IsOffered: true, Stand: { Shelf: not null, Tray: null } })
            .Select(s => s with { Stand = s.Stand with { Tray = New("tray", made), TrayIsLeakTight = true } });
        return Best(thing, shelves, PlaceKind.Tray, made, s => s.Id);
    }

    // Where only one other stands against it, a tray for that one may be all that is missing.
    private Made? TrayForTheOther(int thing, List<Made> made)
    {
        var against = scene.After(thing, scene.Plan.Home[thing]);
        if (against.Count != 1 || against[0].Other.Stays)
            return null;
        var other = Enumerable.Range(0, scene.Plan.Things).First(j => scene.Thing(j).Key == against[0].Other.Key);
        return Tray(other, made) is { } tray ? tray with { Takes = other, For = [thing] } : null;
    }

    private Made? Cabinet(int thing, List<Made> made)
    {
        var rooms = scene.Plan.Shelving.Spots.Select(s => s.Stand.Room).OfType<PlaceName>().DistinctBy(r => r.Id).ToList();
        foreach (var order in (int?[])[null, FarAlong + (2 * made.Count)])
        {
            foreach (var kind in Kinds.OrderBy(k => Rank(thing, k)))
            {
                var spots = rooms.Select(r => new Spot(r.Id, r.Name, r.Name, new Stand
                {
                    Room = r,
                    Cabinet = New("cabinet", made),
                    CabinetOrder = order,
                    CabinetIsVentilated = kind == PlaceKind.VentilatedCabinet,
                }) { Kind = kind });
                if (Best(thing, spots, kind, made, s => s.Id) is { } found)
                    return found;
            }
        }

        return null;
    }

    private int Rank(int thing, PlaceKind kind) =>
        fit.Of(scene.Thing(thing), new Spot("", "", "", new Stand()) { Kind = kind }).Rank;

    private Made? Best(int thing, IEnumerable<Spot> spots, PlaceKind kind, List<Made> made, Func<Spot, string> inside)
    {
        var home = scene.Plan.Home[thing];
        var room = home < 0 ? null : scene.Spot(home).Stand.Room?.Id;
        return spots
            .Where(s => IsSafe(thing, s, made))
            .OrderBy(s => fit.Of(scene.Thing(thing), s).Rank)
            .ThenBy(s => s.Stand.Room?.Id == room ? 0 : 1)
            .Select(s => new Made(kind, s, inside(s), [thing]))
            .FirstOrDefault();
    }

    private bool IsSafe(int thing, Spot spot, IEnumerable<Made> made)
    {
        var it = scene.Thing(thing);
        if (!fit.Of(it, spot).IsOffered)
            return false;
        if (scene.At(thing, spot.Stand).Any(d => !made.Any(m => m.For.Exists(i => scene.Thing(i).Key == d.Other.Key))))
            return false;
        return !made.SelectMany(m => m.For.Where(i => i != thing).Select(i => (m.Spot.Stand, Thing: scene.Thing(i))))
            .Any(o => Discord.Between(it, spot.Stand, o.Thing, o.Stand, judge) is not null);
    }

    private static PlaceName New(string word, List<Made> made) => new($"new {word} {made.Count + 1}", $"new {word}");

    private ExtraPlace Told(Made m)
    {
        var keys = m.For.ConvertAll(i => scene.Thing(i).Key);
        var labels = Lists.Few(m.For.Select(i => scene.Thing(i).Label));
        if (m.Takes is { } other)
            return new ExtraPlace(m.Kind.Word, m.Inside, keys, $"One more leak-tight tray on {m.Spot.Name} would take {scene.Thing(other).Label}; {labels} could then stay.");
        var text = m.Kind == PlaceKind.Tray
            ? $"One more leak-tight tray on {m.Spot.Name} would take {labels}."
            : $"One more {KindWord(m.Kind)} in {m.Spot.Name}{(m.Spot.Stand.CabinetOrder is null ? "" : ", not next to another,")} with nothing else in it would take {labels}.";
        return new ExtraPlace(m.Kind.Word, m.Inside, keys, text);
    }

    private static string KindWord(PlaceKind kind) => kind == PlaceKind.Cabinet ? "cabinet of any kind" : kind.Word;

    private sealed record Made(PlaceKind Kind, Spot Spot, string Inside, List<int> For)
    {
        /// <summary>The thing that would go there in the stead of the one that it helps; null where it takes that one.</summary>
        public int? Takes { get; init; }

        public bool Fits(int thing, ExtraPlaces all) => Takes is null && all.IsSafe(thing, Spot, [this]);
    }
}
