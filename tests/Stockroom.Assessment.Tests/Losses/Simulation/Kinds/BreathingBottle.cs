namespace Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

/// <summary>
/// A pure liquid behind a closure that lets air through: hour by hour the air inside warms and cools a little after the room, takes up
/// vapour, and flows through the slit until its pressure is the barometer's; what flows out takes saturated vapour along. Diffusion goes on beside it.
/// </summary>
internal sealed class BreathingBottle : SimulatedBottle
{
    // Viscosity of air, Pa s; the glass follows the room within some two hours.
    private const double Viscosity = 1.8e-5;
    private const double FollowSeconds = 7200;

    private readonly SimulatedVapour _vapour;
    private double _celsius = double.NaN;
    private double _air;

    public BreathingBottle(Chance chance, int seed)
        : base(chance, new SimulatedRoom(chance, seed, 5, 14), SimulatedVessel.JointBottle, SimulatedClosure.Cork)
    {
        _vapour = SimulatedVapour.Of(chance.Of("acetone", "n-hexane", "toluene", "ethanol", "chloroform"));
        Fill([_vapour.Density * Vessel.Millilitres * chance.Between(0.25, 0.8)], []);
    }

    public override string Kind => "liquid, breathing";

    public override string Content => _vapour.Name;

    protected override double Step => 1;

    protected override double FilledMl => Grams / _vapour.Density;

    protected override void Lose(double celsius, double pascals, double seconds)
    {
        if (double.IsNaN(_celsius))
            (_celsius, _air) = (celsius, pascals - _vapour.Pascals(celsius));
        var before = _celsius;
        _celsius += (celsius - before) * (1 - Math.Exp(-seconds / FollowSeconds));
        var p = Math.Min(_vapour.Pascals(_celsius), 0.9 * pascals);
        _air *= (_celsius + 273.15) / (before + 273.15);

        // Through the slit: cubic centimetres a second for each pascal; pressure falls off with the time of headspace over conductance.
        var conductance = Math.PI * Vessel.NeckCm * Math.Pow(SlitCm, 3) / (12 * Viscosity * Closure.LengthCm);
        var evens = 1 - Math.Exp(-seconds * conductance * pascals / HeadspaceMl);
        var flows = (_air + p - pascals) * evens;
        _air -= flows > 0 ? flows * _air / (_air + p) : flows;
        var pumped = flows > 0 ? _vapour.GramsPerCm3(p, _celsius) * HeadspaceMl * flows / (_air + p) : 0;
        var drift = -Math.Log(1 - (p / pascals)) * pascals / p;
        var diffused = _vapour.Diffusivity(_celsius) * _vapour.GramsPerCm3(p, _celsius) * drift / WayOut * seconds;

        // Vapour that goes leaves room which the next step fills with vapour again; air comes in as vapour diffuses out.
        _air += (pascals - p - _air) * Math.Min(1, seconds * _vapour.Diffusivity(_celsius) / WayOut / HeadspaceMl);
        Take(0, pumped + diffused);
    }
}
