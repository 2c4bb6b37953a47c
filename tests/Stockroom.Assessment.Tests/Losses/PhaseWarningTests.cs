using Stockroom.Assessment.Losses;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What freezes, melts or boils within reach of its place. Temperatures of change from the tables, named there.</summary>
public sealed class PhaseWarningTests
{
    private static IReadOnlyList<string> Warnings(string content, double mean, double coldest, double warmest, string? cover = null) => Forecast.Of(
        Bench.Of(content, 20, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", mean, cover) with
        {
            Coldest = Temperature.FromCelsius(coldest), Warmest = Temperature.FromCelsius(warmest),
        },
        Bench.Facts,
        Bench.Day).Warnings;

    [Theory]
    [InlineData("gallium", 22, 15, 35, "melts at 29.8")]
    [InlineData("phosphorus (white)", 25, 12, 46, "melts at 44.2")]
    [InlineData("acetic acid (glacial)", 20, 13, 26, "freezes at about 16.2")]
    [InlineData("formalin", 18, 8, 24, "clouds at about 15")]
    [InlineData("sulfuric acid 98%", 10, -3, 25, "freezes at about 0")]
    [InlineData("phosphoric acid 85%", 19, 13, 26, "crystallises at about 21")]
    [InlineData("sodium hydroxide 50%", 15, 5, 25, "crystallises at about 12")]
    [InlineData("water", 8, -4, 25, "freezes at 0")]
    [InlineData("salt solution 10%", 5, -12, 25, "freezes at about")]
    [InlineData("diethyl ether", 22, 15, 36, "boils at 34.4")]
    public void Place_ThatReachesIt_IsWarnedOf(string content, double mean, double coldest, double warmest, string words) =>
        Assert.Contains(Warnings(content, mean, coldest, warmest), w => w.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("gallium", 20, 15, 28)]
    [InlineData("acetic acid (glacial)", 20, 18, 26)]
    [InlineData("sulfuric acid 96%", 10, -3, 25)]
    [InlineData("formalin", 20, 17, 24)]
    [InlineData("water", 15, 3, 25)]
    [InlineData("ethanol 70%", 5, -12, 25)]
    public void Place_ThatDoesNotReachIt_IsNot(string content, double mean, double coldest, double warmest) =>
        Assert.DoesNotContain(Warnings(content, mean, coldest, warmest), w => w.Contains("freezes", StringComparison.Ordinal) || w.Contains("melts", StringComparison.Ordinal) || w.Contains("clouds", StringComparison.Ordinal));

    [Theory]
    [InlineData("phosphorus (white)", "water", -2, true)]
    [InlineData("phosphorus (white)", "water", 4, false)]
    [InlineData("bromine", "sulfuric acid 98%", -2, true)]
    [InlineData("bromine", "sulfuric acid 98%", 6, false)]
    public void Cover_ThatFreezesInThePlacesWinter_IsWarnedOf(string content, string cover, double coldest, bool warned) =>
        Assert.Equal(warned, Warnings(content, 15, coldest, 25, cover).Any(w => w.Contains($"{cover} cover freezes", StringComparison.Ordinal)));

    // A full vessel breaks on what is larger as a solid. Densities of solid and liquid at the melting point, g/cm3: water 0.917 and 1.000, gallium 5.91
    // and 6.09, bismuth 9.7 and 10.05, silicon 2.31 and 2.57, germanium 5.26 and 5.60 (CRC Handbook; Iida, Guthrie, The Physical Properties of Liquid
    // Metals; all from memory), antimony: type metal owes it its sharp edges (common practice). The rest shrink.
    [Theory]
    [InlineData("water", 0, true)]
    [InlineData("gallium", 29.8, true)]
    [InlineData("bismuth", 271.4, true)]
    [InlineData("antimony", 630.6, true)]
    [InlineData("silicon", 1414, true)]
    [InlineData("germanium", 938.3, true)]
    [InlineData("mercury", -38.8, false)]
    [InlineData("benzene", 5.5, false)]
    [InlineData("lead", 327.5, false)]
    [InlineData("tin", 231.9, false)]
    public void Freezing_BreaksTheVesselOfWhatGrowsOnIt(string content, double melts, bool grows)
    {
        var words = At(Bench.Of(content, 20, "glass reagent bottle 100 mL", "none", melts + 20) with { Coldest = Temperature.FromCelsius(melts - 20) }).Single(w => w.Contains("freezes", StringComparison.Ordinal));
        Assert.Equal(grows, words.Contains("it grows on freezing and may break a full vessel", StringComparison.Ordinal));
    }

    // Ice is larger than its water (CRC Handbook); strong sulfuric acid is no water.
    [Theory]
    [InlineData("phosphorus (white)", "water", true)]
    [InlineData("bromine", "sulfuric acid 98%", false)]
    public void Cover_ThatGrowsOnFreezing_MayBreakTheVessel(string content, string cover, bool breaks)
    {
        var words = Warnings(content, 15, -15, 25, cover).Single(w => w.Contains($"{cover} cover freezes", StringComparison.Ordinal));
        Assert.EndsWith(breaks ? "it then covers badly and may break the vessel" : "it then covers badly", words[..words.LastIndexOf(" (", StringComparison.Ordinal)], StringComparison.Ordinal);
    }

    // At the point itself it changes: a place that only just reaches it is warned of, to err to the safe side.
    [Fact]
    public void Place_ThatOnlyJustReachesIt_IsWarnedOf()
    {
        var gallium = Bench.Of("gallium", 20, "glass reagent bottle 100 mL", "none", 20);
        var melts = Bench.Facts.MeltingPoint(gallium.Content.Pure!).Value!.Value;
        Assert.Contains(At(gallium with { Warmest = melts }), w => w.Contains("gallium melts", StringComparison.Ordinal));
        Assert.Contains(At(gallium with { Temperature = Temperature.FromCelsius(40), Coldest = melts }), w => w.Contains("gallium freezes", StringComparison.Ordinal));
        Assert.Equal("gallium freezes", string.Join(", ", At(gallium with { Temperature = melts }).Select(w => w[..15])));
        var ether = Bench.Of("diethyl ether", 20, "glass reagent bottle 100 mL", "none", 20);
        var boils = Bench.Facts.BoilingPoint(ether.Content.Pure!).Value!.Value;
        Assert.Contains(At(ether with { Warmest = boils }), w => w.Contains("diethyl ether boils", StringComparison.Ordinal));
        Assert.DoesNotContain(At(ether with { Temperature = boils }), w => w.Contains("boils", StringComparison.Ordinal));
    }

    // Of what nobody knows, nothing is said.
    [Fact]
    public void Unknown_IsNotSaidToFreeze() => Assert.Empty(At(Bench.Of("water", 20, "glass reagent bottle 100 mL", "none", 20) with { Content = Content.Orphan("brown liquid", MatterState.Liquid), Coldest = Temperature.FromCelsius(-40), Light = PlaceLight.Window }));

    private static List<string> At(Situation situation) => [.. PhaseWarnings.Of(situation, Bench.Facts)];

    // Where no extremes are said, the mean and the swings tell.
    [Fact]
    public void Place_KnownByItsSwings_IsJudgedByThem()
    {
        var glacial = Bench.Of("acetic acid (glacial)", 20, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", 20);
        bool Freezes(double seasons, double day) => Forecast.Of(glacial with { SeasonalSwing = new TemperatureChange(seasons), DailySwing = new TemperatureChange(day) }, Bench.Facts, Bench.Day)
            .Warnings.Any(w => w.Contains("freezes", StringComparison.Ordinal));
        Assert.False(Freezes(4, 2));
        Assert.True(Freezes(5, 3));
    }

    [Theory]
    [InlineData(PlaceLight.Window, true)]
    [InlineData(PlaceLight.Dark, false)]
    public void Peroxide_InAWindow_IsWarnedOf(PlaceLight light, bool warned)
    {
        var peroxide = Bench.Of("hydrogen peroxide 30%", 100, "HDPE bottle 125 mL", "vented cap") with { Light = light };
        Assert.Equal(warned, Forecast.Of(peroxide, Bench.Facts, Bench.Day).Warnings.Any(w => w.Contains("daylight", StringComparison.Ordinal)));
    }
}
