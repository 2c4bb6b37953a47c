using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>Why a strength becomes what it does, in words.</summary>
internal sealed class StrengthWords(Situation situation, PropertyFacts facts, Part part, DateOnly since, bool takesUp)
{
    // What leaves is as strong as what stays, to within this share.
    private const double Settled = 0.1;

    /// <summary>Share of the part at which the course begins.</summary>
    public Fraction Begins { get; init; } = new(1);

    /// <summary>True where the course begins at the last weighing.</summary>
    public bool IsWeighed { get; init; }

    private string Name => part.Substance.Name;

    /// <summary>Where the pressure comes from by which the part, or else the water, leaves.</summary>
    public Provenance VapourSource
    {
        get
        {
            var over = new LossState(situation, facts).Vapour;
            var own = over.FirstOrDefault(v => ReferenceEquals(v.Part, part.Substance)) ?? over.FirstOrDefault(v => v.Pressure.IsKnown);
            return own?.Pressure.Provenance ?? situation.Content.Provenance ?? part.Substance.Provenance!;
        }
    }

    /// <summary>What is followed since when, what it does, and why a limit is never reached.</summary>
    /// <param name="law">Null where nothing decomposes.</param>
    /// <param name="courses">Null where the composition stays.</param>
    /// <param name="below">Null where no limit is known.</param>
    public string Because(DecompositionLaw? law, Band<Trajectory>? courses, Reach? below)
    {
        var words = $"{(double)part.Percent:0.##} % {Name} at {situation.Temperature.Celsius:0} degrees C since {since:yyyy-MM-dd}";
        if (law is not null)
            words += $"; {law.Provenance.Locator}{(situation.Temperature < law.HoldsFrom || situation.Temperature > law.HoldsTo ? "; the place's temperature lies outside the range of the law" : "")}";
        if (courses is not { Expected: var course })
            return words;
        if (course.Deciding is not null)
            words += $"; {Trend(course)}{Moisture()}";
        if (IsWeighed)
            words += $"; by the weighings {(double)part.Percent * Begins.Value:0.##} % on {situation.AmountOn:yyyy-MM-dd}";
        else if (since < situation.AmountOn)
            words += $"; as if {situation.Amount.Grams:0.##} g had been in it from the start";
        return below is { Low: null } ? $"{words}; never below use: {Never(course, below)}" : words;
    }

    private string Trend(Trajectory course)
    {
        var end = course.Strength(new Span(course.Last.Seconds));
        var (falls, sharply) = (end.Value < 1, Math.Abs(end.Value - 1) > 0.005);
        var trend = !sharply ? $"{Name} leaves about as fast as the rest"
            : falls && takesUp ? $"what leaves of it and the moisture it takes up from the room thin the {Name}"
            : falls ? $"{Name} leaves faster than the rest"
            : $"the rest leaves faster than {Name}: its strength rises";
        return sharply && Settles(course) ? $"{trend}; it settles near {Percent(end)} %" : trend;
    }

    private string Moisture() =>
        !takesUp && MoistureUptake.MayTakeUp(situation, facts) ? "; moisture it may take up is not counted" : "";

    private string Never(Trajectory course, Reach below)
    {
        var end = course.Strength(new Span(course.Last.Seconds));
        return (Begins * end.Value).Value >= 1 ? "its strength does not fall"
            : Settles(course) ? $"near {Percent(end)} % what leaves is as strong as what stays"
            : course.Last.Kilograms <= 2 * Trajectory.StopAt * course.Start.Kilograms ? $"the vessel is all but empty at {Percent(end)} %"
            : $"it falls no further than {below.Left.Percent:0} % of its strength within 500 years";
    }

    // At the last point part and whole fade in proportion, or nothing moves any more.
    private static bool Settles(Trajectory course)
    {
        if (course.Deciding is not { Last: var own })
            return false;
        var whole = course.Last;
        return whole.Rate == 0 || Math.Abs((own.Rate / own.Kilograms / (whole.Rate / whole.Kilograms)) - 1) < Settled;
    }

    private string Percent(Fraction of) => $"{Begins.Value * of.Value * (double)part.Percent:0.#}";
}
