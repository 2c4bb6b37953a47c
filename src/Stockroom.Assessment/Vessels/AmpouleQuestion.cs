using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>What is asked of a flame-sealed ampoule: so much of a content in such a tube, kept between such temperatures.</summary>
public sealed record AmpouleQuestion
{
    public required Content Content { get; init; }

    public required Mass Fill { get; init; }

    public required Ampoule Ampoule { get; init; }

    /// <summary>The usual temperature.</summary>
    public Temperature At { get; init; } = Temperature.FromCelsius(20);

    public Temperature Warmest { get; init; } = Temperature.FromCelsius(40);

    /// <summary>The coldest it gets; matters to what swells as it freezes.</summary>
    public Temperature Coldest { get; init; } = Temperature.FromCelsius(5);

    /// <summary>For how long it is to be kept: helium from alpha decay builds up.</summary>
    public Span Kept { get; init; } = Span.FromYears(50);

    /// <summary>True where the content may hold moisture.</summary>
    public bool Damp { get; init; }
}
