namespace Stockroom.Chemistry.Quantities;

/// <summary>Radioactivity of air, held in Bq/m3.</summary>
public readonly record struct ActivityConcentration(double BecquerelsPerCubicMetre) : IComparable<ActivityConcentration>
{
    public static ActivityConcentration operator +(ActivityConcentration a, ActivityConcentration b) => new(a.BecquerelsPerCubicMetre + b.BecquerelsPerCubicMetre);

    public static ActivityConcentration operator -(ActivityConcentration a, ActivityConcentration b) => new(a.BecquerelsPerCubicMetre - b.BecquerelsPerCubicMetre);

    public static ActivityConcentration operator *(ActivityConcentration a, double k) => new(a.BecquerelsPerCubicMetre * k);

    public static ActivityConcentration operator /(ActivityConcentration a, double k) => new(a.BecquerelsPerCubicMetre / k);

    public static double operator /(ActivityConcentration a, ActivityConcentration b) => a.BecquerelsPerCubicMetre / b.BecquerelsPerCubicMetre;

    public static bool operator <(ActivityConcentration a, ActivityConcentration b) => a.BecquerelsPerCubicMetre < b.BecquerelsPerCubicMetre;

    public static bool operator >(ActivityConcentration a, ActivityConcentration b) => a.BecquerelsPerCubicMetre > b.BecquerelsPerCubicMetre;

    public static bool operator <=(ActivityConcentration a, ActivityConcentration b) => a.BecquerelsPerCubicMetre <= b.BecquerelsPerCubicMetre;

    public static bool operator >=(ActivityConcentration a, ActivityConcentration b) => a.BecquerelsPerCubicMetre >= b.BecquerelsPerCubicMetre;

    public int CompareTo(ActivityConcentration other) => BecquerelsPerCubicMetre.CompareTo(other.BecquerelsPerCubicMetre);
}
