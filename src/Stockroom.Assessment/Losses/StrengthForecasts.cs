using Stockroom.Assessment.Losses.Paths;
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
                law.Provenance);
        }

        return null;
    }
}
