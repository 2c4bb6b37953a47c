namespace Stockroom.Chemistry.Quantities;

/// <summary>An amount of substance, held in mol.</summary>
public readonly record struct AmountOfSubstance(double Moles) : IComparable<AmountOfSubstance>
{
    public static AmountOfSubstance operator +(AmountOfSubstance a, AmountOfSubstance b) => new(a.Moles + b.Moles);

    public static AmountOfSubstance operator -(AmountOfSubstance a, AmountOfSubstance b) => new(a.Moles - b.Moles);

    public static AmountOfSubstance operator *(AmountOfSubstance a, double k) => new(a.Moles * k);

    public static AmountOfSubstance operator /(AmountOfSubstance a, double k) => new(a.Moles / k);

    public static double operator /(AmountOfSubstance a, AmountOfSubstance b) => a.Moles / b.Moles;

    public static bool operator <(AmountOfSubstance a, AmountOfSubstance b) => a.Moles < b.Moles;

    public static bool operator >(AmountOfSubstance a, AmountOfSubstance b) => a.Moles > b.Moles;

    public static bool operator <=(AmountOfSubstance a, AmountOfSubstance b) => a.Moles <= b.Moles;

    public static bool operator >=(AmountOfSubstance a, AmountOfSubstance b) => a.Moles >= b.Moles;

    public int CompareTo(AmountOfSubstance other) => Moles.CompareTo(other.Moles);
}
