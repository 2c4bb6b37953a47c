namespace Stockroom.Chemistry.Quantities;

/// <summary>A flow of substance, held in mol/s.</summary>
public readonly record struct MolarRate(double MolesPerSecond) : IComparable<MolarRate>
{
    public static MolarRate operator +(MolarRate a, MolarRate b) => new(a.MolesPerSecond + b.MolesPerSecond);

    public static MolarRate operator -(MolarRate a, MolarRate b) => new(a.MolesPerSecond - b.MolesPerSecond);

    public static MolarRate operator *(MolarRate a, double k) => new(a.MolesPerSecond * k);

    public static MolarRate operator /(MolarRate a, double k) => new(a.MolesPerSecond / k);

    public static double operator /(MolarRate a, MolarRate b) => a.MolesPerSecond / b.MolesPerSecond;

    public static bool operator <(MolarRate a, MolarRate b) => a.MolesPerSecond < b.MolesPerSecond;

    public static bool operator >(MolarRate a, MolarRate b) => a.MolesPerSecond > b.MolesPerSecond;

    public static bool operator <=(MolarRate a, MolarRate b) => a.MolesPerSecond <= b.MolesPerSecond;

    public static bool operator >=(MolarRate a, MolarRate b) => a.MolesPerSecond >= b.MolesPerSecond;

    public int CompareTo(MolarRate other) => MolesPerSecond.CompareTo(other.MolesPerSecond);
}
