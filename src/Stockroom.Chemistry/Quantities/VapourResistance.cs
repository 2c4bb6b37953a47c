namespace Stockroom.Chemistry.Quantities;

/// <summary>Resistance of a wall or film to vapour, held in Pa m2 s/kg; resistances in series add.</summary>
public readonly record struct VapourResistance(double PascalSquareMetreSecondsPerKilogram) : IComparable<VapourResistance>
{
    public static VapourResistance operator +(VapourResistance a, VapourResistance b) => new(a.PascalSquareMetreSecondsPerKilogram + b.PascalSquareMetreSecondsPerKilogram);

    public static VapourResistance operator -(VapourResistance a, VapourResistance b) => new(a.PascalSquareMetreSecondsPerKilogram - b.PascalSquareMetreSecondsPerKilogram);

    public static VapourResistance operator *(VapourResistance a, double k) => new(a.PascalSquareMetreSecondsPerKilogram * k);

    public static VapourResistance operator /(VapourResistance a, double k) => new(a.PascalSquareMetreSecondsPerKilogram / k);

    public static double operator /(VapourResistance a, VapourResistance b) => a.PascalSquareMetreSecondsPerKilogram / b.PascalSquareMetreSecondsPerKilogram;

    public static bool operator <(VapourResistance a, VapourResistance b) => a.PascalSquareMetreSecondsPerKilogram < b.PascalSquareMetreSecondsPerKilogram;

    public static bool operator >(VapourResistance a, VapourResistance b) => a.PascalSquareMetreSecondsPerKilogram > b.PascalSquareMetreSecondsPerKilogram;

    public static bool operator <=(VapourResistance a, VapourResistance b) => a.PascalSquareMetreSecondsPerKilogram <= b.PascalSquareMetreSecondsPerKilogram;

    public static bool operator >=(VapourResistance a, VapourResistance b) => a.PascalSquareMetreSecondsPerKilogram >= b.PascalSquareMetreSecondsPerKilogram;

    public int CompareTo(VapourResistance other) => PascalSquareMetreSecondsPerKilogram.CompareTo(other.PascalSquareMetreSecondsPerKilogram);
}
