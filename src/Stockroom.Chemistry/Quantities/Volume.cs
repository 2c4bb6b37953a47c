namespace Stockroom.Chemistry.Quantities;

/// <summary>A volume, held in m3.</summary>
public readonly record struct Volume(double CubicMetres) : IComparable<Volume>
{
    public static Volume FromMillilitres(double x) => new(x / 1e6);

    public double Millilitres => CubicMetres * 1e6;

    public static Volume FromLitres(double x) => new(x / 1e3);

    public double Litres => CubicMetres * 1e3;

    public static Volume operator +(Volume a, Volume b) => new(a.CubicMetres + b.CubicMetres);

    public static Volume operator -(Volume a, Volume b) => new(a.CubicMetres - b.CubicMetres);

    public static Volume operator *(Volume a, double k) => new(a.CubicMetres * k);

    public static Volume operator /(Volume a, double k) => new(a.CubicMetres / k);

    public static double operator /(Volume a, Volume b) => a.CubicMetres / b.CubicMetres;

    public static bool operator <(Volume a, Volume b) => a.CubicMetres < b.CubicMetres;

    public static bool operator >(Volume a, Volume b) => a.CubicMetres > b.CubicMetres;

    public static bool operator <=(Volume a, Volume b) => a.CubicMetres <= b.CubicMetres;

    public static bool operator >=(Volume a, Volume b) => a.CubicMetres >= b.CubicMetres;

    public int CompareTo(Volume other) => CubicMetres.CompareTo(other.CubicMetres);
}
