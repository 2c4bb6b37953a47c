namespace Stockroom.Chemistry.Quantities;

/// <summary>A length, held in m.</summary>
public readonly record struct Length(double Metres) : IComparable<Length>
{
    public static Length FromMillimetres(double x) => new(x / 1e3);

    public double Millimetres => Metres * 1e3;

    public static Length FromMicrometres(double x) => new(x / 1e6);

    public double Micrometres => Metres * 1e6;

    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    public static Length operator *(Length a, double k) => new(a.Metres * k);

    public static Length operator /(Length a, double k) => new(a.Metres / k);

    public static double operator /(Length a, Length b) => a.Metres / b.Metres;

    public static bool operator <(Length a, Length b) => a.Metres < b.Metres;

    public static bool operator >(Length a, Length b) => a.Metres > b.Metres;

    public static bool operator <=(Length a, Length b) => a.Metres <= b.Metres;

    public static bool operator >=(Length a, Length b) => a.Metres >= b.Metres;

    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);
}
