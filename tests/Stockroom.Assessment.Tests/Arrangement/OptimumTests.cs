using CsCheck;
using Stockroom.Assessment.Arrangement;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Tests.Arrangement;

public sealed class OptimumTests
{
    private static readonly string[] Contents =
    [
        "acetone", "nitric acid 65%", "potassium cyanide", "sodium hydroxide 10%", "ammonia solution 25%", "iodine", "copper", "sodium", "potassium permanganate",
        "sulfuric acid 98%", "acetic acid", "sodium chloride", "hydrogen", "oxygen",
    ];

    private static readonly Gen<Shelving> SmallStores =
        from shape in Gen.Int[0, 3]
        from things in Gen.Select(Gen.Int[0, Contents.Length - 1], Gen.Int[0, 4], Gen.Int[0, 9]).Array[1, 5]
        from limit in Gen.Int[0, 6]
        select Store(shape, things, limit);

    [Fact]
    public void Plan_OfASmallStore_IsAsGoodAsAnyThatCanBeReached() =>
        SmallStores.Sample(
            shelving =>
            {
                var plan = Build.Plan(shelving, new Effort(60_000));
                var best = Exhaustive.Best(shelving);
                Assert.True(Arranger.Floor(shelving).CompareTo(best) <= 0);
                return (plan.Left.Count, plan.Relocated) == best
                    ? true
                    : throw new Xunit.Sdk.XunitException($"{plan.Left.Count} left and {plan.Relocated} moved, where {best} would do: {string.Join("; ", shelving.Things.Select(t => $"{t} in {t.Spot}{(t.Stays ? " stays" : "")}"))}; limits {string.Join("; ", shelving.Limits)}; spots {string.Join(", ", shelving.Spots.Select(s => s.Id))}");
            },
            iter: 100,
            threads: 1);

    [Fact]
    public void Plan_OfARandomStore_IsNeverWorseThanFirstFit()
    {
        for (var seed = 1; seed <= 10; seed++)
        {
            var shelving = GeneratedStores.Make(20 + (10 * seed), seed);
            var plan = Build.Plan(shelving, new Effort(400_000));
            Assert.True((plan.Left.Count, plan.Relocated).CompareTo(Arranger.FirstFit(shelving)) <= 0, $"seed {seed}");
        }
    }

    [Fact]
    public void SamePlan_ComesTwice_FromTheSameStore()
    {
        var first = Build.Plan(GeneratedStores.Make(80, 5), new Effort(1_000_000));
        var second = Build.Plan(GeneratedStores.Make(80, 5), new Effort(1_000_000));
        Assert.Equal(first.Moves, second.Moves);
        Assert.Equal(first.Left, second.Left);
        Assert.NotEmpty(first.Moves);
    }

    [Fact]
    public void ThousandContainers_ArePlannedAndHold()
    {
        var shelving = GeneratedStores.Make(1000, 1);
        var plan = Build.Plan(shelving, new Effort(3_000_000));
        Assert.True((plan.Left.Count, plan.Relocated).CompareTo(Arranger.FirstFit(shelving)) <= 0);
        Assert.True(plan.Relocated > 50);
    }

    private static Shelving Store(int shape, (int Content, int Spot, int Mark)[] things, int limit)
    {
        Spot[] spots = shape switch
        {
            0 => [Build.Spot("a", 1), Build.Spot("b", 1), Build.Spot("c", 1)],
            1 => [Build.Spot("a", 1, order: 1), Build.Spot("b", 1, order: 2), Build.Spot("c", 1, order: 3)],
            2 => [Build.Spot("a", 1, "tray a"), Build.Spot("a", 1, "tray b"), Build.Spot("a", 2), Build.Spot("b", 1, kind: PlaceKind.VentilatedCabinet)],
            _ => [Build.Spot("a", 1, "tray a", order: 1), Build.Spot("a", 2, "tray b", order: 1), Build.Spot("b", 1, order: 3), Build.Spot("c", 1, order: 2, kind: PlaceKind.FireCabinet)],
        };
        var made = things.Select((t, i) => Build.Thing($"K{i}", Contents[t.Content], t.Spot < spots.Length ? spots[t.Spot].Id : null) with
        {
            Pinned = t.Mark == 0 ? "shown there" : null,
            HandsOff = t.Mark == 1 ? "crystals" : null,
            IsFlameSealed = t.Mark == 2,
            IsInOwnPacking = t.Mark == 3,
        });
        return Build.Of(spots, [.. made]).With(limit is 0 or > 3 ? [] : [Build.AtMost(spots[0].Id, limit)]);
    }
}
