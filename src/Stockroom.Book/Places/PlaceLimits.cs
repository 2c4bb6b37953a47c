namespace Stockroom.Book.Places;

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

    /// <summary>True if a tray holds what leaks into it.</summary>
    public bool? LeakTight { get; init; }

    public decimal? MaxLoadKilograms { get; init; }

    public int? MaxContainers { get; init; }

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
    };

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
        if (HeightMetres is < -100 or > 100)
            throw new BookRefusal($"a height of {HeightMetres:0.##} m above the room's floor cannot be");
        if (MaxLoadKilograms <= 0 || MaxContainers <= 0)
            throw new BookRefusal("a place's largest load and number of containers are above zero");
    }
}
