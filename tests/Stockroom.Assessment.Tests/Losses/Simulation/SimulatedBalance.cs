namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>
/// A balance that rounds to its step, scatters by most of one, is out by a random few parts in a million at each weighing, drifts with the
/// days, and weighs in air of changing density, which every third keeper reads.
/// </summary>
internal sealed class SimulatedBalance(Chance chance)
{
    private const double DriftADay = 2e-6;
    private const double Calibration = 5e-6;
    private const double Masses = 8.0;

    private double _drift;

    public double StepGrams { get; } = chance.Of(0.001, 0.01, 0.01, 0.1, 1);

    public bool AirIsRead { get; } = chance.Happens(1.0 / 3);

    public void Wait(double days) => _drift += DriftADay * Math.Sqrt(days) * chance.Normal();

    /// <summary>The reading in grams.</summary>
    /// <param name="grams">True gross mass.</param>
    /// <param name="displacedMl">What the vessel and its content displace, the air inside not counted.</param>
    /// <param name="celsius">Of the air.</param>
    /// <param name="pascals">Of the air.</param>
    public double Read(double grams, double displacedMl, double celsius, double pascals)
    {
        var air = AirAt(celsius, pascals) * (displacedMl - (grams / Masses));
        var usual = 0.0012 * (displacedMl - (grams / Masses));
        var reading = (grams * (1 + _drift + (Calibration * chance.Normal()))) - air + usual + (0.7 * StepGrams * chance.Normal());
        return Math.Round(reading / StepGrams) * StepGrams;
    }

    /// <summary>What a difference of two readings scatters by, one standard deviation in grams, drift counted for the days between.</summary>
    public double Scatter(double grams, double displacedMl, double days)
    {
        var air = AirIsRead ? 0 : 0.00002 * (displacedMl - (grams / Masses));
        var one = (0.58 * StepGrams * StepGrams) + (Calibration * grams * Calibration * grams) + (air * air);
        return Math.Sqrt((2 * one) + (DriftADay * grams * DriftADay * grams * days));
    }

    // Dry air as a perfect gas, 28.96 g/mol, g/mL.
    private static double AirAt(double celsius, double pascals) => pascals * 28.96 / (8.314 * (celsius + 273.15)) * 1e-6;
}
