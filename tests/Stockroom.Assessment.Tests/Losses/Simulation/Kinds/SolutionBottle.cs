namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>A gas dissolved in water, which goes with some water and grows weaker; water comes in where the room is damper than the solution.</summary>
internal sealed class SolutionBottle : SimulatedBottle
{
    private readonly SimulatedVapour _gas;
    private readonly SimulatedVapour _water = SimulatedVapour.Of("water");
    private readonly bool _acid;

    public SolutionBottle(Chance chance, int seed)
        : base(chance, new SimulatedRoom(chance, seed, 1, 5), SimulatedVessel.JointBottle, SimulatedClosure.Stopper)
    {
        _acid = chance.Happens(0.5);
        _gas = SimulatedVapour.Of(_acid ? "hydrogen chloride" : "ammonia");
        var percent = _acid ? 37 : chance.Of(25, 10);
        Content = _acid ? "hydrochloric acid 37%" : $"ammonia solution {percent}%";
        var grams = _gas.Density * Vessel.Millilitres * chance.Between(0.35, 0.9);
        Fill([grams * percent / 100, grams * (100 - percent) / 100], []);
    }

    public override string Kind => "gas in water";

    public override string Content { get; }

    protected override double FilledMl => Grams / _gas.Density;

    protected override void Lose(double celsius, double pascals, double seconds)
    {
        var percent = 100 * Part(0) / Grams;
        var gas = _gas.GramsPerCm3(Math.Min(GasPascals(percent, celsius), 0.9 * pascals), celsius);
        var water = _water.GramsPerCm3(_water.Pascals(celsius) * (WaterShare(percent) - Room.Humidity), celsius);
        Take(0, _gas.Diffusivity(celsius) * gas / WayOut * seconds);
        Take(1, _water.Diffusivity(celsius) * water / WayOut * seconds);
    }

    // From memory, by two points each of tables of partial pressures at 20 degrees C: ammonia 9.3 kPa at 10 % and 40 kPa at 25 %; hydrogen
    // chloride 1.4 kPa at 30 % and 14 kPa at 36 %. Slopes with 1/T 4200 and 5300 K.
    private double GasPascals(double percent, double celsius)
    {
        var turn = (1 / (celsius + 273.15)) - (1 / 293.15);
        return _acid
            ? 1400 * Math.Pow(10, (percent - 30) / 6) * Math.Exp(-5300 * turn)
            : 9300 * Math.Pow(percent / 10, 1.6) * Math.Exp(-4200 * turn);
    }

    // Water over the solution as a share of that over pure water; over the strong acid far less than its mole fraction.
    private double WaterShare(double percent) => _acid ? Math.Max(0.1, 1 - (0.023 * percent)) : 1 - (0.0105 * percent);
}
