namespace Stockroom.Chemistry.Quantities;

/// <summary>A second-order rate constant, held in m3/(mol s).</summary>
public readonly record struct SecondOrderRateConstant(double CubicMetresPerMoleSecond) : IComparable<SecondOrderRateConstant>
{
    public static SecondOrderRateConstant FromLitresPerMoleSecond(double x) => new(x / 1000);

    public double LitresPerMoleSecond => CubicMetresPerMoleSecond * 1000;

    public static SecondOrderRateConstant operator +(SecondOrderRateConstant a, SecondOrderRateConstant b) => new(a.CubicMetresPerMoleSecond + b.CubicMetresPerMoleSecond);

    public static SecondOrderRateConstant operator -(SecondOrderRateConstant a, SecondOrderRateConstant b) => new(a.CubicMetresPerMoleSecond - b.CubicMetresPerMoleSecond);

    public static SecondOrderRateConstant operator *(SecondOrderRateConstant a, double k) => new(a.CubicMetresPerMoleSecond * k);

    public static SecondOrderRateConstant operator /(SecondOrderRateConstant a, double k) => new(a.CubicMetresPerMoleSecond / k);

    public static double operator /(SecondOrderRateConstant a, SecondOrderRateConstant b) => a.CubicMetresPerMoleSecond / b.CubicMetresPerMoleSecond;

    public static bool operator <(SecondOrderRateConstant a, SecondOrderRateConstant b) => a.CubicMetresPerMoleSecond < b.CubicMetresPerMoleSecond;

    public static bool operator >(SecondOrderRateConstant a, SecondOrderRateConstant b) => a.CubicMetresPerMoleSecond > b.CubicMetresPerMoleSecond;

    public static bool operator <=(SecondOrderRateConstant a, SecondOrderRateConstant b) => a.CubicMetresPerMoleSecond <= b.CubicMetresPerMoleSecond;

    public static bool operator >=(SecondOrderRateConstant a, SecondOrderRateConstant b) => a.CubicMetresPerMoleSecond >= b.CubicMetresPerMoleSecond;

    public int CompareTo(SecondOrderRateConstant other) => CubicMetresPerMoleSecond.CompareTo(other.CubicMetresPerMoleSecond);
}
