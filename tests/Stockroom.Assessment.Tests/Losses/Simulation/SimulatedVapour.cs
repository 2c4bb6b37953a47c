namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>A vapour with constants of its own: log10 p/kPa = A - B/(C + t), t in degrees Celsius, over the liquid or the solid.</summary>
/// <param name="Name">As the catalogue calls what gives it off.</param>
/// <param name="A">Antoine constant.</param>
/// <param name="B">Antoine constant.</param>
/// <param name="C">Antoine constant.</param>
/// <param name="GramsPerMole">Molar mass.</param>
/// <param name="DiffusivityCm2">In air at 25 degrees C, cm2/s.</param>
/// <param name="Density">Of what gives it off, g/mL.</param>
/// <param name="Source">Where the constants come from.</param>
internal sealed record SimulatedVapour(string Name, double A, double B, double C, double GramsPerMole, double DiffusivityCm2, double Density, string Source)
{
    private const string Lange = "from memory: Dean, Lange's Handbook of Chemistry, 15th ed., table 5.9, turned into kPa; diffusivity by Cussler, Diffusion, table 5.1, or its neighbours";
    private const string Solids = "from memory: vapour pressure at 25 degrees C and heat of sublimation, 62.4 (iodine), 72.6 (naphthalene), 52 (camphor) kJ/mol";

    private static readonly SimulatedVapour[] All =
    [
        new("acetone", 6.2424, 1210.6, 229.66, 58.08, 0.105, 0.785, Lange),
        new("n-hexane", 6.0027, 1171.53, 224.37, 86.18, 0.078, 0.655, Lange),
        new("toluene", 6.0790, 1344.8, 219.48, 92.14, 0.084, 0.862, Lange),
        new("o-xylene", 6.1238, 1474.68, 213.69, 106.17, 0.073, 0.876, Lange),
        new("ethanol", 7.2371, 1592.86, 226.18, 46.07, 0.119, 0.785, Lange),
        new("butan-1-ol", 6.6017, 1362.39, 178.77, 74.12, 0.086, 0.806, Lange),
        new("dichloromethane", 6.5341, 1325.9, 252.6, 84.93, 0.104, 1.32, Lange),
        new("chloroform", 5.6183, 929.44, 196.03, 119.38, 0.089, 1.48, Lange),
        new("carbon disulfide", 6.0668, 1168.6, 241.59, 76.14, 0.107, 1.26, Lange),
        new("bromine", 6.0030, 1119.7, 221.38, 159.81, 0.094, 3.10, Lange),
        new("water", 7.1962, 1730.63, 233.43, 18.02, 0.249, 0.997, Lange),
        new("iodine", 9.5422, 3259.6, 273.15, 253.81, 0.083, 4.93, Solids),
        new("naphthalene", 10.7571, 3792.4, 273.15, 128.17, 0.062, 1.16, Solids),
        new("camphor", 7.6924, 2716.3, 273.15, 152.23, 0.059, 0.99, Solids),
        new("ammonia", 0, 0, 1, 17.03, 0.23, 0.91, "solution: see SolutionBottle; diffusivity from memory: Cussler, table 5.1"),
        new("hydrogen chloride", 0, 0, 1, 36.46, 0.18, 1.18, "solution: see SolutionBottle; diffusivity from memory, estimate by its neighbours"),
    ];

    public static SimulatedVapour Of(string name) => Array.Find(All, v => v.Name == name) ?? throw new ArgumentException(name, nameof(name));

    public double Pascals(double celsius) => 1000 * Math.Pow(10, A - (B / (C + celsius)));

    /// <summary>Grams in a cubic centimetre of gas at a partial pressure.</summary>
    public double GramsPerCm3(double pascals, double celsius) => pascals * GramsPerMole / (8.314 * (celsius + 273.15)) * 1e-6;

    public double Diffusivity(double celsius) => DiffusivityCm2 * Math.Pow((celsius + 273.15) / 298.15, 1.75);
}
