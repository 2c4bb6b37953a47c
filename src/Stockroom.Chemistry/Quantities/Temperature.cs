namespace Stockroom.Chemistry.Quantities;

/// <summary>A thermodynamic temperature, held in K.</summary>
public readonly record struct Temperature(double Kelvin) : IComparable<Temperature>
{
    public static Temperature FromCelsius(double x) => new(x + 273.15);

    public double Celsius => Kelvin - 273.15;

    public static bool operator <(Temperature a, Temperature b) => a.Kelvin < b.Kelvin;

    public static bool operator >(Temperature a, Temperature b) => a.Kelvin > b.Kelvin;

    public static bool operator <=(Temperature a, Temperature b) => a.Kelvin <= b.Kelvin;

    public static bool operator >=(Temperature a, Temperature b) => a.Kelvin >= b.Kelvin;

    public int CompareTo(Temperature other) => Kelvin.CompareTo(other.Kelvin);
}
