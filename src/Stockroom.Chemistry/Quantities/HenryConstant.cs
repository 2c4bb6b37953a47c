namespace Stockroom.Chemistry.Quantities;

/// <summary>A solubility of a gas in water, concentration per pressure, held in mol/(m3 Pa).</summary>
public readonly record struct HenryConstant(double MolesPerCubicMetrePascal) : IComparable<HenryConstant>
{
    public static HenryConstant operator +(HenryConstant a, HenryConstant b) => new(a.MolesPerCubicMetrePascal + b.MolesPerCubicMetrePascal);

    public static HenryConstant operator -(HenryConstant a, HenryConstant b) => new(a.MolesPerCubicMetrePascal - b.MolesPerCubicMetrePascal);

    public static HenryConstant operator *(HenryConstant a, double k) => new(a.MolesPerCubicMetrePascal * k);

    public static HenryConstant operator /(HenryConstant a, double k) => new(a.MolesPerCubicMetrePascal / k);

    public static double operator /(HenryConstant a, HenryConstant b) => a.MolesPerCubicMetrePascal / b.MolesPerCubicMetrePascal;

    public static bool operator <(HenryConstant a, HenryConstant b) => a.MolesPerCubicMetrePascal < b.MolesPerCubicMetrePascal;

    public static bool operator >(HenryConstant a, HenryConstant b) => a.MolesPerCubicMetrePascal > b.MolesPerCubicMetrePascal;

    public static bool operator <=(HenryConstant a, HenryConstant b) => a.MolesPerCubicMetrePascal <= b.MolesPerCubicMetrePascal;

    public static bool operator >=(HenryConstant a, HenryConstant b) => a.MolesPerCubicMetrePascal >= b.MolesPerCubicMetrePascal;

    public int CompareTo(HenryConstant other) => MolesPerCubicMetrePascal.CompareTo(other.MolesPerCubicMetrePascal);
}
