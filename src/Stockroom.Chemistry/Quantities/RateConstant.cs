namespace Stockroom.Chemistry.Quantities;

/// <summary>A first-order rate constant or decay constant, held in 1/s.</summary>
public readonly record struct RateConstant(double PerSecond) : IComparable<RateConstant>
{
    public static RateConstant operator +(RateConstant a, RateConstant b) => new(a.PerSecond + b.PerSecond);

    public static RateConstant operator -(RateConstant a, RateConstant b) => new(a.PerSecond - b.PerSecond);

    public static RateConstant operator *(RateConstant a, double k) => new(a.PerSecond * k);

    public static RateConstant operator /(RateConstant a, double k) => new(a.PerSecond / k);

    public static double operator /(RateConstant a, RateConstant b) => a.PerSecond / b.PerSecond;

    public static bool operator <(RateConstant a, RateConstant b) => a.PerSecond < b.PerSecond;

    public static bool operator >(RateConstant a, RateConstant b) => a.PerSecond > b.PerSecond;

    public static bool operator <=(RateConstant a, RateConstant b) => a.PerSecond <= b.PerSecond;

    public static bool operator >=(RateConstant a, RateConstant b) => a.PerSecond >= b.PerSecond;

    public int CompareTo(RateConstant other) => PerSecond.CompareTo(other.PerSecond);
}
