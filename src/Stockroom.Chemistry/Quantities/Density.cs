namespace Stockroom.Chemistry.Quantities;

/// <summary>A mass per volume, held in kg/m3.</summary>
public readonly record struct Density(double KilogramsPerCubicMetre) : IComparable<Density>
{
    public static Density FromGramsPerMillilitre(double x) => new(x * 1e3);

    public double GramsPerMillilitre => KilogramsPerCubicMetre / 1e3;

    public static Density operator +(Density a, Density b) => new(a.KilogramsPerCubicMetre + b.KilogramsPerCubicMetre);

    public static Density operator -(Density a, Density b) => new(a.KilogramsPerCubicMetre - b.KilogramsPerCubicMetre);

    public static Density operator *(Density a, double k) => new(a.KilogramsPerCubicMetre * k);

    public static Density operator /(Density a, double k) => new(a.KilogramsPerCubicMetre / k);

    public static double operator /(Density a, Density b) => a.KilogramsPerCubicMetre / b.KilogramsPerCubicMetre;

    public static bool operator <(Density a, Density b) => a.KilogramsPerCubicMetre < b.KilogramsPerCubicMetre;

    public static bool operator >(Density a, Density b) => a.KilogramsPerCubicMetre > b.KilogramsPerCubicMetre;

    public static bool operator <=(Density a, Density b) => a.KilogramsPerCubicMetre <= b.KilogramsPerCubicMetre;

    public static bool operator >=(Density a, Density b) => a.KilogramsPerCubicMetre >= b.KilogramsPerCubicMetre;

    public int CompareTo(Density other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);
}
