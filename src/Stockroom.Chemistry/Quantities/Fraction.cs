namespace Stockroom.Chemistry.Quantities;

/// <summary>A dimensionless share, 1 = the whole, held in 1.</summary>
public readonly record struct Fraction(double Value) : IComparable<Fraction>
{
    public static Fraction FromPercent(double x) => new(x / 100);

    public double Percent => Value * 100;

    public static Fraction FromPartsPerMillion(double x) => new(x / 1e6);

    public double PartsPerMillion => Value * 1e6;

    public static Fraction operator +(Fraction a, Fraction b) => new(a.Value + b.Value);

    public static Fraction operator -(Fraction a, Fraction b) => new(a.Value - b.Value);

    public static Fraction operator *(Fraction a, double k) => new(a.Value * k);

    public static Fraction operator /(Fraction a, double k) => new(a.Value / k);

    public static double operator /(Fraction a, Fraction b) => a.Value / b.Value;

    public static bool operator <(Fraction a, Fraction b) => a.Value < b.Value;

    public static bool operator >(Fraction a, Fraction b) => a.Value > b.Value;

    public static bool operator <=(Fraction a, Fraction b) => a.Value <= b.Value;

    public static bool operator >=(Fraction a, Fraction b) => a.Value >= b.Value;

    public int CompareTo(Fraction other) => Value.CompareTo(other.Value);
}
