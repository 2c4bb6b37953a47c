namespace Stockroom.Chemistry.Quantities;

/// <summary>A mass of one mole, held in kg/mol.</summary>
public readonly record struct MolarMass(double KilogramsPerMole) : IComparable<MolarMass>
{
    public static MolarMass FromGramsPerMole(double x) => new(x / 1e3);

    public double GramsPerMole => KilogramsPerMole * 1e3;

    public static MolarMass operator +(MolarMass a, MolarMass b) => new(a.KilogramsPerMole + b.KilogramsPerMole);

    public static MolarMass operator -(MolarMass a, MolarMass b) => new(a.KilogramsPerMole - b.KilogramsPerMole);

    public static MolarMass operator *(MolarMass a, double k) => new(a.KilogramsPerMole * k);

    public static MolarMass operator /(MolarMass a, double k) => new(a.KilogramsPerMole / k);

    public static double operator /(MolarMass a, MolarMass b) => a.KilogramsPerMole / b.KilogramsPerMole;

    public static bool operator <(MolarMass a, MolarMass b) => a.KilogramsPerMole < b.KilogramsPerMole;

    public static bool operator >(MolarMass a, MolarMass b) => a.KilogramsPerMole > b.KilogramsPerMole;

    public static bool operator <=(MolarMass a, MolarMass b) => a.KilogramsPerMole <= b.KilogramsPerMole;

    public static bool operator >=(MolarMass a, MolarMass b) => a.KilogramsPerMole >= b.KilogramsPerMole;

    public int CompareTo(MolarMass other) => KilogramsPerMole.CompareTo(other.KilogramsPerMole);
}
