using BenchmarkDotNet.Attributes;
using Stockroom.Assessment;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Benchmarks;

/// <summary>
/// Twenty thousand containers, each forecast a year ahead: every vessel, closure and cover, every substance and preparation of the
/// catalogue, in forty places with days and seasons; the same ones every time.
/// </summary>
[InProcess]
[MemoryDiagnoser]
public class ForecastBenchmark
{
    private const int Containers = 20_000;

    private static readonly DateOnly Today = new(2030, 5, 17);

    private Situation[] _situations = [];

    [GlobalSetup]
    public void FillTheShelves()
    {
        var random = new Random(20300517);
        var contents = SubstanceCatalogue.Default.Substances.Select(Content.Of).Concat(SubstanceCatalogue.Default.Preparations).ToArray();
        var places = Enumerable.Range(0, 40).Select(_ => (Mean: 12 + (12 * random.NextDouble()), Day: 8 * random.NextDouble(), Seasons: 12 * random.NextDouble())).ToArray();
        _situations = [.. Enumerable.Range(0, Containers).Select(i => Make(contents[i % contents.Length], places[random.Next(places.Length)], random))];
    }

    /// <summary>Grams left in all of them after a year.</summary>
    [Benchmark]
    public double ForecastAYear()
    {
        var left = new double[Containers];
        Parallel.For(0, Containers, i => left[i] = Forecast.Of(_situations[i], PropertyFacts.Default, Today.AddYears(1)).Remaining?.Expected.Grams ?? 0);
        return left.Sum();
    }

    private static Situation Make(Content content, (double Mean, double Day, double Seasons) place, Random random)
    {
        var wares = WareCatalogue.Default;
        var vessel = wares.Vessels[random.Next(wares.Vessels.Count)];
        var covers = wares.Covers.Where(c => c.Kind != CoverKind.Gas).ToArray();
        var cover = random.Next(5) == 0 ? covers[random.Next(covers.Length)] : null;
        var density = content.Density?.KilogramsPerCubicMetre ?? (content.State == MatterState.Gas ? 2 : 1200);
        var situation = new Situation
        {
            Content = content,
            Amount = new Mass(vessel.Volume.CubicMetres * density * (0.1 + (0.7 * random.NextDouble()))),
            AmountOn = Today,
            Filled = Today.AddDays(-random.Next(2000)),
            Vessel = vessel,
            Closure = wares.Closures[random.Next(wares.Closures.Count)],
            Cover = cover,
            CoverDepth = cover is null ? null : Length.FromMillimetres(10),
            Temperature = Temperature.FromCelsius(place.Mean),
            DailySwing = new TemperatureChange(place.Day),
            SeasonalSwing = new TemperatureChange(place.Seasons),
        };
        return situation with { InVesselSince = situation.Filled };
    }
}
