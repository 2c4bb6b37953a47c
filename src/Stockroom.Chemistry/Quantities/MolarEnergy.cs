namespace Stockroom.Chemistry.Quantities;

/// <summary>An energy per amount of substance, held in J/mol.</summary>
public readonly record struct MolarEnergy(double JoulesPerMole) : IComparable<MolarEnergy>
{
    public static MolarEnergy FromKilojoulesPerMole(double x) => new(x / 0.001);

    public double KilojoulesPerMole => JoulesPerMole * 0.001;

    public static MolarEnergy operator +(MolarEnergy a, MolarEnergy b) => new(a.JoulesPerMole + b.JoulesPerMole);

    public static MolarEnergy operator -(MolarEnergy a, MolarEnergy b) => new(a.JoulesPerMole - b.JoulesPerMole);

    public static MolarEnergy operator *(MolarEnergy a, double k) => new(a.JoulesPerMole * k);

    public static MolarEnergy operator /(MolarEnergy a, double k) => new(a.JoulesPerMole / k);

    public static double operator /(MolarEnergy a, MolarEnergy b) => a.JoulesPerMole / b.JoulesPerMole;

    public static bool operator <(MolarEnergy a, MolarEnergy b) => a.JoulesPerMole < b.JoulesPerMole;

    public static bool operator >(MolarEnergy a, MolarEnergy b) => a.JoulesPerMole > b.JoulesPerMole;

    public static bool operator <=(MolarEnergy a, MolarEnergy b) => a.JoulesPerMole <= b.JoulesPerMole;

    public static bool operator >=(MolarEnergy a, MolarEnergy b) => a.JoulesPerMole >= b.JoulesPerMole;

    public int CompareTo(MolarEnergy other) => JoulesPerMole.CompareTo(other.JoulesPerMole);
}
