namespace Stockroom.Chemistry.Quantities;

/// <summary>A radioactive decays per second, held in Bq.</summary>
public readonly record struct Activity(double Becquerels) : IComparable<Activity>
{
    public static Activity operator +(Activity a, Activity b) => new(a.Becquerels + b.Becquerels);

    public static Activity operator -(Activity a, Activity b) => new(a.Becquerels - b.Becquerels);

    public static Activity operator *(Activity a, double k) => new(a.Becquerels * k);

    public static Activity operator /(Activity a, double k) => new(a.Becquerels / k);

    public static double operator /(Activity a, Activity b) => a.Becquerels / b.Becquerels;

    public static bool operator <(Activity a, Activity b) => a.Becquerels < b.Becquerels;

    public static bool operator >(Activity a, Activity b) => a.Becquerels > b.Becquerels;

    public static bool operator <=(Activity a, Activity b) => a.Becquerels <= b.Becquerels;

    public static bool operator >=(Activity a, Activity b) => a.Becquerels >= b.Becquerels;

    public int CompareTo(Activity other) => Becquerels.CompareTo(other.Becquerels);
}
