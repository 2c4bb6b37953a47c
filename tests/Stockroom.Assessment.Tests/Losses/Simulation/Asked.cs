using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>One question to the forecast, once three weighings exist, and what came true.</summary>
/// <param name="Truth">Grams of content that would really go in a usual year from the bottle as it stands.</param>
/// <param name="Rate">What the forecast says of that, grams a year; null for nothing.</param>
/// <param name="LeftHeld">True where the amount really left after a usual year lay in its band.</param>
/// <param name="Forgotten">A draw had gone unbooked before.</param>
/// <param name="Slipped">A reading had been written down wrong before.</param>
/// <param name="Flat">The weighings show no change that stands out, though more than that went.</param>
/// <param name="Warned">The forecast says that moisture can hide a loss.</param>
internal sealed record Asked(double Truth, Band<double>? Rate, bool LeftHeld, bool Forgotten, bool Slipped, bool Flat, bool Warned)
{
    public bool Held => Rate is { } r && r.Low <= Truth && Truth <= r.High;

    /// <summary>Less was foretold than came.</summary>
    public bool Missed => Rate is { } r && Truth > r.High;

    /// <summary>How many times the low end the high end is.</summary>
    public double Width => Rate is { Low: > 0 } r ? r.High / r.Low : double.PositiveInfinity;
}
