namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>
/// A pure liquid or a solid that sublimes, behind a closed slit: plain diffusion, drift of the gas counted where there is much vapour; and
/// what the liner of a screw cap lets through.
/// </summary>
internal sealed class GapBottle : SimulatedBottle
{
    // Grams by millimetre in a square metre and day at 25 degrees C, fluoropolymer; bromine some ten times as fast. From memory: trade tables of films.
    private const double Liner = 0.15;
    private const double LinerMm = 0.25;
    private const double LinerActivation = 45_000;

    private readonly SimulatedVapour _vapour;
    private readonly double _liner;

    private GapBottle(string kind, Chance chance, SimulatedRoom room, SimulatedVessel vessel, SimulatedClosure closure, SimulatedVapour vapour)
        : base(chance, room, vessel, closure)
    {
        (Kind, _vapour) = (kind, vapour);
        _liner = closure == SimulatedClosure.ScrewCap ? Liner * chance.Within(4) * (vapour.Name == "bromine" ? 10 : 1) : 0;
        Fill([vapour.Density * vessel.Millilitres * chance.Between(0.35, 0.9)], []);
    }

    public static GapBottle OfLiquid(Chance chance, int seed) => new(
        "liquid, gap", chance, new SimulatedRoom(chance, seed, 1, 5), SimulatedVessel.ScrewBottle, SimulatedClosure.ScrewCap,
        SimulatedVapour.Of(chance.Of("acetone", "n-hexane", "toluene", "ethanol", "bromine", "dichloromethane", "o-xylene", "butan-1-ol")));

    public static GapBottle OfSolid(Chance chance, int seed) => new(
        "solid that sublimes", chance, new SimulatedRoom(chance, seed, 1, 5), SimulatedVessel.Jar, chance.Of(SimulatedClosure.WaxedCap, SimulatedClosure.Cork),
        SimulatedVapour.Of(chance.Of("iodine", "naphthalene", "camphor")));

    public override string Kind { get; }

    public override string Content => _vapour.Name;

    protected override double FilledMl => Grams / _vapour.Density;

    protected override void Lose(double celsius, double pascals, double seconds)
    {
        var p = Math.Min(_vapour.Pascals(celsius), 0.9 * pascals);
        var drift = p > 0.01 * pascals ? -Math.Log(1 - (p / pascals)) * pascals / p : 1;
        var past = _vapour.Diffusivity(celsius) * _vapour.GramsPerCm3(p, celsius) * drift / WayOut;
        var through = _liner * Math.Exp(-LinerActivation / 8.314 * ((1 / (celsius + 273.15)) - (1 / 298.15))) * Vessel.NeckSectionCm2 * 1e-4 / LinerMm / 86400;
        Take(0, (past + through) * seconds);
    }
}
