using Stockroom.Book.Containers;

namespace Stockroom.Book.Entries;

/// <summary>Bounds outside which an amount or a date is a slip of the pen, whatever the entry.</summary>
internal static class Limits
{
    private const decimal HeaviestGrams = 1_000_000_000m;
    private const decimal DeepestMillimetres = 10_000m;
    private const decimal HottestCelsius = 1_000m;
    private const decimal HighestBar = 100m;

    /// <summary>First year of which a stock book can speak.</summary>
    private const int FirstYear = 1800;

    public static void Mass(string what, decimal? grams)
    {
        if (grams <= 0)
            throw new BookRefusal($"{what} of {grams} g cannot be; it must be above 0 g");
        if (grams > HeaviestGrams)
            throw new BookRefusal($"{what} of {grams} g cannot be; more than {HeaviestGrams} g fits no container");
    }

    public static void Depth(ContainerId? container, decimal? millimetres)
    {
        if (millimetres is < 0 or > DeepestMillimetres)
            throw new BookRefusal($"{container}: a cover {millimetres} mm deep cannot be; it lies between 0 and {DeepestMillimetres} mm");
    }

    public static void Temperature(ContainerId? container, decimal? celsius)
    {
        if (celsius is < -273.15m or > HottestCelsius)
            throw new BookRefusal($"{container}: {celsius} C cannot be; a temperature lies between -273.15 and {HottestCelsius} C");
    }

    public static void GasPressure(ContainerId? container, decimal? bar)
    {
        if (bar is < 0 or > HighestBar)
            throw new BookRefusal($"{container}: nothing is sealed at {bar} bar absolute; it lies between 0 and {HighestBar} bar");
    }

    public static void NotTooOld(string what, DateOnly? day)
    {
        if (day?.Year < FirstYear)
            throw new BookRefusal($"{what} {day:yyyy-MM-dd} cannot be; the book begins in {FirstYear}");
    }

    public static void Words(ContainerId? container, string what, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            throw new BookRefusal($"{container}: {what} is missing");
    }

    public static void Available(Container container, decimal grams)
    {
        if (grams > container.NetGrams)
            throw new BookRefusal($"{container.Id}: {grams} g cannot be taken; {container.NetGrams} g is there");
    }
}
