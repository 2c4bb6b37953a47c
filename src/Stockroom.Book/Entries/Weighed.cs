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

    internal override bool Handles => true;

    internal static Weighed Read(EntryReader r) => new()
    {
        GrossGrams = r.Number("gross_g"),
        ReadabilityGrams = r.NumberOrNull("readability_g"),
        TemperatureCelsius = r.NumberOrNull("temperature_c"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Number("gross_g", GrossGrams);
        w.Number("readability_g", ReadabilityGrams);
        w.Number("temperature_c", TemperatureCelsius);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Mass($"{Container}: a gross mass", GrossGrams);
        Limits.Mass($"{Container}: a readability", ReadabilityGrams);
        Limits.Temperature(Container, TemperatureCelsius);
        if (GrossGrams < container.TareGrams)
            throw new BookRefusal($"{Container}: gross {GrossGrams} g is less than its tare of {container.TareGrams} g");
    }

    private protected override Container Change(Container container) => container with
    {
        LastGrossGrams = GrossGrams,
        Weighings = container.Weighings.Add(new Weighing(Number, HappenedOn, GrossGrams, ReadabilityGrams, TemperatureCelsius)),
    };
}
