using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Tests.Holdings;

namespace Stockroom.Assessment.Tests.Concerns;

/// <summary>Air below and above what sets the concern off.</summary>
public sealed class AirConcernTests
{
    private static IReadOnlyList<WrongItem> Air(Action<Shelf> fill)
    {
        var shelf = new Shelf();
        shelf.Place("cold", "refrigerator", "room", new Book.Places.PlaceLimits { Position = 9 });
        shelf.Place("cold-shelf", "shelf", "cold", new Book.Places.PlaceLimits { HeightMetres = 0.5m });
        fill(shelf);
        return [.. shelf.Stock.Wrong.Where(w => w.Kind == "air")];
    }

    // Ether burns from 1.9 % (NFPA 497): 5 mL in 150 L make 0.8 %, 100 mL 16 %.
    [Theory]
    [InlineData("5 mL", 0)]
    [InlineData("100 mL", 1)]
    public void Refrigerator_WithEther_IsDangerFromWhatWouldBurnIfItBroke(string amount, int items)
    {
        var wrong = Air(s => s.Put("diethyl ether", amount, "cold-shelf", "glass reagent bottle 100 mL"));
        Assert.Equal(items, wrong.Count);
        Assert.All(wrong, w => Assert.Equal(Severity.Danger, w.Severity));
    }

    [Fact]
    public void Cabinet_WithTheSameBottle_IsNotAConcern() =>
        Assert.Empty(Air(s => s.Put("diethyl ether", "100 mL", "near-low", "glass reagent bottle 100 mL")));

    // Common practice: an open beaker of ether in a closed cabinet makes its air burn, and more than a room may hold.
    [Fact]
    public void Cabinet_WithAnOpenVessel_IsSurelyBad()
    {
        var wrong = Air(s => s.Put("diethyl ether", "400 mL", "near-low", "glass reagent bottle 500 mL", "none"));
        Assert.Contains(wrong, w => w.What.StartsWith("Vapour gathers", StringComparison.Ordinal));
    }
}
