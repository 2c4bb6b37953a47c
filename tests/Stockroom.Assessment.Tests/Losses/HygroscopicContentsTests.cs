using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>What takes up water from the air of a room, by published figures. Those marked so are from memory.</summary>
public sealed class HygroscopicContentsTests
{
    private const double DrierRoom = 45;

    private static string? Why(string content, string? cover = null) => HygroscopicContents.Why(Bench.Of(content, 10, "glass jar 250 mL", "loose cap", 20, cover));

    // Humidity over the saturated solution at 20 to 25 degrees C, in per cent. Greenspan, J. Res. NBS 81A (1977) 89; zinc, calcium and iron(III) chloride,
    // O'Brien, J. Sci. Instrum. 25 (1948) 73 (all from memory). A salt whose solution stands below the room's air runs in it.
    [Theory]
    [InlineData("lithium bromide", 6.4)]
    [InlineData("sodium hydroxide", 8.2)]
    [InlineData("potassium hydroxide", 9.3)]
    [InlineData("zinc chloride", 10)]
    [InlineData("lithium chloride", 11.3)]
    [InlineData("calcium chloride", 31)]
    [InlineData("magnesium chloride", 33.1)]
    [InlineData("potassium carbonate", 43.2)]
    [InlineData("sodium nitrate", 75.4)]
    [InlineData("sodium chloride", 75.5)]
    [InlineData("potassium chloride", 85.1)]
    [InlineData("potassium sulfate", 97.6)]
    public void Salt_RunsWhereItsSaturatedSolutionIsDrierThanTheRoom(string salt, double percent) =>
        Assert.Equal(percent < DrierRoom ? Bench.Content(salt).Name : null, Why(salt));

    // Water left in a gas dried over them, mg/L at 25 degrees C. Trusell, Diehl, Anal. Chem. 35 (1963) 674 (from memory). Air of half humidity holds 11.5.
    [Theory]
    [InlineData("magnesium perchlorate", 0.0002)]
    [InlineData("barium oxide", 0.0028)]
    [InlineData("phosphorus pentoxide", 0.0036)]
    [InlineData("calcium oxide", 0.66)]
    public void DryingAgent_TakesWaterFromTheRoom(string agent, double milligramsLeft)
    {
        Assert.True(milligramsLeft < 11.5);
        Assert.Equal(agent, Why(agent));
    }

    // Glycerol of 80 % is in balance with air of half humidity (Miner, Dalton, Glycerol, 1953; from memory); the chlorides fume or run in moist
    // air, phosphoric acid runs (common practice).
    [Theory]
    [InlineData("glycerol")]
    [InlineData("phosphoric acid")]
    [InlineData("aluminium chloride")]
    [InlineData("iron(III) chloride")]
    [InlineData("antimony trichloride")]
    [InlineData("tin(IV) chloride")]
    public void WhatRunsOrFumesInMoistAir_TakesWater(string content) => Assert.Equal(Bench.Content(content).Name, Why(content));

    // A name that the catalogue calls otherwise would never be met.
    [Fact]
    public void Listed_AreNamesOfTheCatalogue() => Assert.All(HygroscopicContents.Listed, name => Assert.Equal(name, Bench.Content(name).Pure?.Name));

    // Air of half humidity stands over sulfuric acid of 43 % (Wilson, Ind. Eng. Chem. 13 (1921) 326; from memory): from 60 % up it always takes water.
    [Theory]
    [InlineData("sulfuric acid 98%", true)]
    [InlineData("sulfuric acid 60%", true)]
    [InlineData("sulfuric acid 10%", false)]
    public void SulfuricAcid_TakesWaterWhereStrong(string acid, bool takes) => Assert.Equal(takes ? "strong sulfuric acid" : null, Why(acid));

    [Theory]
    [InlineData("bromine", "sulfuric acid 98%", true)]
    [InlineData("phosphorus (white)", "water", false)]
    [InlineData("sodium", "paraffin oil", false)]
    [InlineData("bromine", null, false)]
    public void Cover_OfAcidTakesWater(string content, string? cover, bool takes) => Assert.Equal(takes ? "the acid cover" : null, Why(content, cover));

    [Fact]
    public void WhatIsTaken_IsWarnedOf()
    {
        var salt = Bench.Of("lithium chloride", 10, "glass jar 250 mL", "loose cap", 20);
        Assert.True(HygroscopicContents.TakesUp(salt));
        Assert.Contains(Forecast.Of(salt, Bench.Facts, Bench.Day).Warnings, w => w.StartsWith("lithium chloride takes up water from the air", StringComparison.Ordinal));
    }
}
