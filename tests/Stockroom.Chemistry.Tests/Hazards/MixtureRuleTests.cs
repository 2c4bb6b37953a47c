using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Each mixture rule below, at and above its threshold; the clause of CLP Annex I stands beside each.</summary>
public sealed class MixtureRuleTests
{
    // 3.1.3.6.1 and Tables 3.1.1, 3.1.2; each ATE of the whole is computed by hand: 100/sum(C/ATE).
    [Theory]
    [InlineData("10:100;30:500", ExposureRoute.Oral, 625.0, "Acute Tox. 4")]
    [InlineData("20:481", ExposureRoute.Oral, 2405.0, "")]
    [InlineData("0.5:0.5;20:500", ExposureRoute.Oral, 96.15, "Acute Tox. 3")]
    [InlineData("3:50;12:300;40:1100", ExposureRoute.Dermal, 733.3, "Acute Tox. 3")]
    [InlineData("30:2.65", ExposureRoute.Vapour, 8.833, "Acute Tox. 3")]
    [InlineData("25:0.5;25:1.5", ExposureRoute.Dust, 1.5, "Acute Tox. 4")]
    [InlineData("10:50", ExposureRoute.Oral, 500.0, "Acute Tox. 4")]
    [InlineData("50:2.5", ExposureRoute.Oral, 5.0, "Acute Tox. 1")]
    [InlineData("50:2.51", ExposureRoute.Oral, 5.02, "Acute Tox. 2")]
    [InlineData("50:25", ExposureRoute.Oral, 50.0, "Acute Tox. 2")]
    [InlineData("50:25.01", ExposureRoute.Oral, 50.02, "Acute Tox. 3")]
    [InlineData("50:150", ExposureRoute.Oral, 300.0, "Acute Tox. 3")]
    [InlineData("50:150.1", ExposureRoute.Oral, 300.2, "Acute Tox. 4")]
    [InlineData("50:1000", ExposureRoute.Oral, 2000.0, "Acute Tox. 4")]
    [InlineData("50:1000.1", ExposureRoute.Oral, 2000.2, "")]
    [InlineData("0.9:500;20:500", ExposureRoute.Oral, 2500.0, "")]
    public void AcuteToxicity_Additivity_GivesTheCategory(string parts, ExposureRoute route, double ate, string expected)
    {
        var found = Given.Classified(Given.Mixture(Parts(parts, route)));
        Assert.Equal(ate, (double)found.AcuteEstimates[route], ate * 1e-3);
        Assert.Equal(expected, string.Join(", ", Given.Names(found)));
    }

    // 440 ppmV / 0.10 = 4400 ppmV (index no. 016-001-00-4), in an inert gas.
    [Fact]
    public void AcuteToxicity_GasInInertGas_GivesTheCategory()
    {
        var found = Given.Classified(Given.Mixture(MatterState.Gas, Given.WithAte("hydrogen sulfide", 10, ExposureRoute.Gas, 440)));
        Assert.Equal(4400m, found.AcuteEstimates[ExposureRoute.Gas]);
        Assert.Equal(["Acute Tox. 4"], Given.Names(found));
    }

    // 3.1.3.6.2.3: above a tenth of unknown toxicity the known part alone stands for 100.
    [Theory]
    [InlineData(12, 30, 500, 1466.7)]
    [InlineData(10, 30, 500, 1666.7)]
    [InlineData(0, 30, 500, 1666.7)]
    public void AcuteToxicity_UnknownShare_ReducesTheWholeAboveATenth(double unknown, double percent, double ate, double expected)
    {
        Ingredient[] parts = [Given.WithAte("A", (decimal)percent, ExposureRoute.Oral, (decimal)ate), .. unknown > 0 ? [Given.Unknown("B", (decimal)unknown)] : Array.Empty<Ingredient>()];
        var found = Given.Classified(Given.Mixture(parts));
        Assert.Equal(expected, (double)found.AcuteEstimates[ExposureRoute.Oral], 0.05);
        Assert.Equal((decimal)unknown, found.UnknownShares[ExposureRoute.Oral]);
    }

    // (100 - 15)/(20/0.05 + 40/1.5) = 0.1992, category 2.
    [Fact]
    public void AcuteToxicity_DustWithUnknownShare_IsCategory2()
    {
        var found = Given.Classified(Given.Mixture(Given.WithAte("A", 20, ExposureRoute.Dust, 0.05m), Given.WithAte("B", 40, ExposureRoute.Dust, 1.5m), Given.Unknown("C", 15)));
        Assert.Equal(0.1992, (double)found.AcuteEstimates[ExposureRoute.Dust], 5e-5);
        Assert.Contains("Acute Tox. 2", Given.Names(found));
    }

    // Table 3.2.3 with its note on sub-categories.
    [Theory]
    [InlineData("3 Skin Corr. 1B H314;3 Skin Corr. 1C H314", "Skin Corr. 1C")]
    [InlineData("1 Skin Corr. 1A H314;4 Skin Corr. 1B H314", "Skin Corr. 1B")]
    [InlineData("5 Skin Corr. 1A H314", "Skin Corr. 1A")]
    [InlineData("4.99 Skin Corr. 1A H314", "Skin Irrit. 2")]
    [InlineData("1 Skin Corr. 1A H314", "Skin Irrit. 2")]
    [InlineData("0.99 Skin Corr. 1A H314", "")]
    [InlineData("5 Skin Corr. 1 H314", "Skin Corr. 1")]
    [InlineData("3 Skin Corr. 1 H314;4 Skin Corr. 1C H314", "Skin Corr. 1")]
    [InlineData("10 Skin Irrit. 2 H315", "Skin Irrit. 2")]
    [InlineData("9.99 Skin Irrit. 2 H315", "")]
    public void Skin_Additivity_GivesTheCategory(string parts, string expected) => Check(parts, "Skin ", expected);

    // Table 3.3.3.
    [Theory]
    [InlineData("0.9 Eye Dam. 1 H318;5 Eye Irrit. 2 H319", "")]
    [InlineData("1 Eye Dam. 1 H318;1.5 Eye Irrit. 2 H319", "Eye Irrit. 2")]
    [InlineData("2.99 Eye Dam. 1 H318", "Eye Irrit. 2")]
    [InlineData("3 Eye Dam. 1 H318", "Eye Dam. 1")]
    [InlineData("1 Eye Dam. 1 H318;2 Skin Corr. 1B H314", "Eye Dam. 1")]
    [InlineData("10 Eye Irrit. 2 H319", "Eye Irrit. 2")]
    [InlineData("9.99 Eye Irrit. 2 H319", "")]
    public void Eye_Additivity_GivesTheCategory(string parts, string expected) => Check(parts, "Eye ", expected);

    // ECHA guidance on CLP 1.6.3.4: 1/2 + 3/5 = 1.1 of the limits, sodium hydroxide by its specific one.
    [Theory]
    [InlineData(3, "Skin Corr. 1B")]
    [InlineData(2.5, "Skin Corr. 1B")]
    [InlineData(2.49, "Skin Irrit. 2")]
    public void Skin_SpecificAndGenericLimits_AddUpAsShares(double percent, string expected)
    {
        var sodiumHydroxide = new Ingredient(Given.Facts.ProfileOf(Given.Catalogue["sodium hydroxide"]), 1m, MatterState.Solid);
        Assert.Equal(expected, Given.Names(Given.Classified(Given.Mixture(sodiumHydroxide, Given.Ingredient("X", (decimal)percent, "Skin Corr. 1B H314"))))[0]);
    }

    // Tables 3.4.5, 3.5.2, 3.6.2, 3.7.2, 3.8.3, 3.9.4, 5.1: nothing is summed.
    [Theory]
    [InlineData("0.09 Carc. 1B H350;0.09 Carc. 1A H350", "")]
    [InlineData("0.1 Carc. 1B H350", "Carc. 1B")]
    [InlineData("0.1 Carc. 1A H350;5 Carc. 2 H351", "Carc. 1A")]
    [InlineData("1 Carc. 2 H351", "Carc. 2")]
    [InlineData("0.99 Carc. 2 H351", "")]
    [InlineData("0.1 Muta. 1B H340", "Muta. 1B")]
    [InlineData("0.099 Muta. 1B H340", "")]
    [InlineData("1 Muta. 2 H341", "Muta. 2")]
    [InlineData("0.3 Repr. 1B H360D", "Repr. 1B")]
    [InlineData("0.29 Repr. 1B H360D", "")]
    [InlineData("3 Repr. 2 H361f", "Repr. 2")]
    [InlineData("2.99 Repr. 2 H361f", "")]
    [InlineData("0.3 Lact. H362", "Lact.")]
    [InlineData("0.1 Skin Sens. 1A H317", "Skin Sens. 1")]
    [InlineData("0.099 Skin Sens. 1A H317", "")]
    [InlineData("1 Skin Sens. 1B H317", "Skin Sens. 1")]
    [InlineData("0.99 Skin Sens. 1 H317", "")]
    [InlineData("1 Resp. Sens. 1 H334", "Resp. Sens. 1")]
    [InlineData("0.1 Resp. Sens. 1A H334", "Resp. Sens. 1")]
    [InlineData("10 STOT SE 1 H370", "STOT SE 1")]
    [InlineData("9.99 STOT SE 1 H370", "STOT SE 2")]
    [InlineData("0.99 STOT SE 1 H370", "")]
    [InlineData("10 STOT SE 2 H371", "STOT SE 2")]
    [InlineData("5 STOT RE 1 H372", "STOT RE 2")]
    [InlineData("10 STOT RE 1 H372", "STOT RE 1")]
    [InlineData("9.99 STOT RE 2 H373", "")]
    [InlineData("0.1 Ozone 1 H420", "Ozone 1")]
    [InlineData("0.09 Ozone 1 H420", "")]
    [InlineData("0.1 ED HH 1 EUH380", "ED HH 1")]
    [InlineData("0.99 ED ENV 2 EUH431", "")]
    [InlineData("0.1 vPvM EUH451", "vPvM")]
    public void CutOff_BelowAtAndAbove_GivesTheCategory(string parts, string expected) => Check(parts, "", expected);

    // Table A.7.1 and A.8 of 29 CFR 1910.1200 Appendix A (from memory): the US cut-offs are lower.
    [Theory]
    [InlineData("0.1 Repr. 1B H360D", "Repr. 1B")]
    [InlineData("1 STOT RE 1 H372", "STOT RE 1")]
    [InlineData("0.1 Carc. 2 H351", "Carc. 2")]
    [InlineData("99 Aquatic Acute 1 H400", "")]
    public void CutOff_UnderUsRules_IsLower(string parts, string expected) =>
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Classified(Given.Mixture(Categories(parts)), RuleSet.Us))));

    // 3.8.3.4.5: drowsiness 12 + 9 = 21 reaches 20; irritation of the airways 15 by itself does not.
    [Fact]
    public void SingleExposure3_EachEffect_IsSummedByItself()
    {
        var found = Given.Classified(Given.Mixture(Categories("12 STOT SE 3 H336;9 STOT SE 3 H336;15 STOT SE 3 H335")));
        Assert.Equal(["H336"], Given.Codes(found));
    }

    // 3.10.3.3: 25 mPa s / 0.9 g/cm3 = 27.8 mm2/s lies above 20.5.
    [Theory]
    [InlineData(40, 27.8, false)]
    [InlineData(40, 20.5, true)]
    [InlineData(40, 20.51, false)]
    [InlineData(10, 5.0, true)]
    [InlineData(9.99, 5.0, false)]
    [InlineData(40, null, true)]
    public void Aspiration_ByShareAndViscosity_IsClassified(double percent, double? viscosity, bool expected)
    {
        var mixture = Given.Mixture(Given.Ingredient("naphtha", (decimal)percent, "Asp. Tox. 1 H304")) with { KinematicViscosity = (decimal?)viscosity };
        Assert.Equal(expected, Given.Classified(mixture).Has("Asp. Tox. 1"));
    }

    // Tables 4.1.1 and 4.1.2; silver nitrate with M = 1000 acute, 100 chronic: 0.03 x 1000 = 30; 10 x 100 x 0.03 = 30.
    [Theory]
    [InlineData(0.03, "Aquatic Acute 1, Aquatic Chronic 2")]
    [InlineData(0.025, "Aquatic Acute 1, Aquatic Chronic 2")]
    [InlineData(0.0249, "Aquatic Chronic 3")]
    [InlineData(0.25, "Aquatic Acute 1, Aquatic Chronic 1")]
    public void Aquatic_SilverNitrate_IsSummedWithItsFactors(double percent, string expected) =>
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Solution("silver nitrate", (decimal)percent)).Where(n => n.StartsWith("Aquatic", StringComparison.Ordinal))));

    [Theory]
    [InlineData("1 Aquatic Chronic 2 H411;12 Aquatic Chronic 3 H412", "")]
    [InlineData("1 Aquatic Chronic 2 H411;15 Aquatic Chronic 3 H412", "Aquatic Chronic 3")]
    [InlineData("25 Aquatic Chronic 2 H411", "Aquatic Chronic 2")]
    [InlineData("24.9 Aquatic Chronic 2 H411", "Aquatic Chronic 3")]
    [InlineData("25 Aquatic Chronic 4 H413", "Aquatic Chronic 4")]
    [InlineData("24.9 Aquatic Chronic 4 H413", "")]
    [InlineData("25 Aquatic Acute 1 H400", "Aquatic Acute 1")]
    [InlineData("24.9 Aquatic Acute 1 H400", "")]
    public void Aquatic_Summation_GivesTheCategory(string parts, string expected) => Check(parts, "Aquatic", expected);

    // Table 2.6.1; diethyl ether: flash point -20, boiling point 34.6 degrees Celsius.
    [Theory]
    [InlineData(-20, 34.6, "Flam. Liq. 1")]
    [InlineData(22.9, 35.1, "Flam. Liq. 2")]
    [InlineData(23, 100, "Flam. Liq. 3")]
    [InlineData(60, 100, "Flam. Liq. 3")]
    [InlineData(60.1, 100, "")]
    public void FlammableLiquid_ByFlashAndBoilingPoint_IsClassified(double flash, double boiling, string expected)
    {
        var mixture = Given.Mixture(Given.Ingredient("A", 50)) with { FlashPointCelsius = (decimal)flash, BoilingPointCelsius = (decimal)boiling };
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Classified(mixture))));
    }

    [Fact]
    public void FlammableLiquid_SingleSubstanceWithItsFlashPoint_IsClassified()
    {
        var ether = Given.Mixture(Given.Ingredient("A", 100)) with { FlashPointCelsius = -20m, BoilingPointCelsius = 34.6m };
        Assert.Equal(["Flam. Liq. 1"], Given.Names(Given.Classified(ether)));
    }

    // GHS Table 2.6.1: category 4 up to 93 degrees Celsius; CLP ends at 60.
    [Theory]
    [InlineData(93, RuleSet.Un, "Flam. Liq. 4")]
    [InlineData(93.1, RuleSet.Un, "")]
    [InlineData(93, RuleSet.Us, "Flam. Liq. 4")]
    [InlineData(93, RuleSet.Eu, "")]
    public void FlammableLiquid_Category4_IsOutsideClp(double flash, RuleSet rules, string expected)
    {
        var mixture = Given.Mixture(Given.Ingredient("A", 50)) with { FlashPointCelsius = (decimal)flash };
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Classified(mixture, rules))));
    }

    // GHS 3.1.3.6 and Table 3.2.3: categories that only the GHS has.
    [Fact]
    public void GhsOnly_Categories_AreFoundUnderUnRules()
    {
        Assert.Equal(["Acute Tox. 5"], Given.Names(Given.Classified(Given.Mixture(Given.WithAte("A", 50, ExposureRoute.Oral, 1500)), RuleSet.Un)));
        Assert.Equal(["Skin Irrit. 3"], Given.Names(Given.Classified(Given.Mixture(Categories("10 Skin Irrit. 3 H316")), RuleSet.Un)));
        Assert.Equal(["Skin Irrit. 3"], Given.Names(Given.Classified(Given.Mixture(Categories("5 Skin Irrit. 2 H315")), RuleSet.Un)));
    }

    // Annex I 1.1.2.2 as the project reads it: a tested property is carried over without much water, and never silently dropped.
    [Theory]
    [InlineData("1 Org. Perox. C H242", "Org. Perox. C")]
    [InlineData("0.99 Org. Perox. C H242", "")]
    [InlineData("1 Water-react. 1 H260", "Water-react. 1")]
    [InlineData("1 Expl. 1.1 H201", "Expl. 1.1")]
    [InlineData("1 Self-heat. 1 H251", "Self-heat. 1")]
    [InlineData("1 Self-react. C H242", "Self-react. C")]
    [InlineData("1 Met. Corr. 1 H290", "Met. Corr. 1")]
    [InlineData("1 Desen. Expl. 1 H206", "Desen. Expl. 1")]
    [InlineData("1 Pyr. Sol. 1 H250", "Pyr. Sol. 1")]
    [InlineData("1 Flam. Liq. 2 H225", "Flam. Liq. 2")]
    [InlineData("0.99 Flam. Liq. 2 H225", "")]
    public void TestedProperty_WithoutWater_IsCarriedOver(string parts, string expected) => Check(parts, "", expected);

    [Theory]
    [InlineData("1 Flam. Sol. 1 H228", "Flam. Sol. 1")]
    [InlineData("1 Ox. Sol. 2 H272", "Ox. Sol. 2")]
    public void TestedProperty_OfASolid_IsCarriedOverToSolids(string parts, string expected)
    {
        Assert.Equal([expected], Given.Names(Given.Classified(Given.Mixture(MatterState.Solid, Categories(parts)))));
        Assert.Contains(Given.Classified(Given.Mixture(Categories(parts))).Notes, n => n.StartsWith("not judged", StringComparison.Ordinal));
    }

    // Common practice: spirits of 70 % and more are labelled highly flammable, of 40 % flammable, wine and beer are not.
    [Theory]
    [InlineData(93.8, "Flam. Liq. 2")]
    [InlineData(62.4, "Flam. Liq. 2")]
    [InlineData(33.3, "Flam. Liq. 3")]
    [InlineData(3, "")]
    public void FlammableLiquid_EthanolInWater_ByItsFlashPoint(double percent, string expected) =>
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Solution("ethanol", (decimal)percent))));

    private static void Check(string parts, string beginning, string expected) =>
        Assert.Equal(expected, string.Join(", ", Given.Names(Given.Classified(Given.Mixture(Categories(parts)))).Where(n => n.StartsWith(beginning, StringComparison.Ordinal))));

    private static Ingredient[] Parts(string text, ExposureRoute route) =>
        [.. text.Split(';').Select((p, i) => Given.WithAte("part " + i, Decimal(p.Split(':')[0]), route, Decimal(p.Split(':')[1])))];

    private static Ingredient[] Categories(string text) =>
        [.. text.Split(';').Select((p, i) => Given.Ingredient("part " + i, Decimal(p[..p.IndexOf(' ', StringComparison.Ordinal)]), p[(p.IndexOf(' ', StringComparison.Ordinal) + 1)..]))];

    private static decimal Decimal(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
