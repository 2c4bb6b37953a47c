namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>
/// A liquid in a plastic bottle: through the wetted wall by a permeability and an activation energy of its own, through the dry wall
/// somewhat less, and a little past the cap.
/// </summary>
internal sealed class PlasticBottle : SimulatedBottle
{
    // Grams by millimetre in a square metre and day at 23 degrees C, high-density polyethylene. From memory: trade tables of plastic containers.
    private static readonly (string Name, double Permeability)[] Through =
        [("toluene", 60), ("n-hexane", 50), ("o-xylene", 50), ("acetone", 1.2), ("ethanol", 0.2), ("dichloromethane", 120)];

    private readonly SimulatedVapour _vapour;
    private readonly double _permeability;
    private readonly double _activation;
    private readonly double _dry;

    public PlasticBottle(Chance chance, int seed)
        : base(chance, new SimulatedRoom(chance, seed, 1, 5), SimulatedVessel.Plastic, SimulatedClosure.PlasticCap)
    {
        var (name, permeability) = chance.Of(Through);
        _vapour = SimulatedVapour.Of(name);
        _permeability = permeability * chance.Within(2.5);
        _activation = chance.Between(35_000, 60_000);
        _dry = chance.Between(0.5, 1);
        Fill([_vapour.Density * Vessel.Millilitres * chance.Between(0.4, 0.9)], []);
    }

    public override string Kind => "plastic bottle";

    public override string Content => _vapour.Name is "o-xylene" ? "xylene" : _vapour.Name;

    protected override double FilledMl => Grams / _vapour.Density;

    protected override void Lose(double celsius, double pascals, double seconds)
    {
        if (Grams <= 0)
            return;
        var wall = Math.PI * Vessel.BoreCm * Vessel.Millilitres / Vessel.SectionCm2;
        var full = Math.Min(1, FilledMl / Vessel.Millilitres);
        var wetted = Vessel.SectionCm2 + (wall * full) + (_dry * (Vessel.SectionCm2 + (wall * (1 - full))));
        var warm = Math.Exp(-_activation / 8.314 * ((1 / (celsius + 273.15)) - (1 / 296.15)));
        var through = _permeability * warm * wetted * 1e-4 / (Vessel.WallCm * 10) / 86400;
        var past = _vapour.Diffusivity(celsius) * _vapour.GramsPerCm3(_vapour.Pascals(celsius), celsius) / WayOut;
        Take(0, (through + past) * seconds);
    }
}
