using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>A weigh-in. It does not change the booked net mass: what it shows is for judgement.</summary>
public sealed record Weighed : ContainerEntry
{
    public const string Word = "weighed";

    public override string Kind => Word;

    public required decimal GrossGrams { get; init; }

    /// <summary>Readability of the balance in g.</summary>
    public decimal? ReadabilityGrams { get; init; }

    public decimal? TemperatureCelsius { get; init; }

    /// <summary>Air pressure at the balance in hPa, not reduced to sea level.</summary>
    public decimal? PressureHectopascals { get; init; }

    /// <summary>How far the balance may be out at that load in g, as last checked.</summary>
    public decimal? CalibrationGrams { get; init; }

    internal override bool Handles => true;

    internal static Weighed Read(EntryReader r) => new()
    {
        GrossGrams = r.Number("gross_g"),
        ReadabilityGrams = r.NumberOrNull("readability_g"),
        TemperatureCelsius = r.NumberOrNull("temperature_c"),
        PressureHectopascals = r.NumberOrNull("pressure_hpa"),
        CalibrationGrams = r.NumberOrNull("calibration_g"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Number("gross_g", GrossGrams);
        w.Number("readability_g", ReadabilityGrams);
        w.Number("temperature_c", TemperatureCelsius);
        w.Number("pressure_hpa", PressureHectopascals);
        w.Number("calibration_g", CalibrationGrams);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Mass($"{Container}: a gross mass", GrossGrams);
        Limits.Mass($"{Container}: a readability", ReadabilityGrams);
        Limits.Mass($"{Container}: an error of the balance", CalibrationGrams);
        Limits.Temperature(Container, TemperatureCelsius);
        if (PressureHectopascals is < 300 or > 1100)
            throw new BookRefusal($"{Container}: air at {PressureHectopascals} hPa cannot be; the pressure at the balance lies between 300 and 1100 hPa");
        if (GrossGrams < container.TareGrams)
            throw new BookRefusal($"{Container}: gross {GrossGrams} g is less than its tare of {container.TareGrams} g");
    }

    private protected override Container Change(Container container) => container with
    {
        LastGrossGrams = GrossGrams,
        Weighings = container.Weighings.Add(new Weighing(Number, HappenedOn, GrossGrams, ReadabilityGrams, TemperatureCelsius, PressureHectopascals, CalibrationGrams)),
    };
}
