using Stockroom.Assessment.Arrangement;

namespace Stockroom.Assessment.Tests.Arrangement;

public sealed class LimitTests
{
    private static readonly Spot[] Spots = [Build.Spot("left", 1), Build.Spot("left", 2), Build.Spot("right", 1)];

    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 0)]
    [InlineData(4, 0)]
    public void Containers_BelowAtAndAboveTheLimit_MoveOnlyWhatIsTooMany(int most, int moves)
    {
        var plan = Build.Plan(ThreeSalts("left-1").With(Build.AtMost("left-1", most)));
        Assert.Equal(moves, plan.Moves.Count);
        Assert.Empty(plan.Left);
        if (moves > 0)
            Assert.Contains($"can take {most} containers and holds 3 containers", plan.Moves[0].Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Limit_OfACabinet_CountsAllItsShelves()
    {
        var plan = Build.Plan(Build.Of(
            Spots,
            Build.Thing("A", "sodium chloride", "left-1"),
            Build.Thing("B", "sodium chloride", "left-2"),
            Build.Thing("C", "sodium chloride", "left-2")).With(Build.AtMost("left", 2)));
        Assert.Equal("right-1", Assert.Single(plan.Moves).To);
    }

    [Fact]
    public void Limit_OfTheRoom_WithNowhereElse_LeavesWhatIsTooMany()
    {
        var plan = Build.Plan(ThreeSalts("left-1").With(Build.AtMost("prep room", 2)));
        Assert.Empty(plan.Moves);
        Assert.Single(plan.Left);
    }

    [Theory]
    [InlineData(1500, 1500, 3000, 0)]
    [InlineData(1500, 1501, 3000, 1)]
    public void Load_AtTheLimitAndAMilligramAbove_MovesOnlyThen(long first, long second, long most, int moves)
    {
        var plan = Build.Plan(Build.Of(
            Spots,
            Build.Thing("A", "sodium chloride", "left-1") with { Burden = new Burden(first, 0, 0) },
            Build.Thing("B", "sodium chloride", "left-1") with { Burden = new Burden(second, 0, 0) }).With(new SpotLimit("left-1", "left-1", Measure.Milligrams, most)));
        Assert.Equal(moves, plan.Moves.Count);
    }

    [Fact]
    public void FlammableVolume_CountsOnlyWhatBurns()
    {
        var plan = Build.Plan(Build.Of(
            Spots,
            Build.Thing("A", "acetone", "left-1") with { Burden = new Burden(null, 900_000, 900_000) },
            Build.Thing("B", "ethanol 96%", "left-1") with { Burden = new Burden(null, 900_000, 900_000) },
            Build.Thing("C", "water", "left-1") with { Burden = new Burden(null, 5_000_000, 0) }).With(new SpotLimit("left", "left", Measure.FlammableMicrolitres, 1_000_000)));
        var move = Assert.Single(plan.Moves);
        Assert.NotEqual("C", move.Key);
        Assert.Contains("can take 1 L of flammable liquid and holds 1.8 L of flammable liquid", move.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void FullPlace_IsNotSentMore()
    {
        var plan = Build.Plan(Build.Of(
            [Build.Spot("a", 1), Build.Spot("b", 1), Build.Spot("c", 1)],
            Build.Thing("A", "hydrochloric acid 37%", "a-1"),
            Build.Thing("B", "potassium cyanide", "a-1"),
            Build.Thing("C", "potassium cyanide", "a-1"),
            Build.Thing("D", "sodium chloride", "b-1")).With(Build.AtMost("b-1", 1)));
        Assert.Equal(["A: a-1 > c-1"], plan.Steps());
    }

    [Fact]
    public void UnknownLimits_AreTakenAsRoom_AndSaid()
    {
        var plan = Build.Plan(ThreeSalts("left-1").With(new SpotLimit("right-1", "right-1", Measure.Milligrams, 100)));
        Assert.Contains(plan.Notes, n => n.StartsWith("for 2 of 3 places nothing is said", StringComparison.Ordinal));
        Assert.Contains(plan.Notes, n => n.Contains("the weight of A, B and C is not known", StringComparison.Ordinal));
    }

    private static Shelving ThreeSalts(string spot) => Build.Of(
        Spots, Build.Thing("A", "sodium chloride", spot), Build.Thing("B", "potassium chloride", spot), Build.Thing("C", "sodium chloride", spot));
}
