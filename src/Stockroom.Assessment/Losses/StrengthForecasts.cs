using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// The strength left of a content from the day it was filled: of what decomposes, and of what leaves faster, or slower, than the rest. The
/// amount is taken as last known from the first day on, and walls as soaked through, which errs to the early side: a fuller bottle loses its
/// strength more slowly.
/// </summary>
internal static class StrengthForecasts
{
    // A composition that shifts by less than this in all the time it is followed is no news.
    private const double Shifts = 0.01;

    private static readonly Fraction Half = new(0.5);

    /// <summary>Null where the strength stays, or nothing is known of it.</summary>
    /// <param name="situation">With the content as it was filled.</param>
    /// <param name="start">The same on the day from which the courses are followed, with what the weighings made of its content by then.</param>
    /// <param name="facts">What the tables say.</param>
    /// <param name="on">The day asked for.</param>
    /// <param name="network">The year at its place.</param>
    /// <param name="courses">With their deciding part; null where composition cannot be followed.</param>
    /// <param name="takesUp">True where they count the room's moisture.</param>
    public static StrengthForecast? Of(Situation situation, Situation start, PropertyFacts facts, DateOnly on, YearNetwork network, Band<Trajectory>? courses, bool takesUp = false)
    {
        if (DecidingPart.Of(situation.Content, facts) is not { } index)
            return null;
        var part = situation.Content.Parts[index];
        var law = facts.Decomposition(part.Substance);
        var begins = new Fraction((double)(start.Content.Parts[index].Percent / part.Percent));
        var moves = courses is { } c && (IsShifting(c.Low) || IsShifting(c.High) || Math.Abs(begins.Value - 1) > Shifts) ? courses : null;
        if (law is null && moves is null)
            return null;
        var since = situation.Filled ?? situation.AmountOn;
        var isWeighed = !ReferenceEquals(start, situation) && moves is not null && start.AmountOn > since;
        var season = network.SeasonFrom(isWeighed ? start.AmountOn : since);
        var rate = law is null ? default : Rate(situation, facts, part, law);
        StrengthOverTime Course(Trajectory? whole, RateConstant k) => new(whole, season, law, k)
        {
            Begins = begins,
            Before = isWeighed ? Span.FromDays(start.AmountOn.DayNumber - since.DayNumber) : default,
        };
        var ends = new Band<StrengthOverTime>(Course(moves?.Low, rate.Low), Course(moves?.Expected, rate.Expected), Course(moves?.High, rate.High));
        var elapsed = Span.FromDays(on.DayNumber - since.DayNumber);
        var left = Sorted(ends.Select(e => e.Left(elapsed)));
        var half = When(ends, since, Half);
        var below = BelowUse(situation, facts, part, ends, since);
        var words = new StrengthWords(start, facts, part, since, takesUp) { Begins = begins, IsWeighed = isWeighed };
        return new StrengthForecast(part.Substance.Name, since, left, half.Low, half.Expected, half.High, words.Because(law, moves, below), law?.Provenance ?? words.VapourSource)
        {
            BelowUse = below,
        };
    }

    private static Band<RateConstant> Rate(Situation situation, PropertyFacts facts, Part part, DecompositionLaw law)
    {
        var density = new LossState(situation, facts).Density;
        var c = Decomposition.Concentration(situation.Content, part, density, part.Substance.MolarMass!.Value);
        var rate = StrengthLaw.Of(law, c, Decomposition.OtherSalts(situation.Content, part, density), situation.Temperature);
        return new Band<RateConstant>(rate / law.Spread.Factor, rate, rate * law.Spread.Factor);
    }

    private static bool IsShifting(Trajectory course)
    {
        if (course.Deciding is null)
            return false;
        foreach (var time in course.Times)
        {
            if (Math.Abs(course.Strength(time).Value - 1) > Shifts)
                return true;
        }

        return false;
    }

    private static Reach? BelowUse(Situation situation, PropertyFacts facts, Part part, Band<StrengthOverTime> ends, DateOnly since)
    {
        var published = facts.LeastStrength(situation.Content);
        var least = situation.LeastStrength ?? (published?.Substance == part.Substance ? published?.Least : null);
        if (least is not { } limit || limit.Value <= 0)
            return null;
        var left = new Fraction(Math.Min(1, limit.Percent / (double)part.Percent));
        var (low, expected, high) = When(ends, since, left);
        return new Reach($"{part.Substance.Name} below {limit.Percent:0.##} %", left, low, expected, high);
    }

    // The faster loss is not at every moment the weaker content: what evaporates faster may settle higher.
    private static Band<Fraction> Sorted(Band<Fraction> x) => new(
        new Fraction(Math.Min(x.Expected.Value, Math.Min(x.Low.Value, x.High.Value))), x.Expected, new Fraction(Math.Max(x.Expected.Value, Math.Max(x.Low.Value, x.High.Value))));

    private static (DateOnly? Low, DateOnly? Expected, DateOnly? High) When(Band<StrengthOverTime> ends, DateOnly since, Fraction left)
    {
        var (slow, expected, fast) = (Day(ends.Low), Day(ends.Expected), Day(ends.High));
        DateOnly? Day(StrengthOverTime course) => ForecastBuilder.Date(since, course.TimeTo(left));
        DateOnly?[] days = [slow, expected, fast];
        return (days.Min(), expected, days.Contains(null) ? null : days.Max());
    }
}
