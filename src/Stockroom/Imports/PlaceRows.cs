using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;

namespace Stockroom.Imports;

/// <summary>Turns rows of places into entries, and finds the place a row of a container names.</summary>
internal static class PlaceRows
{
    private const string Step = " > ";

    /// <summary>The entry that sets a place up.</summary>
    /// <exception cref="BookRefusal">A cell is wrong.</exception>
    public static PlaceMade Read(ImportRow row, BookState state, DateTimeOffset at)
    {
        row.CheckWidth();
        var name = row.Required("name");
        return new PlaceMade
        {
            HappenedAt = at,
            Place = row.Text("id") ?? PlaceIds.For(name, state),
            Name = name,
            PlaceKind = PlaceKind.Parse(row.Required("kind")),
            Inside = row.Text("inside") is { } inside ? Find(inside, state).Id : null,
            Note = row.Text("note"),
            Limits = new PlaceLimits
            {
                Position = row.Whole("order"),
                HeightMetres = row.Number("height_m"),
                LeakTight = row.YesNo("leak_tight"),
                MeanCelsius = row.Number("mean_c"),
                MinCelsius = row.Number("min_c"),
                MaxCelsius = row.Number("max_c"),
                SwingKelvin = row.Number("daily_swing_k"),
                MaxLoadKilograms = row.Number("max_load_kg"),
                MaxContainers = row.Whole("max_containers"),
                SeasonalSwingKelvin = row.Number("seasonal_swing_k"),
                WarmestMonth = row.Whole("warmest_month"),
                Light = row.Text("light") is { } light ? PlaceLimits.ParseLight(light) : null,
                MaxLitres = row.Number("max_l"),
                MaxFlammableLitres = row.Number("max_flammable_l"),
                AirChangesPerHour = row.Number("air_changes_per_h"),
                HasDoor = row.YesNo("door"),
                IsLocked = row.YesNo("locked"),
                IsWooden = row.YesNo("wooden"),
                IsNearHeat = row.YesNo("near_heat"),
                IsForFlammables = row.YesNo("for_flammables"),
            },
        };
    }

    /// <summary>A place by id, name or path.</summary>
    /// <exception cref="BookRefusal">There is none; the nearest are offered.</exception>
    public static Place Find(string words, BookState state)
    {
        try
        {
            return state.FindPlace(words);
        }
        catch (BookRefusal e) when (!e.Message.Contains("could be", StringComparison.Ordinal))
        {
            var near = Chemistry.Catalogue.NearestNames.To(words, state.Places.Values.SelectMany(p => (string[])[p.Id, p.Name]), 6)
                .Select(n => state.Places.Values.OrderBy(p => p.Id, StringComparer.Ordinal).First(p => p.Id == n || p.Name == n).Id).Distinct(StringComparer.Ordinal).Take(3).ToList();
            throw new BookRefusal(state.Places.IsEmpty
                ? $"there is no place '{words}': the book has no places yet; import a file of places first (columns id, name, kind, inside), or say 'stockroom place add'"
                : $"there is no place '{words}' in this book{(near.Count > 0 ? $"; nearest: {string.Join(", ", near)}" : "; 'stockroom places' lists them")}", e);
        }
    }

    /// <summary>"prep (room) > acid (acid cabinet)": ids and kinds of a place and what it stands in, as export writes them.</summary>
    public static string StepsOf(BookState state, string placeId) => string.Join(Step, state.PathTo(placeId).Select(p => $"{p.Id} ({p.Kind.Word})"));

    /// <summary>The places that a row needs and the book lacks, from its steps and its path; outermost first.</summary>
    /// <exception cref="BookRefusal">Steps and path do not fit each other.</exception>
    public static IEnumerable<PlaceMade> Missing(ImportRow row, BookState state, DateTimeOffset at)
    {
        var steps = row.Required("place_steps").Split(Step);
        var names = row.Required("place_path").Split(Step);
        if (steps.Length != names.Length)
            throw row.Wrong("place_steps", $"has {steps.Length} steps where the path has {names.Length}");
        string? inside = null;
        for (var i = 0; i < steps.Length; i++)
        {
            var cut = steps[i].IndexOf(" (", StringComparison.Ordinal);
            if (cut < 1 || !steps[i].EndsWith(')'))
                throw row.Wrong("place_steps", $"'{steps[i]}' is not an id and a kind; write for example acid-1 (shelf)");
            var id = steps[i][..cut];
            if (!state.Places.ContainsKey(id))
                yield return new PlaceMade { HappenedAt = at, Place = id, Name = names[i], PlaceKind = PlaceKind.Parse(steps[i][(cut + 2)..^1]), Inside = inside };
            inside = id;
        }
    }
}
