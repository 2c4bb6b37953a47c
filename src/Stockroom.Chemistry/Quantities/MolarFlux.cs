namespace Stockroom.Chemistry.Quantities;

/// <summary>A flow of substance through an area, held in mol/(m2 s).</summary>
public readonly record struct MolarFlux(double MolesPerSquareMetreSecond) : IComparable<MolarFlux>
{
    public static MolarFlux operator +(MolarFlux a, MolarFlux b) => new(a.MolesPerSquareMetreSecond + b.MolesPerSquareMetreSecond);

    public static MolarFlux operator -(MolarFlux a, MolarFlux b) => new(a.MolesPerSquareMetreSecond - b.MolesPerSquareMetreSecond);

    public static MolarFlux operator *(MolarFlux a, double k) => new(a.MolesPerSquareMetreSecond * k);

    public static MolarFlux operator /(MolarFlux a, double k) => new(a.MolesPerSquareMetreSecond / k);

    public static double operator /(MolarFlux a, MolarFlux b) => a.MolesPerSquareMetreSecond / b.MolesPerSquareMetreSecond;

    public static bool operator <(MolarFlux a, MolarFlux b) => a.MolesPerSquareMetreSecond < b.MolesPerSquareMetreSecond;

    public static bool operator >(MolarFlux a, MolarFlux b) => a.MolesPerSquareMetreSecond > b.MolesPerSquareMetreSecond;

    public static bool operator <=(MolarFlux a, MolarFlux b) => a.MolesPerSquareMetreSecond <= b.MolesPerSquareMetreSecond;

    public static bool operator >=(MolarFlux a, MolarFlux b) => a.MolesPerSquareMetreSecond >= b.MolesPerSquareMetreSecond;

    public int CompareTo(MolarFlux other) => MolesPerSquareMetreSecond.CompareTo(other.MolesPerSquareMetreSecond);
}
