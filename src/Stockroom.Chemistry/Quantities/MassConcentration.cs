namespace Stockroom.Chemistry.Quantities;

/// <summary>A mass per volume of a gas or solution, held in kg/m3.</summary>
public readonly record struct MassConcentration(double KilogramsPerCubicMetre) : IComparable<MassConcentration>
{
    public static MassConcentration FromMilligramsPerCubicMetre(double x) => new(x / 1e+06);

    public double MilligramsPerCubicMetre => KilogramsPerCubicMetre * 1e+06;

    public double GramsPerLitre => KilogramsPerCubicMetre;

    public static MassConcentration FromGramsPerLitre(double x) => new(x);

    public static MassConcentration operator +(MassConcentration a, MassConcentration b) => new(a.KilogramsPerCubicMetre + b.KilogramsPerCubicMetre);

    public static MassConcentration operator -(MassConcentration a, MassConcentration b) => new(a.KilogramsPerCubicMetre - b.KilogramsPerCubicMetre);

    public static MassConcentration operator *(MassConcentration a, double k) => new(a.KilogramsPerCubicMetre * k);

    public static MassConcentration operator /(MassConcentration a, double k) => new(a.KilogramsPerCubicMetre / k);

    public static double operator /(MassConcentration a, MassConcentration b) => a.KilogramsPerCubicMetre / b.KilogramsPerCubicMetre;

    public static bool operator <(MassConcentration a, MassConcentration b) => a.KilogramsPerCubicMetre < b.KilogramsPerCubicMetre;

    public static bool operator >(MassConcentration a, MassConcentration b) => a.KilogramsPerCubicMetre > b.KilogramsPerCubicMetre;

    public static bool operator <=(MassConcentration a, MassConcentration b) => a.KilogramsPerCubicMetre <= b.KilogramsPerCubicMetre;

    public static bool operator >=(MassConcentration a, MassConcentration b) => a.KilogramsPerCubicMetre >= b.KilogramsPerCubicMetre;

    public int CompareTo(MassConcentration other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);
}
