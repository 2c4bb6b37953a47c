namespace Stockroom.Chemistry.Quantities;

/// <summary>
/// A multiplicative uncertainty: the value lies between value/Factor and value*Factor. 1 means exact.
/// Independent spreads combine as the root of the sum of squared logarithms.
/// </summary>
public readonly record struct Spread
{
    // A hundred powers of ten: nothing is known then, and sums with it stay finite.
    private const double MostLog = 230;

    private readonly double _log;

    private Spread(double log) => _log = Math.Min(log, MostLog);

    public static Spread None => default;

    /// <summary>A spread of times-or-divided-by a factor, which is 1 or more.</summary>
    public static Spread Of(double factor) => factor >= 1
        ? new Spread(Math.Log(factor))
        : throw new ArgumentOutOfRangeException(nameof(factor), factor, "A spread is a factor of 1 or more.");

    /// <summary>A spread in per cent, 0 or more; 5 means within 5 per cent either way.</summary>
    public static Spread OfPercent(double percent) => Of(1 + (percent / 100));

    public double Factor => Math.Exp(_log);

    public Spread And(Spread other) => new(Math.Sqrt((_log * _log) + (other._log * other._log)));
}
