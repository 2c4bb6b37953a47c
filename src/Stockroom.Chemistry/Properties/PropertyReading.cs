using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>What one source says of one property; several sources may differ, and one of them is preferred.</summary>
/// <param name="Kind">The property.</param>
/// <param name="Name">Its name in words, such as "melting point".</param>
/// <param name="Value">The number as the table has it, in <paramref name="Unit"/>.</param>
/// <param name="Unit">K, kg/m3, 1/K, Pa, or 1 for a share.</param>
/// <param name="Temperature">The value as a temperature, where it is one.</param>
/// <param name="Density">The value as a density, where it is one.</param>
/// <param name="At">The temperature it holds at, where that matters.</param>
/// <param name="Spread">Uncertainty either way.</param>
/// <param name="IsPreferred">True for the reading that every computation uses.</param>
/// <param name="Provenance">Who says so.</param>
public sealed record PropertyReading(
    PropertyKind Kind,
    string Name,
    string Value,
    string Unit,
    Temperature? Temperature,
    Density? Density,
    Temperature? At,
    Spread Spread,
    bool IsPreferred,
    Provenance Provenance);
