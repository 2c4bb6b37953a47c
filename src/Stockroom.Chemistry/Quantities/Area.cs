namespace Stockroom.Chemistry.Quantities;

/// <summary>A area, held in m2.</summary>
public readonly record struct Area(double SquareMetres) : IComparable<Area>
{
    public static Area FromSquareMillimetres(double x) => new(x / 1e6);

    public double SquareMillimetres => SquareMetres * 1e6;

    public static Area FromSquareCentimetres(double x) => new(x / 1e4);

    public double SquareCentimetres => SquareMetres * 1e4;

    public static Area operator +(Area a, Area b) => new(a.SquareMetres + b.SquareMetres);

    public static Area operator -(Area a, Area b) => new(a.SquareMetres - b.SquareMetres);

    public static Area operator *(Area a, double k) => new(a.SquareMetres * k);

    public static Area operator /(Area a, double k) => new(a.SquareMetres / k);

    public static double operator /(Area a, Area b) => a.SquareMetres / b.SquareMetres;

    public static bool operator <(Area a, Area b) => a.SquareMetres < b.SquareMetres;

    public static bool operator >(Area a, Area b) => a.SquareMetres > b.SquareMetres;

    public static bool operator <=(Area a, Area b) => a.SquareMetres <= b.SquareMetres;

    public static bool operator >=(Area a, Area b) => a.SquareMetres >= b.SquareMetres;

    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);
}
