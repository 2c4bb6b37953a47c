using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Tests.Neighbours;

// Thresholds: concentration limits of Regulation (EC) 1272/2008, Annex VI, entries 007-030-00-3, 008-003-00-9,
// 011-002-00-6, 016-020-00-8, 017-002-01-X; 75 % sulfuric acid from memory of handbook tables.
public sealed class ContactProfileTests
{
    [Theory]
    [InlineData("hydrogen peroxide 7.9%", "hydrogen-peroxide", false)]
    [InlineData("hydrogen peroxide 8%", "hydrogen-peroxide", true)]
    [InlineData("hydrogen peroxide 3%", "hydrogen-peroxide", false)]
    [InlineData("hydrogen peroxide 70%", "strong-oxidiser", true)]
    [InlineData("hydrogen peroxide 69%", "strong-oxidiser", false)]
    [InlineData("sodium hydroxide 2%", "strong-alkali", true)]
    [InlineData("sodium hydroxide 1.9%", "strong-alkali", false)]
    [InlineData("hydrochloric acid 25%", "mineral-acid", true)]
    [InlineData("hydrochloric acid 24%", "mineral-acid", false)]
    [InlineData("hydrochloric acid 10%", "acid", true)]
    [InlineData("sulfuric acid 74%", "dehydrating-acid", false)]
    [InlineData("sulfuric acid 75%", "dehydrating-acid", true)]
    [InlineData("nitric acid 65%", "oxidising-acid", true)]
    [InlineData("nitric acid 10%", "oxidising-acid", false)]
    [InlineData("aqua regia", "oxidising-acid", true)]
    [InlineData("vinegar", "acidic", true)]
    [InlineData("vinegar", "acid", false)]
    [InlineData("ethanol 70%", "flammable-liquid", true)]
    [InlineData("ethanol 10%", "flammable-liquid", false)]
    [InlineData("salt solution 10%", "water-based", true)]
    [InlineData("sodium hydroxide", "corrosive-liquid", false)]
    [InlineData("sodium hydroxide 50%", "corrosive-liquid", true)]
    [InlineData("aluminium", "metal-powder", false)]
    [InlineData("aluminium powder", "metal-powder", true)]
    public void Of_ContentAtAStrength_CarriesTheFamilyFromItsThresholdOn(string name, string family, bool carries) =>
        Assert.Equal(carries, Profiles.Of(name).Carries(family));

    [Fact]
    public void Of_Statements_BringFamiliesThatNameTheirReason()
    {
        var profile = Profiles.Of("acetone", "H225", "H319", "EUH066");
        Assert.True(profile.Carries("flammable-liquid"));
        var unheardOf = ContactProfile.Of(Unwritten(), ["H271", "H360FD"]);
        Assert.Equal("statement H271", Assert.Single(unheardOf.Families).Because);
    }

    [Fact]
    public void Of_SolidPieceWithTheStatementsOfItsPowder_DoesNotBecomePowder()
    {
        // Annex VI, 013-002-00-1: H228 and H261 stand for stabilised powder.
        var sheet = Profiles.Of("aluminium", "H228", "H261");
        Assert.False(sheet.Carries("flammable-solid"));
        Assert.False(sheet.Carries("water-reactive"));
    }

    [Fact]
    public void Of_WhitePhosphorusWithItsStatements_MayStillStandUnderWater() =>
        Assert.Equal(Separation.SameTray, new PairJudge().Judge(Profiles.Of("phosphorus (white)", "H250", "H300", "H330", "H314"), Profiles.Of("water")).Separation);

    [Fact]
    public void Of_ContentOfWhichNothingIsWritten_SaysThatItIsNotHarmless()
    {
        var profile = ContactProfile.Of(Unwritten(), []);
        Assert.Empty(profile.Families);
        Assert.Contains(profile.Notes, n => n.Contains("does not mean that it is harmless", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_ContentStatedHarmless_HasNoSuchNote()
    {
        Assert.Empty(Profiles.Of("sodium chloride").Notes);
        Assert.Equal("harmless", Assert.Single(Profiles.Of("sodium chloride").Families).Family.Key);
    }

    [Fact]
    public void Of_Orphan_CarriesWhatItCouldBeAndSaysSo()
    {
        var orphan = Profiles.Orphan(MatterState.Liquid, "unknown corrosive liquid");
        Assert.True(orphan.IsUnknown);
        Assert.True(orphan.Carries("acid") && orphan.Carries("strong-alkali") && orphan.Carries("cyanide") && orphan.Carries("flammable-liquid"));
        Assert.Contains(orphan.Notes, n => n.Contains("worst", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_RadioactiveSample_SaysWhatIsNotJudged() =>
        Assert.Contains(Profiles.Of("uranium").Notes, n => n.Contains("radioactive", StringComparison.Ordinal));

    private static Content Unwritten() => Content.Of(new Substance(
        "powder of a new kind", null, null, MatterState.Solid, null, null, null, new Provenance("test", "-", "2026")));
}
