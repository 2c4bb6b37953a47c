using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>A simulated bottle, weighed several times with all that befalls one, and what the forecast said of it each time.</summary>
/// <param name="Seed">Tells it again.</param>
/// <param name="Kind">As the bottle calls itself.</param>
/// <param name="Honest">Nothing was wrong with its closure, and nothing with the book.</param>
/// <param name="Alarmed">The seal verdict rang, where the mass did not truly rise.</param>
/// <param name="Asked">From the third weighing on.</param>
internal sealed record BottleStory(int Seed, string Kind, bool Honest, bool Alarmed, IReadOnlyList<Asked> Asked)
{
    private const double Forgets = 0.1;
    private const double Draws = 0.15;
    private const double Slips = 1.0 / 50;

    public static BottleStory Of(int seed, int weighings)
    {
        var chance = new Chance(seed);
        var keeper = new Keeper(chance, BottleKinds.Of(chance, seed));
        var bottle = keeper.Bottle;
        var forgetsAt = chance.Happens(Forgets) ? (int)chance.Between(1, weighings) : 0;
        var drawsAt = chance.Happens(Draws) ? (int)chance.Between(1, weighings) : 0;
        var (asked, alarmed, first) = (new List<Asked>(), false, bottle.Weighable);
        var (forgotten, slipped) = (false, false);
        for (var n = 1; n <= weighings && bottle.Grams > 0.3 * bottle.StartGrams; n++)
        {
            var slip = chance.Happens(Slips);
            slipped |= slip;
            keeper.Weigh(slip);
            if (n >= 2)
            {
                var forecast = Forecast.Of(keeper.Book(), Bench.Facts, keeper.Today.AddDays(365));
                alarmed |= IsFalse(forecast.Weighed?.Verdict, rises: bottle.Weighable + keeper.Taken > first);
                if (n >= 3)
                    asked.Add(Ask(seed + n, bottle, forecast, forgotten, slipped));
            }

            var days = keeper.Interval();
            keeper.Wait(days / 2);
            if (n == forgetsAt || n == drawsAt)
                keeper.Draw(booked: n != forgetsAt);
            forgotten |= n == forgetsAt && n < weighings;
            keeper.Wait(days - (days / 2));
        }

        return new BottleStory(seed, bottle.Kind, !bottle.Odd && !forgotten && !slipped, alarmed, asked);
    }

    private static bool IsFalse(SealVerdict? verdict, bool rises) => verdict is { IsAlarm: true } v && !(v.State == SealState.Rising && rises);

    private static Asked Ask(int weather, SimulatedBottle bottle, Forecast forecast, bool forgotten, bool slipped)
    {
        var truth = bottle.YearlyRate(weather);
        var left = bottle.Grams - bottle.LossOfTheComingYear(weather);
        var held = forecast.Remaining is { } band && band.Low.Grams <= left && left <= band.High.Grams;
        var reach = forecast.Weighed?.Verdict.Measured?.Reach.GramsPerYear ?? double.PositiveInfinity;
        var flat = truth > reach && Math.Abs(forecast.Weighed!.Verdict.Measured!.Rate.GramsPerYear) < reach;
        var warned = forecast.Warnings.Any(w => w.Contains("can hide a loss", StringComparison.Ordinal));
        return new Asked(truth, forecast.LossRate?.Select(r => r.GramsPerYear), held, forgotten, slipped, flat, warned);
    }
}
