namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>
/// A bottle that really loses, step by step, by laws of its own, in centimetres, grams and hours. Nothing of it knows the forecast.
/// </summary>
internal abstract class SimulatedBottle
{
    private const int SampledDays = 73;

    private double[] _grams = [];
    private double _times = 1;
    private int _contentParts;
    private double _hour;

    protected SimulatedBottle(Chance chance, SimulatedRoom room, SimulatedVessel vessel, SimulatedClosure closure)
    {
        (Room, Vessel, Closure) = (room, vessel, closure);
        (SlitCm, Odd) = closure.One(chance);
        _hour = 24 * room.StartDay;
    }

    public abstract string Kind { get; }

    /// <summary>What the book says is in it.</summary>
    public abstract string Content { get; }

    /// <summary>What the book says lies over it; null for nothing.</summary>
    public virtual string? Cover => null;

    /// <summary>Depth of the cover at the start.</summary>
    public virtual double CoverMm => 0;

    /// <summary>Grams of the content, cover not counted.</summary>
    public double Grams => _grams.Take(_contentParts).Sum();

    /// <summary>Grams of all that a balance feels in the bottle.</summary>
    public double Weighable => _grams.Sum();

    public double StartGrams { get; private set; }

    public SimulatedRoom Room { get; private set; }

    public SimulatedVessel Vessel { get; }

    public SimulatedClosure Closure { get; }

    public int Day => (int)(_hour / 24) - Room.StartDay;

    /// <summary>True for a closure that leaks as the book would hardly believe.</summary>
    public bool Odd { get; private set; }

    protected double SlitCm { get; private set; }

    /// <summary>Hours of one step.</summary>
    protected virtual double Step => 3;

    /// <summary>What the content, and its cover, fill.</summary>
    protected abstract double FilledMl { get; }

    protected double HeadspaceMl => Math.Max(Vessel.Millilitres - FilledMl, 0.01 * Vessel.Millilitres);

    /// <summary>Displaced in air: the headspace breathes the air of the room.</summary>
    public double DisplacedMl => Vessel.OutsideMl - HeadspaceMl;

    /// <summary>From level to room: centimetres over square centimetres.</summary>
    protected double WayOut => (HeadspaceMl / Vessel.SectionCm2 / Vessel.SectionCm2) + (Vessel.NeckLengthCm / Vessel.NeckSectionCm2) + (Closure.LengthCm / (Math.PI * Vessel.NeckCm * SlitCm));

    public void Wait(int days)
    {
        for (var h = 0.0; h < 24 * days; h += Step)
            Pass(false);
    }

    public void Leak(double times) => SlitCm *= times;

    /// <summary>Takes a share of the content out.</summary>
    public void Draw(double share)
    {
        for (var i = 0; i < _contentParts; i++)
            _grams[i] *= 1 - share;
    }

    /// <summary>Grams of content that a usual year from today takes, the bottle itself left as it is.</summary>
    public double LossOfTheComingYear(int weather)
    {
        var ahead = Twin(weather);
        ahead.PassUsualYear(() => { });
        return Grams - ahead.Grams;
    }

    /// <summary>Grams of content that would go in a usual year if the bottle stayed as full and as strong as today.</summary>
    public double YearlyRate(int weather)
    {
        var (ahead, lost) = (Twin(weather), 0.0);
        ahead.PassUsualYear(() =>
        {
            lost += Grams - ahead.Grams;
            _grams.CopyTo(ahead._grams, 0);
        });
        return lost;
    }

    /// <summary>The same bottle in weather to come.</summary>
    public SimulatedBottle Twin(int weather)
    {
        var twin = (SimulatedBottle)MemberwiseClone();
        twin._grams = [.. _grams];
        twin.Room = Room.WithWeather(weather);
        return twin;
    }

    /// <summary>Says what is in it: the parts of the content, then of the cover.</summary>
    protected void Fill(ReadOnlySpan<double> content, ReadOnlySpan<double> cover)
    {
        _grams = [.. content, .. cover];
        _contentParts = content.Length;
        StartGrams = Grams;
    }

    /// <summary>Grams of one part, of content or cover.</summary>
    protected double Part(int i) => _grams[i];

    /// <summary>Takes grams of a part out, or lets some in, and never more than there is.</summary>
    protected void Take(int i, double grams) => _grams[i] = Math.Max(0, _grams[i] - (_times * grams));

    /// <summary>Lets one step go by.</summary>
    protected abstract void Lose(double celsius, double pascals, double seconds);

    // Every fifth day stands for five.
    private void PassUsualYear(Action afterEach)
    {
        _times = 365.25 / SampledDays;
        for (var day = 0; day < SampledDays; day++, _hour += 24 * ((365.0 / SampledDays) - 1))
        {
            for (var h = 0.0; h < 24; h += Step)
            {
                Pass(true);
                afterEach();
            }
        }
    }

    private void Pass(bool usual)
    {
        _hour += Step;
        Room.Go(_hour, Step, usual);
        Lose(Room.Celsius, Room.Pascals, Step * 3600);
    }
}
