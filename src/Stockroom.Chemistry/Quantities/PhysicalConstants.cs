namespace Stockroom.Chemistry.Quantities;

/// <summary>Constants of nature and the reference states used throughout.</summary>
public static class PhysicalConstants
{
    /// <summary>Molar gas constant, J/(mol K), exact since the 2019 SI.</summary>
    public const double GasConstant = 8.31446261815324;

    /// <summary>Avogadro constant, 1/mol, exact since the 2019 SI.</summary>
    public const double Avogadro = 6.02214076e23;

    /// <summary>Standard atmosphere, 101,325 Pa.</summary>
    public static readonly Pressure StandardAtmosphere = new(101_325);

    /// <summary>25 degrees Celsius, the reference temperature of most tabulated data.</summary>
    public static readonly Temperature Reference = new(298.15);
}
