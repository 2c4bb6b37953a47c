using System.CommandLine;
using Stockroom.Book.Places;

namespace Stockroom.Verbs;

/// <summary>What can be said of a place on the command line.</summary>
internal sealed class LimitOptions
{
    private readonly Option<string?> _order = new("--order") { Description = "Its number along the wall; numbers that follow each other are neighbours", HelpName = "N" };
    private readonly Option<string?> _height = new("--height") { Description = "Height above the floor", HelpName = "METRES" };
    private readonly Option<string?> _mean = new("--mean") { Description = "Mean temperature", HelpName = "C" };
    private readonly Option<string?> _min = new("--min") { Description = "Coldest", HelpName = "C" };
    private readonly Option<string?> _max = new("--max") { Description = "Warmest", HelpName = "C" };
    private readonly Option<string?> _swing = new("--swing") { Description = "From the coolest to the warmest of a usual day", HelpName = "K" };
    private readonly Option<string?> _seasons = new("--seasonal-swing") { Description = "From the coolest to the warmest month, each by its mean", HelpName = "K" };
    private readonly Option<string?> _month = new("--warmest-month") { Description = "1 to 12; else 7, as in the north", HelpName = "N" };
    private readonly Option<string?> _light = new("--light") { Description = "How much light falls on what stands there", HelpName = "dark|room|window" };
    private readonly Option<bool?> _leakTight = new("--leak-tight") { Description = "A tray that holds what leaks into it", HelpName = "true|false" };
    private readonly Option<string?> _load = new("--max-load") { Description = "Largest load", HelpName = "KG" };
    private readonly Option<string?> _count = new("--max-containers") { Description = "Most containers", HelpName = "N" };

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_order, _height, _mean, _min, _max, _swing, _seasons, _month, _light, _leakTight, _load, _count])
            command.Options.Add(option);
    }

    public PlaceLimits Read(ParseResult p) => new()
    {
        Position = Whole(p.GetValue(_order), "an order"),
        HeightMetres = Numbers.Plain(p.GetValue(_height), "a height in metres"),
        MeanCelsius = Numbers.Plain(p.GetValue(_mean), "a temperature in degrees Celsius"),
        MinCelsius = Numbers.Plain(p.GetValue(_min), "a temperature in degrees Celsius"),
        MaxCelsius = Numbers.Plain(p.GetValue(_max), "a temperature in degrees Celsius"),
        SwingKelvin = Numbers.Plain(p.GetValue(_swing), "a swing in kelvin"),
        SeasonalSwingKelvin = Numbers.Plain(p.GetValue(_seasons), "a swing in kelvin"),
        WarmestMonth = Whole(p.GetValue(_month), "a month"),
        Light = p.GetValue(_light) is { } light ? PlaceLimits.ParseLight(light) : null,
        LeakTight = p.GetValue(_leakTight),
        MaxLoadKilograms = Numbers.Plain(p.GetValue(_load), "a load in kilograms"),
        MaxContainers = Whole(p.GetValue(_count), "a number of containers"),
    };

    private static int? Whole(string? text, string what) => Numbers.Plain(text, what) switch
    {
        null => null,
        { } value when value == decimal.Truncate(value) && Math.Abs(value) < 1_000_000 => (int)value,
        _ => throw RefusedException.Words($"'{text}' is not {what}; write a whole number"),
    };
}
