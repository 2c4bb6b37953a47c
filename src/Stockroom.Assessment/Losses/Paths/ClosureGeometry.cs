using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>The way from the level to the room: lengths over areas, in 1/m, and how uncertain the closure makes it.</summary>
internal static class ClosureGeometry
{
    // Until weighings have told how tight a closure is, its gap is known to a factor only.
    private const double UncalibratedTight = 10;
    private const double UncalibratedLoose = 3;
    private const double OpenNeck = 1.5;
    private const double Draught = 3;
    private const double LooseFromMetres = 20e-6;

    /// <summary>Sum of length over area of the segments in series.</summary>
    public static double LengthOverArea(LossState state)
    {
        var vessel = state.Vessel;
        var sum = (state.HeadspaceLength.Metres / vessel.CrossSection.SquareMetres) + (vessel.NeckLength.Metres / vessel.NeckSection.SquareMetres);
        if (state.Closure.Gap is { } gap)
            return sum + (state.Closure.Path!.Value.Metres / GapArea(vessel, gap.Expected));

        // End correction of an open mouth, a quarter of pi times its radius.
        return sum + (0.25 * Math.PI * (vessel.NeckBore.Metres / 2) / vessel.NeckSection.SquareMetres);
    }

    public static double GapArea(Vessel vessel, Length gap) => Math.PI * vessel.NeckBore.Metres * gap.Metres;

    public static (Spread Down, Spread Up) Uncertainty(Closure closure)
    {
        if (closure.Gap is not { } gap)
            return (Spread.Of(OpenNeck), Spread.Of(Draught));
        var floor = gap.Expected.Metres >= LooseFromMetres ? UncalibratedLoose : UncalibratedTight;
        return (Spread.Of(Math.Max(floor, gap.Expected / gap.Low)), Spread.Of(Math.Max(floor, gap.High / gap.Expected)));
    }
}
