using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>Finds the fill, or the wall, that would be sound.</summary>
internal static class SoundFills
{
    private const int Halvings = 16;
    private const double Least = 1e-4;

    public static AmpouleFill Advise(AmpouleFill fill, AmpouleQuestion question, PropertyFacts facts)
    {
        var content = new SealedContent(question.Content, facts);
        if (Greatest(question, facts) is { } most)
            return fill with { SoundFill = most, Because = [.. fill.Because, $"sound would be at most {Words(most, question, content)}"] };
        if (Frost.Freezes(question, content, out var melting) && Greatest(question with { Coldest = melting }, facts) is { } thawed)
            return fill with { Because = [.. fill.Because, $"no fill of it is sound where it freezes; where it never does, {(AmpouleJudge.Weigh(question with { Coldest = melting }, facts).Verdict == FillVerdict.Sound ? "this one" : $"at most {Words(thawed, question, content)}")} would be"] };
        return fill with { Because = [.. fill.Because, $"no fill of it is sound in this tube at {question.Warmest.Celsius:0} degrees C{Wall(fill, question)}"] };
    }

    private static string Words(Mass fill, AmpouleQuestion question, SealedContent content) => content.LiquidDensity(question.At).Value is { } rho
        ? $"{fill.Grams:0.###} g ({fill.Kilograms / rho.KilogramsPerCubicMetre * 1e6:0.##} mL, {100 * fill.Kilograms / rho.KilogramsPerCubicMetre / question.Ampoule.Volume.CubicMetres:0} % of the tube)"
        : $"{fill.Grams:0.###} g";

    private static Mass? Greatest(AmpouleQuestion question, PropertyFacts facts)
    {
        bool IsSound(double share) => AmpouleJudge.Weigh(question with { Fill = question.Fill * share }, facts).Verdict == FillVerdict.Sound;
        if (!IsSound(Least))
            return null;
        var (low, high) = (Least, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            // By ratios first, as a gas may be sound where its liquid never is.
            var middle = high / low > 1.5 ? Math.Sqrt(low * high) : (low + high) / 2;
            (low, high) = IsSound(middle) ? (middle, high) : (low, middle);
        }

        return question.Fill * low;
    }

    private static string Wall(AmpouleFill fill, AmpouleQuestion question)
    {
        if (fill.AtWarmest is not { } p || p <= PhysicalConstants.StandardAtmosphere)
            return "";
        var needed = question.Ampoule.WallFor((p - PhysicalConstants.StandardAtmosphere) * 2);
        return needed is { } wall
            ? $"; the pressure alone would ask for a wall of {Math.Ceiling(wall.Millimetres * 10) / 10:0.#} mm at this bore, or a narrower bore"
            : "; no wall of this bore would be enough";
    }
}
