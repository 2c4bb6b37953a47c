using Stockroom.Assessment.Losses;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class DecayForecastTests
{
    private static DecayForecast Of(string content, double grams, int years) =>
        DecayForecast.Of(Bench.Of(content, grams, "glass ampoule 2 mL", "flame seal"), Bench.Facts, Bench.Day.AddYears(years))!;

    // 1 curie is the activity of a gram of radium, in equilibrium with its radon; 0.17 mL of helium a year with four alphas (Rutherford and Boltwood).
    [Fact]
    public void Radium_AfterAYear_HoldsItsDaughtersAndItsHelium()
    {
        var decay = Of("radium", 1, 1);
        double Becquerels(string name) => decay.Members.Single(m => m.Nuclide.Name == name).Activity.Becquerels;
        Assert.InRange(Becquerels("Ra-226"), 3.62e10, 3.7e10);
        Assert.Equal(1, Becquerels("Rn-222") / Becquerels("Ra-226"), 0.001);
        Assert.InRange(decay.Helium.Moles * 22_414, 0.15, 0.18);
    }

    // Purified natural uranium gives 25 kBq a gram from its two long isotopes; thorium-234 and protactinium stand with it after a year.
    [Fact]
    public void Uranium_AfterAYear_HasItsKnownActivity()
    {
        var decay = Of("uranium", 1, 1);
        double Becquerels(string name) => decay.Members.Single(m => m.Nuclide.Name == name).Activity.Becquerels;
        Assert.InRange(Becquerels("U-238"), 12_200, 12_500);
        Assert.Equal(1, Becquerels("Th-234") / Becquerels("U-238"), 0.001);
        Assert.DoesNotContain(decay.Members, m => m.Nuclide.Name == "Ra-226" && m.Activity.Becquerels > 1);
    }

    [Fact]
    public void Copper_HasNone() => Assert.Null(DecayForecast.Of(Bench.Of("copper", 1, "glass vial 20 mL", "screw cap, PTFE-faced liner"), Bench.Facts, Bench.Day));
}
