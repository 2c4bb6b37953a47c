using Stockroom.Book.Containers;
using Stockroom.Book.Places;

namespace Stockroom.Book;

public sealed partial record BookState
{
    /// <summary>The class table that the keeper chose for the shelves: none, road, sea or storage.</summary>
    public string ClassTable { get; private init; } = "none";

    /// <summary>A place by its id.</summary>
    /// <exception cref="BookRefusal">No place has that id.</exception>
    public Place PlaceCalled(string? id)
    {
        if (string.IsNullOrEmpty(id))
            throw new BookRefusal("a place is missing; name one by its id");
        return Places.GetValueOrDefault(id) ?? throw new BookRefusal($"there is no place '{id}' in this book{NearestPlace(id)}");
    }

    /// <summary>A place as a keeper calls it: by id, by name, or by a path such as "Prep room > Acid cabinet > 2".</summary>
    /// <exception cref="BookRefusal">None or more than one fits.</exception>
    public Place FindPlace(string words)
    {
        if (Places.TryGetValue(words.Trim(), out var place))
            return place;
        var steps = words.Split('>', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var fits = steps.Length == 0 ? [] : Places.Values.Where(p => Ends(PathTo(p.Id), steps)).OrderBy(p => p.Id, StringComparer.Ordinal).ToList();
        return fits.Count switch
        {
            1 => fits[0],
            0 => throw new BookRefusal($"there is no place '{words}' in this book{NearestPlace(words)}"),
            _ => throw new BookRefusal($"'{words}' could be {string.Join(" or ", fits.Select(f => f.Id))}; name one by its id"),
        };
    }

    /// <summary>The place and what it stands in, room first.</summary>
    public IReadOnlyList<Place> PathTo(string placeId)
    {
        var path = new List<Place>();
        for (var id = placeId; id is not null && Places.TryGetValue(id, out var place) && !path.Contains(place); id = place.Inside)
            path.Insert(0, place);
        return path;
    }

    /// <summary>Places directly inside another, or all rooms; by position, then name.</summary>
    public IEnumerable<Place> PlacesInside(string? placeId) =>
        Places.Values.Where(p => p.Inside == placeId)
            .OrderBy(p => p.Limits.Position ?? int.MaxValue).ThenBy(p => p.Name, StringComparer.Ordinal).ThenBy(p => p.Id, StringComparer.Ordinal);

    /// <summary>Containers still there that stand in a place; with <paramref name="deep"/> also in what stands in it.</summary>
    public IEnumerable<Container> ContainersIn(string placeId, bool deep = false) =>
        Present.Where(c => c.PlaceId == placeId || (deep && PathTo(c.PlaceId).Any(p => p.Id == placeId)));

    /// <summary>Limits of a place; what it does not say of temperatures, height, air, light, heat, wood, door and lock that of what it stands in.</summary>
    public PlaceLimits LimitsAt(string placeId)
    {
        var own = PlaceCalled(placeId).Limits;
        foreach (var outer in PathTo(placeId).Reverse().Skip(1))
            own = own.InheritedFrom(outer.Limits);
        return own;
    }

    internal BookState WithClassTable(string table) => this with { ClassTable = table };

    internal void CheckNesting(PlaceKind kind, string? inside, string name)
    {
        if (inside is null)
        {
            if (kind.Level != PlaceLevel.Room)
                throw new BookRefusal($"'{name}', a {kind}, must stand inside another place; only a room stands in none");
            return;
        }

        var outer = PlaceCalled(inside);
        if (outer.Level >= kind.Level)
            throw new BookRefusal($"'{name}', a {kind}, cannot stand inside '{outer.Name}', a {outer.Kind}; it goes room > cabinet > shelf > tray");
    }

    private static bool Ends(IReadOnlyList<Place> path, string[] steps)
    {
        if (steps.Length > path.Count)
            return false;
        for (var i = 1; i <= steps.Length; i++)
        {
            if (!string.Equals(path[^i].Name, steps[^i], StringComparison.OrdinalIgnoreCase) && !string.Equals(path[^i].Id, steps[^i], StringComparison.OrdinalIgnoreCase))
                return false;
        }

        return true;
    }

    private string NearestPlace(string words)
    {
        var near = Places.Values.Where(p => p.Id.Contains(words, StringComparison.OrdinalIgnoreCase) || p.Name.Contains(words, StringComparison.OrdinalIgnoreCase))
            .Select(p => p.Id).Order(StringComparer.Ordinal).Take(3).ToList();
        return near.Count > 0 ? $"; near: {string.Join(", ", near)}; 'stockroom places' lists them all" : "; 'stockroom places' lists them";
    }
}
