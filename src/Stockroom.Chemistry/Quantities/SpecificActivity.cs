namespace Stockroom.Chemistry.Quantities;

/// <summary>An activity per mass, held in Bq/kg.</summary>
public readonly record struct SpecificActivity(double BecquerelsPerKilogram) : IComparable<SpecificActivity>
{
    public static SpecificActivity FromBecquerelsPerGram(double x) => new(x / 0.001);

    public double BecquerelsPerGram => BecquerelsPerKilogram * 0.001;

    public static SpecificActivity operator +(SpecificActivity a, SpecificActivity b) => new(a.BecquerelsPerKilogram + b.BecquerelsPerKilogram);

    public static SpecificActivity operator -(SpecificActivity a, SpecificActivity b) => new(a.BecquerelsPerKilogram - b.BecquerelsPerKilogram);

    public static SpecificActivity operator *(SpecificActivity a, double k) => new(a.BecquerelsPerKilogram * k);

    public static SpecificActivity operator /(SpecificActivity a, double k) => new(a.BecquerelsPerKilogram / k);

    public static double operator /(SpecificActivity a, SpecificActivity b) => a.BecquerelsPerKilogram / b.BecquerelsPerKilogram;

    public static bool operator <(SpecificActivity a, SpecificActivity b) => a.BecquerelsPerKilogram < b.BecquerelsPerKilogram;

    public static bool operator >(SpecificActivity a, SpecificActivity b) => a.BecquerelsPerKilogram > b.BecquerelsPerKilogram;

    public static bool operator <=(SpecificActivity a, SpecificActivity b) => a.BecquerelsPerKilogram <= b.BecquerelsPerKilogram;

    public static bool operator >=(SpecificActivity a, SpecificActivity b) => a.BecquerelsPerKilogram >= b.BecquerelsPerKilogram;

    public int CompareTo(SpecificActivity other) => BecquerelsPerKilogram.CompareTo(other.BecquerelsPerKilogram);
}
