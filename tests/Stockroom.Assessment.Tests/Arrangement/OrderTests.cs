using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Tests.Arrangement;

public sealed class OrderTests
{
    // Two cabinets with one place each have to change what they hold; a third place lets one wait.
    private static Shelving Ring(params Spot[] further) => Build.Of(
        [Build.Spot("a", 1), Build.Spot("b", 1), .. further],
        Build.Thing("A1", "potassium cyanide", "a-1") with { Pinned = "built in" },
        Build.Thing("A2", "nitric acid 65%", "a-1"),
        Build.Thing("B1", "nitric acid 65%", "b-1") with { Pinned = "built in" },
        Build.Thing("B2", "potassium cyanide", "b-1"));

    [Fact]
    public void Ring_OfTwo_WithoutAFreePlace_MovesWhatMakesNothingWorse()
    {
        var plan = Build.Plan(Ring());
        Assert.All(plan.Moves, m => Assert.False(m.IsParked));
    }

    [Fact]
    public void Ring_OfFullPlaces_GoesThroughAFreePlace()
    {
        var shelving = Build.Of(
            [Build.Spot("a", 1), Build.Spot("b", 1), Build.Spot("c", 1)],
            Build.Thing("A", "potassium cyanide", "a-1"),
            Build.Thing("A2", "nitric acid 65%", "a-1") with { Pinned = "built in" },
            Build.Thing("B", "nitric acid 65%", "b-1"),
            Build.Thing("B2", "potassium cyanide", "b-1") with { Pinned = "built in" },
            Build.Thing("C", "sodium chloride", "c-1")).With(Build.AtMost("a-1", 2), Build.AtMost("b-1", 2), Build.AtMost("c-1", 1));
        var plan = Build.Plan(shelving with { Limits = [.. shelving.Limits.Where(l => l.Place != "c-1"), Build.AtMost("c-1", 2)] });
        Assert.Empty(plan.Left);
        EveryPrefixIsNoWorse(shelving with { Limits = [] }, plan);
    }

    [Fact]
    public void FreePlace_WantedForParking_IsNotFilledTooEarly()
    {
        var shelving = Build.Of(
            [Build.Spot("a", 1), Build.Spot("b", 1), Build.Spot("c", 1)],
            Build.Thing("A", "oxygen", null),
            Build.Thing("B", "acetone", "b-1"),
            Build.Thing("C", "sodium", "c-1"),
            Build.Thing("C2", "acetic acid", "c-1") with { Pinned = "built in" });
        var plan = Build.Plan(shelving);
        Assert.Empty(plan.Left);
        Assert.Equal(3, plan.Relocated);
        EveryPrefixIsNoWorse(shelving, plan);
    }

    [Fact]
    public void EveryPrefix_OfARandomStoresPlan_IsNoWorseThanWhatWas()
    {
        for (var seed = 1; seed <= 8; seed++)
        {
            var shelving = GeneratedStores.Make(40, seed);
            EveryPrefixIsNoWorse(shelving, Build.Plan(shelving, new Effort(300_000)));
        }
    }

    // Told apart from the checker's own rule: the sum of what is missing never grows, and no pair that was safe gets unsafe.
    private static void EveryPrefixIsNoWorse(Shelving shelving, Plan plan)
    {
        var judge = new PairJudge();
        var spots = shelving.Spots.ToDictionary(s => s.Id, StringComparer.Ordinal);
        var things = shelving.Things.ToList();
        var before = Missing(things, spots, judge);
        foreach (var move in plan.Moves)
        {
            things[things.FindIndex(t => t.Key == move.Key)] = things.First(t => t.Key == move.Key) with { Spot = move.To };
            var after = Missing(things, spots, judge);
            Assert.True(after.Values.Sum() <= before.Values.Sum());
            Assert.All(after, pair => Assert.True(pair.Value <= before.GetValueOrDefault(pair.Key)));
            before = after;
        }
    }

    private static Dictionary<(string, string), int> Missing(List<Thing> things, Dictionary<string, Spot> spots, PairJudge judge)
    {
        var missing = new Dictionary<(string, string), int>();
        for (var i = 0; i < things.Count; i++)
        {
            for (var j = i + 1; j < things.Count; j++)
            {
                if (things[i].Spot is { } here && things[j].Spot is { } there && PairReading.Missing(things[i], spots[here], things[j], spots[there], judge) is > 0 and var by)
                    missing[(things[i].Key, things[j].Key)] = by;
            }
        }

        return missing;
    }
}
