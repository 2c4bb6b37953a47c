namespace Stockroom.Chemistry.Quantities;

/// <summary>An amount of substance per volume, held in mol/m3.</summary>
public readonly record struct MolarConcentration(double MolesPerCubicMetre) : IComparable<MolarConcentration>
{
    public static MolarConcentration FromMolesPerLitre(double x) => new(x / 0.001);

    public double MolesPerLitre => MolesPerCubicMetre * 0.001;

    public static MolarConcentration operator +(MolarConcentration a, MolarConcentration b) => new(a.MolesPerCubicMetre + b.MolesPerCubicMetre);

    public static MolarConcentration operator -(MolarConcentration a, MolarConcentration b) => new(a.MolesPerCubicMetre - b.MolesPerCubicMetre);

    public static MolarConcentration operator *(MolarConcentration a, double k) => new(a.MolesPerCubicMetre * k);

    public static MolarConcentration operator /(MolarConcentration a, double k) => new(a.MolesPerCubicMetre / k);

    public static double operator /(MolarConcentration a, MolarConcentration b) => a.MolesPerCubicMetre / b.MolesPerCubicMetre;

    public static bool operator <(MolarConcentration a, MolarConcentration b) => a.MolesPerCubicMetre < b.MolesPerCubicMetre;

    public static bool operator >(MolarConcentration a, MolarConcentration b) => a.MolesPerCubicMetre > b.MolesPerCubicMetre;

    public static bool operator <=(MolarConcentration a, MolarConcentration b) => a.MolesPerCubicMetre <= b.MolesPerCubicMetre;

    public static bool operator >=(MolarConcentration a, MolarConcentration b) => a.MolesPerCubicMetre >= b.MolesPerCubicMetre;

    public int CompareTo(MolarConcentration other) => MolesPerCubicMetre.CompareTo(other.MolesPerCubicMetre);
}
