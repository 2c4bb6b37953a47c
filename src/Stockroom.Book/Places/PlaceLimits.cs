namespace Stockroom.Book.Places;

/// <summary>How much light falls on what stands there.</summary>
public enum PlaceLight
{
    /// <summary>Behind a closed door.</summary>
    Dark = 0,

    /// <summary>Lit as rooms are.</summary>
    Room,

    /// <summary>Daylight through a window, the sun now and then.</summary>
    Window,
}

/// <summary>What is known of a place beyond its kind; null where it was never said.</summary>
public sealed record PlaceLimits
{
    public static readonly PlaceLimits Unknown = new();

    /// <summary>Height of its floor above the room's floor, in m.</summary>
    public decimal? HeightMetres { get; init; }

    /// <summary>Order among its siblings, left to right; neighbours in this order stand side by side.</summary>
    public int? Position { get; init; }

    public decimal? MeanCelsius { get; init; }

    public decimal? MinCelsius { get; init; }

    public decimal? MaxCelsius { get; init; }

    /// <summary>Daily swing between coldest and warmest, in K.</summary>
    public decimal? SwingKelvin { get; init; }

    /// <summary>From the coolest to the warmest month of a usual year, in K, each taken as the mean of its days.</summary>
    public decimal? SeasonalSwingKelvin { get; init; }

    /// <summary>1 to 12; 7 in most of the northern hemisphere, 1 in most of the southern.</summary>
    public int? WarmestMonth { get; init; }

    public PlaceLight? Light { get; init; }

    /// <summary>True if a tray holds what leaks into it.</summary>
    public bool? LeakTight { get; init; }

    public decimal? MaxLoadKilograms { get; init; }

    public int? MaxContainers { get; init; }

    /// <summary>Most liquid it may hold, in L.</summary>
    public decimal? MaxLitres { get; init; }

    /// <summary>Most flammable liquid it may hold, in L.</summary>
    public decimal? MaxFlammableLitres { get; init; }

    /// <summary>How often its air is changed in an hour.</summary>
    public decimal? AirChangesPerHour { get; init; }

    public bool? HasDoor { get; init; }

    public bool? IsLocked { get; init; }

    /// <summary>True where case or shelf is of wood or board, which breathes out acids.</summary>
    public bool? IsWooden { get; init; }

    /// <summary>True next to a radiator, an oven, a flame or another hot thing.</summary>
    public bool? IsNearHeat { get; init; }

    /// <summary>True of a refrigerator without a spark inside, made for flammable liquids.</summary>
    public bool? IsForFlammables { get; init; }

    /// <summary>These limits with whatever <paramref name="newer"/> says put over them.</summary>
    public PlaceLimits With(PlaceLimits newer) => new()
    {
        HeightMetres = newer.HeightMetres ?? HeightMetres,
        Position = newer.Position ?? Position,
        MeanCelsius = newer.MeanCelsius ?? MeanCelsius,
        MinCelsius = newer.MinCelsius ?? MinCelsius,
        MaxCelsius = newer.MaxCelsius ?? MaxCelsius,
        SwingKelvin = newer.SwingKelvin ?? SwingKelvin,
        LeakTight = newer.LeakTight ?? LeakTight,
        MaxLoadKilograms = newer.MaxLoadKilograms ?? MaxLoadKilograms,
        MaxContainers = newer.MaxContainers ?? MaxContainers,
        SeasonalSwingKelvin = newer.SeasonalSwingKelvin ?? SeasonalSwingKelvin,
        WarmestMonth = newer.WarmestMonth ?? WarmestMonth,
        Light = newer.Light ?? Light,
        MaxLitres = newer.MaxLitres ?? MaxLitres,
        MaxFlammableLitres = newer.MaxFlammableLitres ?? MaxFlammableLitres,
        AirChangesPerHour = newer.AirChangesPerHour ?? AirChangesPerHour,
        HasDoor = newer.HasDoor ?? HasDoor,
        IsLocked = newer.IsLocked ?? IsLocked,
        IsWooden = newer.IsWooden ?? IsWooden,
        IsNearHeat = newer.IsNearHeat ?? IsNearHeat,
        IsForFlammables = newer.IsForFlammables ?? IsForFlammables,
    };

    /// <summary>Temperature, height and light of the place around it where this one does not say.</summary>
    public PlaceLimits InheritedFrom(PlaceLimits outer) => this with
    {
        HeightMetres = HeightMetres ?? outer.HeightMetres,
        MeanCelsius = MeanCelsius ?? outer.MeanCelsius,
        MinCelsius = MinCelsius ?? outer.MinCelsius,
        MaxCelsius = MaxCelsius ?? outer.MaxCelsius,
        SwingKelvin = SwingKelvin ?? outer.SwingKelvin,
        SeasonalSwingKelvin = SeasonalSwingKelvin ?? outer.SeasonalSwingKelvin,
        WarmestMonth = WarmestMonth ?? outer.WarmestMonth,
        Light = Light ?? outer.Light,
        AirChangesPerHour = AirChangesPerHour ?? outer.AirChangesPerHour,
        HasDoor = HasDoor ?? outer.HasDoor,
        IsLocked = IsLocked ?? outer.IsLocked,
        IsWooden = IsWooden ?? outer.IsWooden,
        IsNearHeat = IsNearHeat ?? outer.IsNearHeat,
        IsForFlammables = IsForFlammables ?? outer.IsForFlammables,
    };

    public static string WordOf(PlaceLight light) => light.ToString().ToLowerInvariant();

    /// <summary>Reads the light as the ledger and the keeper write it.</summary>
    /// <exception cref="BookRefusal">Not one of dark, room, window.</exception>
    public static PlaceLight ParseLight(string word) =>
        Enum.GetValues<PlaceLight>().Where(l => WordOf(l) == word.Trim().ToLowerInvariant()).Select(l => (PlaceLight?)l).FirstOrDefault()
        ?? throw new BookRefusal($"'{word}' is not a light; it is one of: dark, room, window");

    internal void Check()
    {
        foreach (var celsius in new[] { MeanCelsius, MinCelsius, MaxCelsius })
        {
            if (celsius is < -273.15m or > 200m)
                throw new BookRefusal($"a place at {celsius:0.##} C cannot be; a temperature lies between -273.15 and 200 C");
        }

        if (MinCelsius > MaxCelsius || MinCelsius > MeanCelsius || MeanCelsius > MaxCelsius)
            throw new BookRefusal($"temperatures of a place go min <= mean <= max, not {MinCelsius:0.##}, {MeanCelsius:0.##}, {MaxCelsius:0.##} C");
        if (SwingKelvin is < 0 or > 100)
            throw new BookRefusal($"a daily swing of {SwingKelvin:0.##} K cannot be; it lies between 0 and 100 K");
        if (SeasonalSwingKelvin is < 0 or > 100)
            throw new BookRefusal($"a seasonal swing of {SeasonalSwingKelvin:0.##} K cannot be; it lies between 0 and 100 K");
        if (WarmestMonth is < 1 or > 12)
            throw new BookRefusal($"month {WarmestMonth} cannot be the warmest; write 1 to 12");
        if (HeightMetres is < -100 or > 100)
            throw new BookRefusal($"a height of {HeightMetres:0.##} m above the room's floor cannot be");
        if (MaxLoadKilograms <= 0 || MaxContainers <= 0)
            throw new BookRefusal("a place's largest load and number of containers are above zero");
        if (MaxLitres <= 0 || MaxFlammableLitres < 0)
            throw new BookRefusal("the most liquid that a place may hold is above zero; the most flammable liquid is zero or more");
        if (AirChangesPerHour is < 0 or > 1000)
            throw new BookRefusal($"{AirChangesPerHour:0.##} changes of air in an hour cannot be; they lie between 0 and 1000");
    }
}
