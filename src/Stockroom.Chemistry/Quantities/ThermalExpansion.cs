namespace Stockroom.Chemistry.Quantities;

/// <summary>A cubical thermal expansion coefficient, held in 1/K.</summary>
public readonly record struct ThermalExpansion(double PerKelvin) : IComparable<ThermalExpansion>
{
    public static ThermalExpansion operator +(ThermalExpansion a, ThermalExpansion b) => new(a.PerKelvin + b.PerKelvin);

    public static ThermalExpansion operator -(ThermalExpansion a, ThermalExpansion b) => new(a.PerKelvin - b.PerKelvin);

    public static ThermalExpansion operator *(ThermalExpansion a, double k) => new(a.PerKelvin * k);

    public static ThermalExpansion operator /(ThermalExpansion a, double k) => new(a.PerKelvin / k);

    public static double operator /(ThermalExpansion a, ThermalExpansion b) => a.PerKelvin / b.PerKelvin;

    public static bool operator <(ThermalExpansion a, ThermalExpansion b) => a.PerKelvin < b.PerKelvin;

    public static bool operator >(ThermalExpansion a, ThermalExpansion b) => a.PerKelvin > b.PerKelvin;

    public static bool operator <=(ThermalExpansion a, ThermalExpansion b) => a.PerKelvin <= b.PerKelvin;

    public static bool operator >=(ThermalExpansion a, ThermalExpansion b) => a.PerKelvin >= b.PerKelvin;

    public int CompareTo(ThermalExpansion other) => PerKelvin.CompareTo(other.PerKelvin);
}
