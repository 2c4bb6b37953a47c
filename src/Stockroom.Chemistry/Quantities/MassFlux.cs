namespace Stockroom.Chemistry.Quantities;

/// <summary>A flow of mass through an area, held in kg/(m2 s).</summary>
public readonly record struct MassFlux(double KilogramsPerSquareMetreSecond) : IComparable<MassFlux>
{
    public static MassFlux operator +(MassFlux a, MassFlux b) => new(a.KilogramsPerSquareMetreSecond + b.KilogramsPerSquareMetreSecond);

    public static MassFlux operator -(MassFlux a, MassFlux b) => new(a.KilogramsPerSquareMetreSecond - b.KilogramsPerSquareMetreSecond);

    public static MassFlux operator *(MassFlux a, double k) => new(a.KilogramsPerSquareMetreSecond * k);

    public static MassFlux operator /(MassFlux a, double k) => new(a.KilogramsPerSquareMetreSecond / k);

    public static double operator /(MassFlux a, MassFlux b) => a.KilogramsPerSquareMetreSecond / b.KilogramsPerSquareMetreSecond;

    public static bool operator <(MassFlux a, MassFlux b) => a.KilogramsPerSquareMetreSecond < b.KilogramsPerSquareMetreSecond;

    public static bool operator >(MassFlux a, MassFlux b) => a.KilogramsPerSquareMetreSecond > b.KilogramsPerSquareMetreSecond;

    public static bool operator <=(MassFlux a, MassFlux b) => a.KilogramsPerSquareMetreSecond <= b.KilogramsPerSquareMetreSecond;

    public static bool operator >=(MassFlux a, MassFlux b) => a.KilogramsPerSquareMetreSecond >= b.KilogramsPerSquareMetreSecond;

    public int CompareTo(MassFlux other) => KilogramsPerSquareMetreSecond.CompareTo(other.KilogramsPerSquareMetreSecond);
}
