namespace Stockroom.Chemistry.Quantities;

/// <summary>A speed, held in m/s.</summary>
public readonly record struct Speed(double MetresPerSecond) : IComparable<Speed>
{
    public static Speed operator +(Speed a, Speed b) => new(a.MetresPerSecond + b.MetresPerSecond);

    public static Speed operator -(Speed a, Speed b) => new(a.MetresPerSecond - b.MetresPerSecond);

    public static Speed operator *(Speed a, double k) => new(a.MetresPerSecond * k);

    public static Speed operator /(Speed a, double k) => new(a.MetresPerSecond / k);

    public static double operator /(Speed a, Speed b) => a.MetresPerSecond / b.MetresPerSecond;

    public static bool operator <(Speed a, Speed b) => a.MetresPerSecond < b.MetresPerSecond;

    public static bool operator >(Speed a, Speed b) => a.MetresPerSecond > b.MetresPerSecond;

    public static bool operator <=(Speed a, Speed b) => a.MetresPerSecond <= b.MetresPerSecond;

    public static bool operator >=(Speed a, Speed b) => a.MetresPerSecond >= b.MetresPerSecond;

    public int CompareTo(Speed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);
}
