using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>Who weighs a simulated bottle now and then, and what goes into the book of it.</summary>
internal sealed class Keeper
{
    private static readonly DateOnly FirstYear = new(2023, 1, 1);

    private readonly Chance _chance;
    private readonly SimulatedBalance _balance;
    private readonly List<WeighIn> _weighings = [];
    private readonly List<Draw> _draws = [];
    private long _order;

    public Keeper(Chance chance, SimulatedBottle bottle)
    {
        (_chance, Bottle) = (chance, bottle);
        _balance = new SimulatedBalance(chance);
    }

    public SimulatedBottle Bottle { get; set; }

    public double StepGrams => _balance.StepGrams;

    /// <summary>Grams taken out, booked or not.</summary>
    public double Taken { get; private set; }

    public DateOnly Today => FirstYear.AddDays(Bottle.Room.StartDay + Bottle.Day);

    private double Gross => Bottle.Vessel.TareGrams + Bottle.Weighable;

    /// <summary>Weighs and books it; a slip of the pen is off by one in some digit, or by two digits changed about.</summary>
    public void Weigh(bool slip)
    {
        var (celsius, pascals) = (Bottle.Room.StatedMean + _chance.Between(-3, 3), Bottle.Room.Pascals);
        var reading = _balance.Read(Gross, Bottle.DisplacedMl, celsius, pascals);
        _weighings.Add(new WeighIn(Today, Mass.FromGrams(slip ? Slipped(reading) : reading), Mass.FromGrams(StepGrams))
        {
            At = _balance.AirIsRead ? Temperature.FromCelsius(celsius) : null,
            Air = _balance.AirIsRead ? new Pressure(pascals) : null,
            Order = ++_order,
        });
    }

    /// <summary>Days until the keeper comes again: none, a few, or up to most of a year.</summary>
    public int Interval() => _chance.Between(0, 1) switch { < 0.05 => 0, < 0.1 => 3, _ => (int)_chance.Log(15, 220) };

    public void Wait(int days)
    {
        Bottle.Wait(days);
        _balance.Wait(days);
    }

    public void Draw(bool booked)
    {
        var share = _chance.Between(0.03, 0.13);
        var grams = share * Bottle.Grams;
        Bottle.Draw(share);
        Taken += grams;
        if (booked)
            _draws.Add(new Draw(Today, Mass.FromGrams(grams)) { Order = ++_order });
    }

    /// <summary>What the scatter of two readings so many days apart is, one standard deviation in grams.</summary>
    public double Scatter(int days) => _balance.Scatter(Gross, Bottle.DisplacedMl, days);

    /// <summary>What the book knows.</summary>
    public Situation Book() =>
        Bench.Of(Bottle.Content, Bottle.StartGrams - _draws.Sum(d => d.Amount!.Value.Grams), Bottle.Vessel.Name, Bottle.Closure.Name, Bottle.Room.StatedMean, Bottle.Cover, Bottle.CoverMm) with
        {
            AmountOn = FirstYear.AddDays(Bottle.Room.StartDay),
            Filled = FirstYear.AddDays(Bottle.Room.StartDay),
            DailySwing = new TemperatureChange(Bottle.Room.StatedDay),
            SeasonalSwing = new TemperatureChange(Bottle.Room.BookKnowsSeasons ? Bottle.Room.StatedSeasons : 0),
            Weighings = [.. _weighings],
            Draws = [.. _draws],
        };

    private double Slipped(double reading)
    {
        var steps = ((long)Math.Round(reading / StepGrams)).ToString(System.Globalization.CultureInfo.InvariantCulture).ToCharArray();
        var at = (int)_chance.Between(0, steps.Length - 1);
        if (steps[at] != steps[at + 1])
            (steps[at], steps[at + 1]) = (steps[at + 1], steps[at]);
        else
            steps[at] = (char)(steps[at] == '9' ? '8' : steps[at] + 1);
        return long.Parse(steps, System.Globalization.CultureInfo.InvariantCulture) * StepGrams;
    }
}
