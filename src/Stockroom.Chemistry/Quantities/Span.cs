namespace Stockroom.Chemistry.Quantities;

/// <summary>A length of time, held in s.</summary>
public readonly record struct Span(double Seconds) : IComparable<Span>
{
    /// <summary>Julian year, 365.25 days of 86,400 s (IAU).</summary>
    public const double SecondsPerYear = 31_557_600.0;

    public static Span FromDays(double x) => new(x * 86400);

    public double Days => Seconds / 86400;

    public static Span FromYears(double x) => new(x * SecondsPerYear);

    public double Years => Seconds / SecondsPerYear;

    public static Span operator +(Span a, Span b) => new(a.Seconds + b.Seconds);

    public static Span operator -(Span a, Span b) => new(a.Seconds - b.Seconds);

    public static Span operator *(Span a, double k) => new(a.Seconds * k);

    public static Span operator /(Span a, double k) => new(a.Seconds / k);

    public static double operator /(Span a, Span b) => a.Seconds / b.Seconds;

    public static bool operator <(Span a, Span b) => a.Seconds < b.Seconds;

    public static bool operator >(Span a, Span b) => a.Seconds > b.Seconds;

    public static bool operator <=(Span a, Span b) => a.Seconds <= b.Seconds;

    public static bool operator >=(Span a, Span b) => a.Seconds >= b.Seconds;

    public int CompareTo(Span other) => Seconds.CompareTo(other.Seconds);
}
