using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Vessels;

/// <summary>What to make of a fill: room first, then pressure against strength, then the filling rule for liquefied gases.</summary>
internal static class AmpouleJudge
{
    internal const double SoundMargin = 2;

    /// <summary>A liquid's density is known to about this many kelvins of its expansion.</summary>
    private const double DensityReachKelvin = 5;

    public static AmpouleFill Judge(AmpouleQuestion question, PropertyFacts facts)
    {
        var fill = Verdict(question, facts);
        return fill.Verdict is FillVerdict.Marginal or FillVerdict.Unsafe ? SoundFills.Advise(fill, question, facts) : fill;
    }

    /// <summary>The same without advice on a better fill, which takes twenty verdicts more.</summary>
    public static AmpouleFill Verdict(AmpouleQuestion question, PropertyFacts facts)
    {
        if (GasMakers.Reason(question.Content, question.Damp) is { } never)
            return Never(question, never);
        if (VesselFit.Resists(question.Ampoule.GlassName, question.Content, facts) is { Rating: ResistanceRating.Poor } attacked)
            return Never(question, $"it attacks the glass: {attacked.Because}");
        return Weigh(question, facts);
    }

    /// <summary>The verdict on a content that may be sealed at all.</summary>
    internal static AmpouleFill Weigh(AmpouleQuestion question, PropertyFacts facts)
    {
        var ampoule = question.Ampoule;
        var content = new SealedContent(question.Content, facts);
        if (!content.IsComputable)
            return Undecided(ampoule, $"{content.Name} is a mixture without a stated density: its pressure in a sealed tube is not computed");
        var filling = new Filling(content, question.Fill, ampoule, DecayHelium.After(question, facts));
        var liquid = filling.Liquid(question.At);
        var fill = new AmpouleFill
        {
            Verdict = FillVerdict.Unsafe,
            Strength = ampoule.Strength,
            Liquid = liquid,
            Ullage = filling.Condensed(question.At) is { } v ? new Fraction(1 - (v / ampoule.VolumeAt(question.At))) : null,
            LiquidFull = filling.LiquidFull(),
            Because = [],
        };
        if (RoomFault(question, content, filling, fill) is { } fault)
            return fill with { Because = [fault], AtMean = IsFullAt(fill, question.At) ? null : filling.Pressure(question.At).Value };
        if (filling.MayOverfill(question.Warmest))
            return Undecided(ampoule, $"no density of {content.Name} is in the tables: whether {question.Fill.Grams:0.##} g has room in {ampoule.Volume.Millilitres:0.##} mL is not known");
        var hot = filling.Pressure(question.Warmest);
        if (hot.Value is not { } atWarmest)
        {
            return filling.IsGasThroughout(question.Warmest)
                ? fill with { Because = [hot.Reason!] }
                : Undecided(ampoule, hot.Reason!) with { Liquid = fill.Liquid, Ullage = fill.Ullage, LiquidFull = fill.LiquidFull };
        }

        var (verdict, margin) = OfMargin(atWarmest, hot.Spread, ampoule.Strength);
        var against = Against(question, content, fill, facts).Concat(FillingRule.Against(question, content, facts)).ToList();
        if (against.Count > 0 && verdict < FillVerdict.Marginal)
            verdict = FillVerdict.Marginal;
        return fill with
        {
            Verdict = verdict,
            AtMean = filling.Pressure(question.At).Value,
            AtWarmest = atWarmest,
            Margin = margin,
            Because = [.. AmpouleWords.Of(question, content, filling, fill, atWarmest, against, verdict, margin)],
        };
    }

    private static string? RoomFault(AmpouleQuestion question, SealedContent content, Filling filling, AmpouleFill fill)
    {
        var ampoule = question.Ampoule;
        if (question.Warmest > ampoule.Softens)
            return $"no strength of {ampoule.GlassName} is stated above {ampoule.Softens.Celsius:0} degrees C: there it creeps and softens";
        if (ampoule.TrapsLiquidGas)
            return $"at {ampoule.SealedAt.Celsius:0} degrees C the {(ampoule.Gas == TrappedGas.Air ? "air, with its oxygen," : ampoule.GasName)} condenses in the tube and boils as it warms: it bursts, however little there is of the content";
        if (filling.Condensed(question.At) is { } volume && volume >= ampoule.VolumeAt(question.At))
            return $"{question.Fill.Grams:0.##} g of {content.Name} is {volume.Millilitres:0.##} mL, more than the {ampoule.Volume.Millilitres:0.##} mL that the ampoule holds";
        if (fill.LiquidFull is { } full && full.Kelvin < question.Warmest.Kelvin + DensityReachKelvin)
        {
            return $"liquid-full at {full.Celsius:0} degrees C, and it reaches {question.Warmest.Celsius:0}{(full > question.Warmest ? ", nearer than the density is known" : "")}: from there the liquid has no room, each kelvin more adds about 10 bar, and it bursts the glass whatever its strength";
        }

        return Frost.Fault(question, content, filling);
    }

    private static bool IsFullAt(AmpouleFill fill, Temperature t) => fill.Ullage is { Value: <= 0 } || (fill.LiquidFull is { } full && full <= t);

    private static IEnumerable<string> Against(AmpouleQuestion question, SealedContent content, AmpouleFill fill, PropertyFacts facts)
    {
        if (VesselFit.Resists(question.Ampoule.GlassName, question.Content, facts) is { Rating: ResistanceRating.Limited } stands)
            yield return $"the glass stands it only for a while: {stands.Because}";
        if (GasMakers.Polymerises(question.Content))
            yield return $"{content.Name} can polymerise with heat enough to burst the tube, sooner without its inhibitor and the oxygen that this needs";
        if (fill.LiquidFull is { } near && near < FillingRatio.NotFullAt)
            yield return $"liquid-full at {near.Celsius:0} degrees C, below the 60 that the filling rule for liquefied gases asks for (UN P200)";
        if (Frost.Caution(question, content) is { } frost)
            yield return frost;
    }

    private static (FillVerdict Verdict, Band<Fraction> Margin) OfMargin(Pressure atWarmest, Spread spread, Band<Pressure> strength)
    {
        // Glass bears pressure from outside many times better than from inside; a tube under vacuum is not judged by its bursting strength.
        var across = Math.Max(atWarmest.Pascals - PhysicalConstants.StandardAtmosphere.Pascals, 1);
        var both = (spread.And(Spread.OfPercent(5)).And(Spread.Of(strength.High / strength.Expected))).Factor;
        var expected = Math.Min(strength.Expected.Pascals / across, 1000);
        var margin = new Band<Fraction>(new(expected / both), new(expected), new(expected * both));
        var verdict = margin.Low.Value >= 0.9 && margin.Expected.Value >= SoundMargin ? FillVerdict.Sound : margin.Expected.Value >= 1 ? FillVerdict.Marginal : FillVerdict.Unsafe;
        return (verdict, margin);
    }

    private static AmpouleFill Never(AmpouleQuestion question, string why) => new() { Verdict = FillVerdict.NeverSeal, Strength = question.Ampoule.Strength, Because = [why] };

    private static AmpouleFill Undecided(Ampoule ampoule, string reason) => new() { Verdict = null, Strength = ampoule.Strength, Because = [reason] };
}
