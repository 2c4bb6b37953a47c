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

    // 10 CFR 71 App. A, Table A-1: Th (nat) has 8.1E-9 TBq/g, thorium-232 with the thorium-228 that no chemistry parts from it.
    [Fact]
    public void Thorium_AtTheStart_HasTheActivityOfNaturalThorium()
    {
        var decay = Of("thorium", 1, 0);
        Assert.Equal(8100, decay.Total.Becquerels, 0.02 * 8100);
        Assert.Equal(["Th-228", "Th-232"], decay.Members.Select(m => m.Nuclide.Name).Order());
    }

    // In every old uranium mineral: 3.4E-7 g of radium for a gram of uranium (Boltwood 1908), and 1.1E-7 mL of helium a year (Rutherford).
    [Fact]
    public void Pitchblende_HoldsItsRadiumAndAllDaughters_FromTheFirstDay()
    {
        var uranium = 238.03 / 270.03;
        var decay = Of("pitchblende", 1 / uranium, 0);
        double Becquerels(string name) => decay.Members.Single(m => m.Nuclide.Name == name).Activity.Becquerels;
        Assert.True(decay.InEquilibrium);
        var radium = Becquerels("Ra-226") / Bench.Facts.Nuclide("Ra-226")!.SpecificActivity.BecquerelsPerKilogram * 1000;
        Assert.InRange(radium, 3.2e-7, 3.6e-7);
        Assert.All(["U-234", "Th-230", "Rn-222", "Pb-210", "Po-210"], daughter => Assert.Equal(1, Becquerels(daughter) / Becquerels("U-238"), 0.001));
        Assert.Equal(1, Becquerels("Pa-231") / Becquerels("U-235"), 0.001);
        Assert.Equal(0.0462, Becquerels("U-235") / Becquerels("U-238"), 0.001);
        Assert.InRange((Of("pitchblende", 1 / uranium, 1).Helium.Moles - decay.Helium.Moles) * 22_414, 1.05e-7, 1.25e-7);
        Assert.Equal(0, decay.Helium.Moles);
    }

    [Theory]
    [InlineData("uranium", "U-238, half-life 4.463 billion years")]
    [InlineData("neptunium", "Np-237, half-life 2.144 million years")]
    [InlineData("radium", "Ra-226, half-life 1600 years")]
    [InlineData("polonium", "Po-210, half-life 138.4 days")]
    public void HalfLife_IsSaidInWords(string content, string words) => Assert.Contains(
        words, Forecast.Of(Bench.Of(content, 1, "glass vial 20 mL", "screw cap, PTFE-faced liner"), Bench.Facts, Bench.Day).Paths.Single(p => p.Path == "radioactive decay").Because, StringComparison.Ordinal);

    [Fact]
    public void Copper_HasNone() => Assert.Null(DecayForecast.Of(Bench.Of("copper", 1, "glass vial 20 mL", "screw cap, PTFE-faced liner"), Bench.Facts, Bench.Day));
}
