namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>A closure as a slit round the neck, as the book names it: its usual width and its length, and how much closures of a kind differ.</summary>
/// <param name="Name">As the catalogue calls it.</param>
/// <param name="Micrometres">Width in the middle.</param>
/// <param name="LengthCm">The way through.</param>
/// <param name="Within">Nine closures in ten lie within this factor of the middle.</param>
internal sealed record SimulatedClosure(string Name, double Micrometres, double LengthCm, double Within)
{
    public static readonly SimulatedClosure ScrewCap = new("screw cap, PTFE-faced liner", 0.3, 0.2, 7);
    public static readonly SimulatedClosure Stopper = new("ground-glass stopper, dry", 2, 2, 6);
    public static readonly SimulatedClosure Cork = new("cork", 5, 1.5, 6);
    public static readonly SimulatedClosure WaxedCap = new("metal screw cap, waxed card liner", 3, 0.2, 7);
    public static readonly SimulatedClosure PlasticCap = new("HDPE screw cap", 1, 0.2, 6);

    /// <summary>The slit of one such closure in centimetres; one in twenty leaks as the book would hardly believe, thirty times as much, one in fifty is that much tighter.</summary>
    public (double Cm, bool Odd) One(Chance chance)
    {
        var usual = Micrometres * 1e-4 * chance.Within(Within);
        var odd = chance.Between(0, 1);
        return odd < 0.05 ? (30 * usual, true) : (odd > 0.98 ? usual / 30 : usual, false);
    }
}
