namespace Stockroom.Chemistry.Quantities;

/// <summary>A mass flow, held in kg/s.</summary>
public readonly record struct MassRate(double KilogramsPerSecond) : IComparable<MassRate>
{
    public static MassRate FromGramsPerYear(double x) => new(x / 1e3 / Span.SecondsPerYear);

    public double GramsPerYear => KilogramsPerSecond * 1e3 * Span.SecondsPerYear;

    public static MassRate operator +(MassRate a, MassRate b) => new(a.KilogramsPerSecond + b.KilogramsPerSecond);

    public static MassRate operator -(MassRate a, MassRate b) => new(a.KilogramsPerSecond - b.KilogramsPerSecond);

    public static MassRate operator *(MassRate a, double k) => new(a.KilogramsPerSecond * k);

    public static MassRate operator /(MassRate a, double k) => new(a.KilogramsPerSecond / k);

    public static double operator /(MassRate a, MassRate b) => a.KilogramsPerSecond / b.KilogramsPerSecond;

    public static bool operator <(MassRate a, MassRate b) => a.KilogramsPerSecond < b.KilogramsPerSecond;

    public static bool operator >(MassRate a, MassRate b) => a.KilogramsPerSecond > b.KilogramsPerSecond;

    public static bool operator <=(MassRate a, MassRate b) => a.KilogramsPerSecond <= b.KilogramsPerSecond;

    public static bool operator >=(MassRate a, MassRate b) => a.KilogramsPerSecond >= b.KilogramsPerSecond;

    public int CompareTo(MassRate other) => KilogramsPerSecond.CompareTo(other.KilogramsPerSecond);
}
