namespace Stockroom.Chemistry.Quantities;

/// <summary>A binary diffusion coefficient, held in m2/s.</summary>
public readonly record struct Diffusivity(double SquareMetresPerSecond) : IComparable<Diffusivity>
{
    public static Diffusivity FromSquareCentimetresPerSecond(double x) => new(x / 1e4);

    public double SquareCentimetresPerSecond => SquareMetresPerSecond * 1e4;

    public static Diffusivity operator +(Diffusivity a, Diffusivity b) => new(a.SquareMetresPerSecond + b.SquareMetresPerSecond);

    public static Diffusivity operator -(Diffusivity a, Diffusivity b) => new(a.SquareMetresPerSecond - b.SquareMetresPerSecond);

    public static Diffusivity operator *(Diffusivity a, double k) => new(a.SquareMetresPerSecond * k);

    public static Diffusivity operator /(Diffusivity a, double k) => new(a.SquareMetresPerSecond / k);

    public static double operator /(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond / b.SquareMetresPerSecond;

    public static bool operator <(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond < b.SquareMetresPerSecond;

    public static bool operator >(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond > b.SquareMetresPerSecond;

    public static bool operator <=(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond <= b.SquareMetresPerSecond;

    public static bool operator >=(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond >= b.SquareMetresPerSecond;

    public int CompareTo(Diffusivity other) => SquareMetresPerSecond.CompareTo(other.SquareMetresPerSecond);
}
