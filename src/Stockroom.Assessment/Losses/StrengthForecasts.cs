using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>The strength left of a content that decomposes, from the day it was filled.</summary>
internal static class StrengthForecasts
{
    /// <summary>Null where no rate law is listed for any part.</summary>
    public static StrengthForecast? Of(Situation situation, PropertyFacts facts, DateOnly on)
    {
        var content = situation.Content;
        foreach (var part in content.Parts)
        {
            if (facts.Decomposition(part.Substance) is not { } law || part.Substance.MolarMass is not { } molarMass)
                continue;
            var density = new LossState(situation, facts).Density;
            var c = Decomposition.Concentration(content, part, density, molarMass);
            var rate = StrengthLaw.Of(law, c, Decomposition.OtherSalts(content, part, density), situation.Temperature);
            var since = situation.Filled ?? situation.AmountOn;
            var elapsed = Span.FromDays(on.DayNumber - since.DayNumber);
            var (slow, fast) = (rate / law.Spread.Factor, rate * law.Spread.Factor);
            var half = new Fraction(0.5);
            var outside = situation.Temperature < law.HoldsFrom || situation.Temperature > law.HoldsTo ? "; the place's temperature lies outside the range of the law" : "";
            return new StrengthForecast(
                part.Substance.Name,
                since,
                new Band<Fraction>(StrengthLaw.Left(law, fast, elapsed), StrengthLaw.Left(law, rate, elapsed), StrengthLaw.Left(law, slow, elapsed)),
                ForecastBuilder.Date(since, StrengthLaw.TimeTo(law, fast, half)),
                ForecastBuilder.Date(since, StrengthLaw.TimeTo(law, rate, half)),
                ForecastBuilder.Date(since, StrengthLaw.TimeTo(law, slow, half)),
                $"{(double)part.Percent:0.##} % {part.Substance.Name} at {situation.Temperature.Celsius:0} degrees C since {since:yyyy-MM-dd}; {law.Provenance.Locator}{outside}",
                law.Provenance)
            {
                BelowUse = BelowUse(situation, facts, part, since, law, new Band<RateConstant>(slow, rate, fast)),
            };
        }

        return null;
    }

    private static Reach? BelowUse(Situation situation, PropertyFacts facts, Part part, DateOnly since, DecompositionLaw law, Band<RateConstant> rate)
    {
        var published = facts.LeastStrength(situation.Content);
        var least = situation.LeastStrength ?? (published?.Substance == part.Substance ? published?.Least : null);
        if (least is not { } limit || limit.Value <= 0)
            return null;
        var left = new Fraction(Math.Min(1, limit.Percent / (double)part.Percent));
        DateOnly? Day(RateConstant k) => ForecastBuilder.Date(since, left.Value >= 1 ? new Span(0) : StrengthLaw.TimeTo(law, k, left));
        return new Reach($"{part.Substance.Name} below {limit.Percent:0.##} %", left, Day(rate.High), Day(rate.Expected), Day(rate.Low));
    }
}
