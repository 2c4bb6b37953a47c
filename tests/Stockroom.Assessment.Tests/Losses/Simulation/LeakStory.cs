using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Assessment.Tests.Losses.Simulation.Kinds;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>An honest bottle whose slit grows tenfold after two or three weighings.</summary>
/// <param name="Seed">Tells it again.</param>
/// <param name="Kind">As the bottle calls itself.</param>
/// <param name="First">An alarm rang at the first weighing that could show it.</param>
/// <param name="Second">At the second at the latest.</param>
internal sealed record LeakStory(int Seed, string Kind, bool First, bool Second)
{
    private const int MostWeighings = 9;
    private const double Times = 10;
    private const double Ordinary = 3;

    /// <summary>
    /// A weighing could show it where the leak's extra loss since the last weighing is more than so many standard deviations of what the
    /// balance makes of it (the scatter of the sound weighings before counted by their time), and more than three times what the bottle would
    /// have lost without it. Null where fewer than two such weighings come.
    /// </summary>
    public static LeakStory? Of(int seed, double sigmas)
    {
        var chance = new Chance(seed);
        var keeper = new Keeper(chance, BottleKinds.Of(chance, seed));
        if (keeper.Bottle.Odd)
            return null;
        var sound = Sound(keeper, chance, seed);
        var soundDays = keeper.Bottle.Day;
        keeper.Bottle.Leak(Times);
        var rang = new List<bool>();
        for (var n = 0; n < MostWeighings && rang.Count < 2 && keeper.Bottle.Grams > 0.1 * keeper.Bottle.StartGrams; n++)
        {
            var days = keeper.Interval();
            var (before, soundBefore) = (keeper.Bottle.Weighable, sound.Weighable);
            keeper.Wait(days);
            sound.Wait(days);
            keeper.Weigh(false);
            var ordinary = soundBefore - sound.Weighable;
            var extra = before - keeper.Bottle.Weighable - ordinary;
            var scatter = Math.Sqrt(Square(keeper.Scatter(days)) + Square(keeper.Scatter(soundDays) * days / soundDays));
            if (extra > sigmas * scatter && extra > Ordinary * Math.Abs(ordinary))
                rang.Add(SealVerdict.Of(keeper.Book(), Bench.Facts).IsAlarm);
        }

        return rang.Count < 2 ? null : new LeakStory(seed, keeper.Bottle.Kind, rang[0], rang[0] || rang[1]);
    }

    // Weighed two or three times; from then on there are two bottles in the same weather, of which the other one leaks.
    private static SimulatedBottle Sound(Keeper keeper, Chance chance, int seed)
    {
        keeper.Weigh(false);
        var more = chance.Of(1, 2);
        for (var n = 0; n < more; n++)
        {
            keeper.Wait(30 + (int)chance.Between(0, 90));
            keeper.Weigh(false);
        }

        var sound = keeper.Bottle.Twin(seed);
        keeper.Bottle = keeper.Bottle.Twin(seed);
        return sound;
    }

    private static double Square(double x) => x * x;
}
