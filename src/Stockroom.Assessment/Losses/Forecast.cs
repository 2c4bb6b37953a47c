using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>One way out as shown: its rate, its share of the expected loss, why, and by which source.</summary>
public sealed record PathForecast(string Path, PathVerdict Verdict, PathRole Role, Fraction Share, Band<MassRate> Rate, string Because, Provenance? Source);

/// <summary>When so much is left: Low is the earliest day, High the latest; null lies beyond 500 years.</summary>
public sealed record Reach(string Limit, Fraction Left, DateOnly? Low, DateOnly? Expected, DateOnly? High);

/// <summary>
/// What the strength of the deciding part has become, its share by mass of the whole as a share of that on the day it was filled: by what
/// decomposes, leaves, and is taken up. Above 1 where it has risen. HalfLow is the earliest day; null is never, for the reason given.
/// </summary>
public sealed record StrengthForecast(string Part, DateOnly Since, Band<Fraction> Left, DateOnly? HalfLow, DateOnly? HalfExpected, DateOnly? HalfHigh, string Because, Provenance Source)
{
    /// <summary>When it falls below use: below what is published for the preparation, or what the keeper set. Null where neither is known.</summary>
    public Reach? BelowUse { get; init; }
}

/// <summary>
/// How fast a content leaves, by which ways, and what is left when. Rates are the mean of a year at the amount of the start, which is the
/// last weighing where weighings compare; the days follow season, falling amount and changing composition. Low and High of every band are meant as 5 and 95
/// per cent.
/// </summary>
public sealed record Forecast
{
    public required DateOnly On { get; init; }

    /// <summary>Sum of the ways out whose rate is known; null where the main one, past the closure, is not.</summary>
    public required Band<MassRate>? LossRate { get; init; }

    /// <summary>False where some way out may matter and cannot be computed; then a rate is a part of the truth only.</summary>
    public required bool IsComplete { get; init; }

    public required IReadOnlyList<PathForecast> Paths { get; init; }

    /// <summary>Null where the loss rate is.</summary>
    public required Band<Mass>? Remaining { get; init; }

    /// <summary>Empty where the loss rate is not known.</summary>
    public required IReadOnlyList<Reach> Reaches { get; init; }

    public StrengthForecast? Strength { get; init; }

    public CoverForecast? Cover { get; init; }

    /// <summary>What the weighings make of it; null where no two compare.</summary>
    public WeighedForecast? Weighed { get; init; }

    public AirForecast? Air { get; init; }

    /// <summary>What gets in, where it was asked; empty else.</summary>
    public IReadOnlyList<Ingress.IngressForecast> Ingress { get; init; } = [];

    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>The forecast for a day. Pure: the same situation, facts and day give the same answer.</summary>
    public static Forecast Of(Situation situation, PropertyFacts facts, DateOnly on) => ForecastBuilder.Build(situation, facts, on);
}
