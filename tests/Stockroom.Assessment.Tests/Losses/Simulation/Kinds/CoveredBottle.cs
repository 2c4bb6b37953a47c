namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>
/// A content under a liquid: it dissolves into the cover, wanders through and leaves by the slit; the cover itself evaporates by the same
/// slit, or drinks water by it. The balance feels both.
/// </summary>
internal sealed class CoveredBottle : SimulatedBottle
{
    // Grams dissolved in a millilitre, and cm2/s in the cover. From memory: handbook solubilities; of acid, the range said of it.
    private static readonly (string Name, double Solubility, double Diffusivity)[] UnderWater =
        [("bromine", 0.034, 1.2e-5), ("iodine", 0.00033, 1.3e-5), ("chloroform", 0.0079, 1.0e-5), ("carbon disulfide", 0.0021, 1.1e-5)];

    private readonly SimulatedVapour _vapour;
    private readonly SimulatedVapour _water = SimulatedVapour.Of("water");
    private readonly double _solubility;
    private readonly double _diffusivity;
    private readonly double _coverDensity;
    private readonly bool _drinks;

    private CoveredBottle(bool acid, Chance chance, int seed)
        : base(chance, new SimulatedRoom(chance, seed, 1, 5), SimulatedVessel.SmallJointBottle, SimulatedClosure.Stopper)
    {
        _drinks = acid;
        (string Name, double Solubility, double Diffusivity) what = acid
            ? (chance.Of("bromine", "iodine"), chance.Log(0.002, 0.05), chance.Log(1.5e-7, 1.3e-6))
            : chance.Of(UnderWater);
        _vapour = SimulatedVapour.Of(what.Name);
        (_solubility, _diffusivity) = (what.Solubility, what.Diffusivity);
        _coverDensity = acid ? 1.84 : 1;
        CoverMm = chance.Between(6, 15);
        Fill([_vapour.Density * Vessel.Millilitres * chance.Between(0.15, 0.6)], [CoverMm / 10 * Vessel.SectionCm2 * _coverDensity]);
    }

    public static CoveredBottle Water(Chance chance, int seed) => new(false, chance, seed);

    public static CoveredBottle Acid(Chance chance, int seed) => new(true, chance, seed);

    public override string Kind => _drinks ? BottleKinds.Drinks : "under water";

    public override string Content => _vapour.Name;

    public override string Cover => _drinks ? "sulfuric acid 98%" : "water";

    public override double CoverMm { get; }

    protected override double FilledMl => (Part(0) / _vapour.Density) + (Part(1) / _coverDensity);

    protected override void Lose(double celsius, double pascals, double seconds)
    {
        var saturated = _vapour.GramsPerCm3(_vapour.Pascals(celsius), celsius);
        var depth = Part(1) / _coverDensity / Vessel.SectionCm2;
        var gas = WayOut / _vapour.Diffusivity(celsius);
        var liquid = depth * saturated / (_solubility * _diffusivity * Vessel.SectionCm2);
        Take(0, saturated / (gas + liquid) * seconds);

        var inside = _drinks ? 0.01 : 1;
        var water = _water.GramsPerCm3(_water.Pascals(celsius) * (inside - Room.Humidity), celsius);
        Take(1, _water.Diffusivity(celsius) * water / WayOut * seconds);
    }
}
