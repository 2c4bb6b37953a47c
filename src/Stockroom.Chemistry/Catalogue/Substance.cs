using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>
/// One pure substance of the catalogue in one form: white and red phosphorus are two, zinc and zinc dust are two.
/// </summary>
/// <param name="Name">Preferred name, lower case, unique in the catalogue; every other table refers to it.</param>
/// <param name="Formula">Its formula; null where it is not one compound (wood charcoal, mineral oil).</param>
/// <param name="Cas">CAS number; null where it has none of its own.</param>
/// <param name="State">State at 20 degrees Celsius; a dissolved form counts as the liquid it is sold as.</param>
/// <param name="Element">Symbol of the element, where the substance is one.</param>
/// <param name="DissolvedFormOf">Name of the substance that leaves the solution: hydrogen chloride for hydrochloric acid.</param>
/// <param name="MolarMass">Computed from the formula and the IUPAC abridged atomic weights.</param>
/// <param name="Provenance">Where identity and formula come from.</param>
public sealed record Substance(
    string Name,
    ChemicalFormula? Formula,
    CasNumber? Cas,
    MatterState State,
    string? Element,
    string? DissolvedFormOf,
    MolarMass? MolarMass,
    Provenance Provenance)
{
    public bool Equals(Substance? other) => other is not null && Name == other.Name;

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    public override string ToString() => Name;
}
