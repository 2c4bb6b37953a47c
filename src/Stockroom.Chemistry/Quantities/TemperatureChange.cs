namespace Stockroom.Chemistry.Quantities;

/// <summary>A difference between two temperatures, held in K.</summary>
public readonly record struct TemperatureChange(double Kelvins) : IComparable<TemperatureChange>
{
    public static TemperatureChange operator +(TemperatureChange a, TemperatureChange b) => new(a.Kelvins + b.Kelvins);

    public static TemperatureChange operator -(TemperatureChange a, TemperatureChange b) => new(a.Kelvins - b.Kelvins);

    public static TemperatureChange operator *(TemperatureChange a, double k) => new(a.Kelvins * k);

    public static TemperatureChange operator /(TemperatureChange a, double k) => new(a.Kelvins / k);

    public static double operator /(TemperatureChange a, TemperatureChange b) => a.Kelvins / b.Kelvins;

    public static bool operator <(TemperatureChange a, TemperatureChange b) => a.Kelvins < b.Kelvins;

    public static bool operator >(TemperatureChange a, TemperatureChange b) => a.Kelvins > b.Kelvins;

    public static bool operator <=(TemperatureChange a, TemperatureChange b) => a.Kelvins <= b.Kelvins;

    public static bool operator >=(TemperatureChange a, TemperatureChange b) => a.Kelvins >= b.Kelvins;

    public int CompareTo(TemperatureChange other) => Kelvins.CompareTo(other.Kelvins);
}
