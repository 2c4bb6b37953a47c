namespace Stockroom.Chemistry.Quantities;

/// <summary>A mass, held in kg.</summary>
public readonly record struct Mass(double Kilograms) : IComparable<Mass>
{
    public static Mass FromGrams(double x) => new(x / 1e3);

    public double Grams => Kilograms * 1e3;

    public static Mass operator +(Mass a, Mass b) => new(a.Kilograms + b.Kilograms);

    public static Mass operator -(Mass a, Mass b) => new(a.Kilograms - b.Kilograms);

    public static Mass operator *(Mass a, double k) => new(a.Kilograms * k);

    public static Mass operator /(Mass a, double k) => new(a.Kilograms / k);

    public static double operator /(Mass a, Mass b) => a.Kilograms / b.Kilograms;

    public static bool operator <(Mass a, Mass b) => a.Kilograms < b.Kilograms;

    public static bool operator >(Mass a, Mass b) => a.Kilograms > b.Kilograms;

    public static bool operator <=(Mass a, Mass b) => a.Kilograms <= b.Kilograms;

    public static bool operator >=(Mass a, Mass b) => a.Kilograms >= b.Kilograms;

    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);
}
