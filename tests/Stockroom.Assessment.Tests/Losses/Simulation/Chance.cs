namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>What befalls a simulated bottle, the same for the same seed.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Anywhere between two.</summary>
    public double Between(double low, double high) => low + ((high - low) * _random.NextDouble());

    /// <summary>Anywhere between two on a logarithmic scale.</summary>
    public double Log(double low, double high) => Math.Exp(Between(Math.Log(low), Math.Log(high)));

    public bool Happens(double share) => _random.NextDouble() < share;

    public T Of<T>(params ReadOnlySpan<T> list) => list[_random.Next(list.Length)];

    /// <summary>Standard normal, by the sine of Box and Muller.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Sin(2 * Math.PI * _random.NextDouble());

    /// <summary>About one, nine in ten within a factor either way.</summary>
    public double Within(double factor) => Math.Exp(Normal() * Math.Log(factor) / 1.645);
}
