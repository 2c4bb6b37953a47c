using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Tests.Neighbours;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Tests.Arrangement;

/// <summary>Shelvings in few words.</summary>
internal static class Build
{
    /// <summary>A shelf or tray: "acid" cabinet, shelf 1 from the floor, no tray, at 0.5 m a shelf.</summary>
    public static Spot Spot(string cabinet, int shelf, string? tray = null, int? order = null, PlaceKind? kind = null, string room = "prep room")
    {
        var id = tray ?? $"{cabinet}-{shelf}";
        var isVentilated = kind == PlaceKind.VentilatedCabinet;
        return new Spot(id, id, $"{room} > {cabinet} > {id}", Shelves.At(cabinet, shelf, tray, order, isVentilated) with { Room = new PlaceName(room, room) })
        {
            Kind = kind ?? PlaceKind.Cabinet,
            HeightMetres = shelf * 0.5m,
            Within = [room, cabinet, $"{cabinet}-{shelf}", .. tray is null ? Array.Empty<string>() : [tray]],
        };
    }

    public static Thing Thing(string key, string content, string? spot) => new(key, content, Profiles.Of(content)) { Spot = spot };

    public static Shelving Of(IReadOnlyList<Spot> spots, params Thing[] things) => new(things, spots, []);

    public static Shelving With(this Shelving shelving, params SpotLimit[] limits) => shelving with { Limits = limits };

    public static SpotLimit AtMost(string place, long containers) => new(place, place, Measure.Containers, containers);

    /// <summary>The plan, checked once more by the tests themselves.</summary>
    public static Plan Plan(Shelving shelving, Effort? effort = null)
    {
        var plan = Arranger.Propose(shelving, effort, cancel: TestContext.Current.CancellationToken);
        Assert.Empty(Assessment.Arrangement.Checking.PlanChecker.Check(shelving, plan));
        return plan;
    }

    public static IEnumerable<string> Steps(this Plan plan) => plan.Moves.Select(m => $"{m.Key}: {m.From} > {m.To}");
}
