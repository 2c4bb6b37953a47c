using Stockroom.Assessment.Losses;
using Stockroom.Book.Places;
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
