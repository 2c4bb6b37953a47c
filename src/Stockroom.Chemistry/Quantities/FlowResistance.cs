namespace Stockroom.Chemistry.Quantities;

/// <summary>Resistance of a way out to vapour, concentration over mass rate, held in s/m3; in series they add.</summary>
public readonly record struct FlowResistance(double SecondsPerCubicMetre) : IComparable<FlowResistance>
{
    public static FlowResistance operator +(FlowResistance a, FlowResistance b) => new(a.SecondsPerCubicMetre + b.SecondsPerCubicMetre);

    public static FlowResistance operator -(FlowResistance a, FlowResistance b) => new(a.SecondsPerCubicMetre - b.SecondsPerCubicMetre);

    public static FlowResistance operator *(FlowResistance a, double k) => new(a.SecondsPerCubicMetre * k);

    public static FlowResistance operator /(FlowResistance a, double k) => new(a.SecondsPerCubicMetre / k);

    public static double operator /(FlowResistance a, FlowResistance b) => a.SecondsPerCubicMetre / b.SecondsPerCubicMetre;

    public static bool operator <(FlowResistance a, FlowResistance b) => a.SecondsPerCubicMetre < b.SecondsPerCubicMetre;

    public static bool operator >(FlowResistance a, FlowResistance b) => a.SecondsPerCubicMetre > b.SecondsPerCubicMetre;

    public static bool operator <=(FlowResistance a, FlowResistance b) => a.SecondsPerCubicMetre <= b.SecondsPerCubicMetre;

    public static bool operator >=(FlowResistance a, FlowResistance b) => a.SecondsPerCubicMetre >= b.SecondsPerCubicMetre;

    public int CompareTo(FlowResistance other) => SecondsPerCubicMetre.CompareTo(other.SecondsPerCubicMetre);
}
