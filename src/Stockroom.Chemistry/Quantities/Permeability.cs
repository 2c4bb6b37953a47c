namespace Stockroom.Chemistry.Quantities;

/// <summary>A gas permeability of a wall material, held in mol m/(m2 s Pa).</summary>
public readonly record struct Permeability(double MolePerMetreSecondPascal) : IComparable<Permeability>
{
    public static Permeability FromBarrer(double x) => new(x * 3.3464e-16);

    public double Barrer => MolePerMetreSecondPascal / 3.3464e-16;

    public static Permeability operator +(Permeability a, Permeability b) => new(a.MolePerMetreSecondPascal + b.MolePerMetreSecondPascal);

    public static Permeability operator -(Permeability a, Permeability b) => new(a.MolePerMetreSecondPascal - b.MolePerMetreSecondPascal);

    public static Permeability operator *(Permeability a, double k) => new(a.MolePerMetreSecondPascal * k);

    public static Permeability operator /(Permeability a, double k) => new(a.MolePerMetreSecondPascal / k);

    public static double operator /(Permeability a, Permeability b) => a.MolePerMetreSecondPascal / b.MolePerMetreSecondPascal;

    public static bool operator <(Permeability a, Permeability b) => a.MolePerMetreSecondPascal < b.MolePerMetreSecondPascal;

    public static bool operator >(Permeability a, Permeability b) => a.MolePerMetreSecondPascal > b.MolePerMetreSecondPascal;

    public static bool operator <=(Permeability a, Permeability b) => a.MolePerMetreSecondPascal <= b.MolePerMetreSecondPascal;

    public static bool operator >=(Permeability a, Permeability b) => a.MolePerMetreSecondPascal >= b.MolePerMetreSecondPascal;

    public int CompareTo(Permeability other) => MolePerMetreSecondPascal.CompareTo(other.MolePerMetreSecondPascal);
}
