namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>What is put into a simulated bottle, with vapour-pressure constants of its own.</summary>
/// <param name="Name">As the catalogue calls it.</param>
/// <param name="A">log10 p/kPa = A - B/(C + t), t in degrees Celsius.</param>
/// <param name="GramsPerMole">Molar mass.</param>
/// <param name="DiffusivityCm2">In air at 25 degrees C, cm2/s.</param>
/// <param name="GramsPerMillilitre">Density.</param>
internal sealed record SimulatedLiquid(string Name, double A, double B, double C, double GramsPerMole, double DiffusivityCm2, double GramsPerMillilitre)
{
    /// <summary>From memory: Antoine constants as in Dean, Lange's Handbook of Chemistry, 15th ed., table 5.9, turned into kPa.</summary>
    public static readonly IReadOnlyList<SimulatedLiquid> All =
    [
        new("acetone", 6.2424, 1210.6, 229.66, 58.08, 0.105, 0.785),
        new("n-hexane", 6.0027, 1171.53, 224.37, 86.18, 0.078, 0.655),
        new("toluene", 6.0790, 1344.8, 219.48, 92.14, 0.084, 0.862),
        new("ethanol", 7.2371, 1592.86, 226.18, 46.07, 0.119, 0.785),
        new("bromine", 6.0030, 1119.7, 221.38, 159.81, 0.094, 3.10),
    ];

    public double Kilopascals(double celsius) => Math.Pow(10, A - (B / (C + celsius)));
}

/// <summary>
/// A bottle that really loses: day by day, by a law of its own (diffusion through a slit, plain difference of concentrations), in a room with
/// seasons, warm and cold spells of weeks (2 K either way), and 3 K beside what the book says of it; weighed on a balance that drifts and rounds, in air that changes.
/// Nothing of it knows the forecast.
/// </summary>
internal sealed class SimulatedBottle
{
    public const double StatedMean = 20;
    public const double StatedSeasons = 8;
    public const double StatedDay = 4;
    public const double Volume = 250;
    public const double BoreMm = 66;
    public const double NeckMm = 30;

    private readonly Random _random;
    private readonly double _roomError;
    private readonly double _slitMm;
    private double _spell;
    private double _drift;
    private double _grossTare;

    public SimulatedBottle(int seed)
    {
        _random = new Random(seed);
        BookKnowsSeasons = seed % 2 == 0;
        Liquid = SimulatedLiquid.All[_random.Next(SimulatedLiquid.All.Count)];
        _roomError = _random.Next(2) == 0 ? 3 : -3;
        Grams = Liquid.GramsPerMillilitre * Volume * (0.4 + (0.5 * _random.NextDouble()));
        StartGrams = Grams;
        _grossTare = 210 + (30 * _random.NextDouble());

        // Closures of one kind differ: the slit is taken as log-normal, nine in ten within a factor of eight of 0.3 micrometres.
        _slitMm = 0.3e-3 * Math.Exp(Normal() * Math.Log(8) / 1.645);
        ReadabilityGrams = _random.Next(3) switch { 0 => 0.001, 1 => 0.01, _ => 0.1 };
    }

    public SimulatedLiquid Liquid { get; }

    public double StartGrams { get; }

    /// <summary>Of every second place the keeper has said how it goes with the seasons.</summary>
    public bool BookKnowsSeasons { get; }

    public double Grams { get; private set; }

    public double ReadabilityGrams { get; }

    /// <summary>How many times wider the slit is now than it was.</summary>
    public double Leak { get; set; } = 1;

    public int Day { get; private set; }

    public double LostGrams { get; private set; }

    /// <summary>Lets days go by.</summary>
    public void Wait(int days)
    {
        for (var i = 0; i < days; i++, Day++)
        {
            _spell = (0.97 * _spell) + (0.5 * Normal());
            var mean = StatedMean + _roomError + (StatedSeasons / 2 * Math.Cos(2 * Math.PI * (Day - 15) / 365.25)) + _spell;
            var lost = 0.0;
            for (var hour = 0; hour < 24; hour += 3)
                lost += GramsInThreeHours(mean + (StatedDay / 2 * Math.Sin(2 * Math.PI * hour / 24)));
            lost = Math.Min(lost, Grams);
            Grams -= lost;
            LostGrams += lost;
            _drift += 2e-6 * Normal();
        }
    }

    /// <summary>Grams that a usual year from today would take, the bottle itself left as it is.</summary>
    public double LossOfTheComingYear()
    {
        var (grams, lostInAll) = (Grams, 0.0);
        for (var day = Day; day < Day + 365; day++)
        {
            var mean = StatedMean + _roomError + (StatedSeasons / 2 * Math.Cos(2 * Math.PI * (day - 15) / 365.25));
            for (var hour = 0; hour < 24; hour += 3)
            {
                var lost = Math.Min(GramsInThreeHours(mean + (StatedDay / 2 * Math.Sin(2 * Math.PI * hour / 24))), Grams);
                lostInAll += lost;
                Grams -= lost;
            }
        }

        Grams = grams;
        return lostInAll * 365.25 / 365;
    }

    /// <summary>Takes something out and tells nobody.</summary>
    public void DrawAndForget() => Grams *= 1 - (0.03 + (0.1 * _random.NextDouble()));

    /// <summary>The reading of a balance that drifts, in air of changing density, rounded to its step.</summary>
    public double Weigh()
    {
        var gross = _grossTare + Grams;
        var buoyancy = -0.02e-3 * Normal() * (313 - (gross / 8));
        var reading = (gross * (1 + _drift + (5e-6 * Normal()))) + buoyancy + (0.8 * ReadabilityGrams * Normal());
        return Math.Round(reading / ReadabilityGrams) * ReadabilityGrams;
    }

    /// <summary>Tries another draw from the bottle's own chance.</summary>
    public double Chance() => _random.NextDouble();

    private double GramsInThreeHours(double celsius)
    {
        var kelvin = celsius + 273.15;
        var gramsPerCm3 = Liquid.Kilopascals(celsius) * 1000 * Liquid.GramsPerMole / (8.314 * kelvin) * 1e-6;
        var diffusivity = Liquid.DiffusivityCm2 * Math.Pow(kelvin / 298.15, 1.75);
        var slitArea = Math.PI * (NeckMm / 10) * (_slitMm * Leak / 10);
        var headspaceCm = (Volume - (Grams / Liquid.GramsPerMillilitre)) / (Math.PI / 4 * BoreMm / 10 * BoreMm / 10);
        var way = (0.2 / slitArea) + (headspaceCm / (Math.PI / 4 * BoreMm / 10 * BoreMm / 10)) + (2.5 / (Math.PI / 4 * NeckMm / 10 * NeckMm / 10));
        return diffusivity * gramsPerCm3 / way * 3 * 3600;
    }

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
