namespace Stockroom.Chemistry.Quantities;

/// <summary>A dynamic viscosity, held in Pa s.</summary>
public readonly record struct Viscosity(double PascalSeconds) : IComparable<Viscosity>
{
    public static Viscosity operator +(Viscosity a, Viscosity b) => new(a.PascalSeconds + b.PascalSeconds);

    public static Viscosity operator -(Viscosity a, Viscosity b) => new(a.PascalSeconds - b.PascalSeconds);

    public static Viscosity operator *(Viscosity a, double k) => new(a.PascalSeconds * k);

    public static Viscosity operator /(Viscosity a, double k) => new(a.PascalSeconds / k);

    public static double operator /(Viscosity a, Viscosity b) => a.PascalSeconds / b.PascalSeconds;

    public static bool operator <(Viscosity a, Viscosity b) => a.PascalSeconds < b.PascalSeconds;

    public static bool operator >(Viscosity a, Viscosity b) => a.PascalSeconds > b.PascalSeconds;

    public static bool operator <=(Viscosity a, Viscosity b) => a.PascalSeconds <= b.PascalSeconds;

    public static bool operator >=(Viscosity a, Viscosity b) => a.PascalSeconds >= b.PascalSeconds;

    public int CompareTo(Viscosity other) => PascalSeconds.CompareTo(other.PascalSeconds);
}
