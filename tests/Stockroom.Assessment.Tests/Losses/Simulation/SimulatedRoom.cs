namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>
/// Where a bottle really stands: some 3 K beside what the book says, its seasons and days of another swing and weeks early or late, with
/// warm and cold spells of weeks, weather in the barometer, and air that is damper or drier than the book takes it to be.
/// </summary>
internal sealed class SimulatedRoom
{
    private const double SpellKelvins = 2;
    private const double SpellDays = 20;
    private const double WeatherPascals = 900;
    private const double WeatherHours = 50;

    private readonly Chance _weather;
    private readonly double _mean;
    private readonly double _season;
    private readonly double _warmest;
    private readonly double _day;
    private readonly double _station;
    private double _spell;
    private double _barometer;

    public SimulatedRoom(Chance chance, int seed, double leastDay, double mostDay)
    {
        StartDay = (int)chance.Between(0, 365);
        StatedMean = chance.Between(14, 22);
        StatedSeasons = chance.Between(3, 16);
        StatedDay = chance.Between(leastDay, mostDay);
        BookKnowsSeasons = chance.Happens(0.5);
        _mean = StatedMean + chance.Of(-3, 3);
        _season = StatedSeasons * chance.Between(0.7, 1.3);
        _day = StatedDay * chance.Between(0.6, 1.4);
        _warmest = 196 + chance.Between(-25, 25);
        _station = chance.Between(97_000, 101_300);
        Humidity = chance.Between(0.3, 0.7);
        _weather = new Chance(seed);
        _spell = SpellKelvins * _weather.Normal();
        _barometer = WeatherPascals * _weather.Normal();
        Go(24 * StartDay, 0, usual: false);
    }

    /// <summary>Day of the first year, from its first of January, on which the bottle is filled.</summary>
    public int StartDay { get; }

    public double StatedMean { get; }

    public double StatedSeasons { get; }

    public double StatedDay { get; }

    /// <summary>Of every second place the keeper has said how it goes with the seasons.</summary>
    public bool BookKnowsSeasons { get; }

    public double Humidity { get; }

    public double Celsius { get; private set; }

    public double Pascals { get; private set; }

    /// <summary>Goes on to an hour counted from the first of January of the first year.</summary>
    /// <param name="hour">The hour.</param>
    /// <param name="step">Hours since the last.</param>
    /// <param name="usual">True leaves the spells out: a year as years go.</param>
    public void Go(double hour, double step, bool usual)
    {
        var kept = Math.Exp(-step / WeatherHours);
        _barometer = (kept * _barometer) + (Math.Sqrt(1 - (kept * kept)) * WeatherPascals * _weather.Normal());
        if (!usual)
        {
            var held = Math.Exp(-step / 24 / SpellDays);
            _spell = (held * _spell) + (Math.Sqrt(1 - (held * held)) * SpellKelvins * _weather.Normal());
        }

        var season = Math.Cos(2 * Math.PI * ((hour / 24) - _warmest) / 365.25);
        var day = Math.Cos(2 * Math.PI * ((hour - 15) / 24));
        Celsius = _mean + (_season / 2 * season) + (_day / 2 * day) + (usual ? 0 : _spell);
        Pascals = _station + _barometer;
    }

    /// <summary>The same place with other weather to come.</summary>
    public SimulatedRoom WithWeather(int seed) => new(this, seed);

    private SimulatedRoom(SimulatedRoom from, int seed)
    {
        (StartDay, StatedMean, StatedSeasons, StatedDay, BookKnowsSeasons, Humidity) = (from.StartDay, from.StatedMean, from.StatedSeasons, from.StatedDay, from.BookKnowsSeasons, from.Humidity);
        (_mean, _season, _warmest, _day, _station) = (from._mean, from._season, from._warmest, from._day, from._station);
        (_spell, _barometer, Celsius, Pascals) = (from._spell, from._barometer, from.Celsius, from.Pascals);
        _weather = new Chance(seed);
    }
}
