namespace Stockroom.Chemistry.Quantities;

/// <summary>A absolute pressure, held in Pa.</summary>
public readonly record struct Pressure(double Pascals) : IComparable<Pressure>
{
    public static Pressure FromKilopascals(double x) => new(x * 1e3);

    public double Kilopascals => Pascals / 1e3;

    public static Pressure FromBar(double x) => new(x * 1e5);

    public double Bar => Pascals / 1e5;

    public static Pressure FromMillimetresMercury(double x) => new(x * 133.322387415);

    public double MillimetresMercury => Pascals / 133.322387415;

    public static Pressure operator +(Pressure a, Pressure b) => new(a.Pascals + b.Pascals);

    public static Pressure operator -(Pressure a, Pressure b) => new(a.Pascals - b.Pascals);

    public static Pressure operator *(Pressure a, double k) => new(a.Pascals * k);

    public static Pressure operator /(Pressure a, double k) => new(a.Pascals / k);

    public static double operator /(Pressure a, Pressure b) => a.Pascals / b.Pascals;

    public static bool operator <(Pressure a, Pressure b) => a.Pascals < b.Pascals;

    public static bool operator >(Pressure a, Pressure b) => a.Pascals > b.Pascals;

    public static bool operator <=(Pressure a, Pressure b) => a.Pascals <= b.Pascals;

    public static bool operator >=(Pressure a, Pressure b) => a.Pascals >= b.Pascals;

    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);
}
