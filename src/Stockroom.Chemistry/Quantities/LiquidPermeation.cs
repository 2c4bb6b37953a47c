namespace Stockroom.Chemistry.Quantities;

/// <summary>A permeation in contact with the liquid, held in kg m/(m2 s).</summary>
public readonly record struct LiquidPermeation(double KilogramMetrePerSquareMetreSecond) : IComparable<LiquidPermeation>
{
    public static LiquidPermeation FromGramMillimetrePerSquareMetreDay(double x) => new(x * 1e-6 / 86400);

    public double GramMillimetrePerSquareMetreDay => KilogramMetrePerSquareMetreSecond * 86400 / 1e-6;

    public static LiquidPermeation operator +(LiquidPermeation a, LiquidPermeation b) => new(a.KilogramMetrePerSquareMetreSecond + b.KilogramMetrePerSquareMetreSecond);

    public static LiquidPermeation operator -(LiquidPermeation a, LiquidPermeation b) => new(a.KilogramMetrePerSquareMetreSecond - b.KilogramMetrePerSquareMetreSecond);

    public static LiquidPermeation operator *(LiquidPermeation a, double k) => new(a.KilogramMetrePerSquareMetreSecond * k);

    public static LiquidPermeation operator /(LiquidPermeation a, double k) => new(a.KilogramMetrePerSquareMetreSecond / k);

    public static double operator /(LiquidPermeation a, LiquidPermeation b) => a.KilogramMetrePerSquareMetreSecond / b.KilogramMetrePerSquareMetreSecond;

    public static bool operator <(LiquidPermeation a, LiquidPermeation b) => a.KilogramMetrePerSquareMetreSecond < b.KilogramMetrePerSquareMetreSecond;

    public static bool operator >(LiquidPermeation a, LiquidPermeation b) => a.KilogramMetrePerSquareMetreSecond > b.KilogramMetrePerSquareMetreSecond;

    public static bool operator <=(LiquidPermeation a, LiquidPermeation b) => a.KilogramMetrePerSquareMetreSecond <= b.KilogramMetrePerSquareMetreSecond;

    public static bool operator >=(LiquidPermeation a, LiquidPermeation b) => a.KilogramMetrePerSquareMetreSecond >= b.KilogramMetrePerSquareMetreSecond;

    public int CompareTo(LiquidPermeation other) => KilogramMetrePerSquareMetreSecond.CompareTo(other.KilogramMetrePerSquareMetreSecond);
}
