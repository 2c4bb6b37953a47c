using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Ingress;

/// <summary>A gas of the air that gets in, what it does there, and when the content counts as spoiled by it.</summary>
/// <remarks>
/// Rate: null where it does not apply, for the reason given. Spoiled dates: earliest, expected, latest day; null beyond 500 years or where
/// the content does not suffer. What is held up by an acid cover spoils the cover first.
/// </remarks>
public sealed record IngressForecast(
    string Gas, PathVerdict Verdict, Band<MassRate>? Rate, string Because, DateOnly? SpoiledLow, DateOnly? SpoiledExpected, DateOnly? SpoiledHigh, Provenance? Source);
