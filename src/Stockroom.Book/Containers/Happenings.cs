namespace Stockroom.Book.Containers;

/// <summary>A dated gross mass in g, with the balance's readability in g, temperature, air pressure in hPa and the balance's largest error in g, where known.</summary>
public sealed record Weighing(
    long Entry, DateOnly On, decimal GrossGrams, decimal? ReadabilityGrams, decimal? TemperatureCelsius, decimal? PressureHectopascals = null, decimal? CalibrationGrams = null);

/// <summary>What was taken out: as typed, in g, and into which container where it was decanted.</summary>
public sealed record Draw(long Entry, DateOnly On, string Quantity, decimal Grams, ContainerId? Into);

/// <summary>What was decanted in, in g, and from where.</summary>
public sealed record Fill(long Entry, DateOnly On, string Quantity, decimal Grams, ContainerId From);

/// <summary>A test and what it showed ("peroxides": "25 mg/L").</summary>
public sealed record TestResult(long Entry, DateOnly On, string Result);

/// <summary>A measured strength, in per cent by mass of one substance.</summary>
public sealed record Assay(long Entry, DateOnly On, string Substance, decimal Percent, string? Method);

/// <summary>A cover put on, topped up or taken off, or the vessel closed anew: the gross mass changed by what nobody weighed.</summary>
/// <remarks>OtherCover: true where it was put on or taken off, so that the content goes at another pace since.</remarks>
public sealed record Refitting(long Entry, DateOnly On, bool OtherCover);
