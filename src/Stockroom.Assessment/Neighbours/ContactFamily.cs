using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>A contact family: what a content does to its neighbours.</summary>
/// <param name="Key">Its key in the tables.</param>
/// <param name="PlainName">As the keeper reads it.</param>
/// <param name="Statements">GHS statement codes that bring it.</param>
/// <param name="OrphanStates">States of matter in which an unknown content could be this.</param>
/// <param name="Provenance">Where it is set down.</param>
public sealed record ContactFamily(
    string Key,
    string PlainName,
    IReadOnlyList<string> Statements,
    IReadOnlyList<MatterState> OrphanStates,
    Provenance Provenance);

/// <summary>A family that a content carries, and why.</summary>
public sealed record CarriedFamily(ContactFamily Family, string Because)
{
    public override string ToString() => $"{Family.PlainName}: {Because}";
}

/// <summary>A family that a substance brings, from a strength on; or one that a statement code must not bring.</summary>
internal sealed record SubstanceFamily(ContactFamily Family, decimal FromPercent, bool Carries, Provenance Provenance);
