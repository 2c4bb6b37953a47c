using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Contents as the stock book holds them: pure, mixed, radioactive, unknown.</summary>
public sealed class ContentTests
{
    // CLP Annex VI Table 3, index nos. 035-001-00-5, 015-001-00-1, 080-001-00-0, 603-022-00-4, 017-001-00-7.
    [Theory]
    [InlineData("bromine", "H330 H314 H400")]
    [InlineData("phosphorus (white)", "H250 H300 H330 H314 H400")]
    [InlineData("mercury", "H330 H360D H372 H400 H410")]
    [InlineData("diethyl ether", "H224 H302 H336 EUH019 EUH066")]
    [InlineData("chlorine", "H270 H280 H331 H315 H319 H335 H400")]
    public void Classify_PureSubstance_HasTheStatementsOfItsEntry(string name, string codes) =>
        Assert.Equal(codes.Split(' ').Order(), Given.Pure(name).StatementCodes.Order());

    // Group entries 080-002-00-6 and 006-007-00-5.
    [Theory]
    [InlineData("mercury(II) nitrate", "H310")]
    [InlineData("potassium cyanide", "EUH032")]
    public void Classify_MemberOfAGroup_HasTheGroupsEntry(string name, string code)
    {
        Assert.Contains(code, Given.Pure(name).StatementCodes);
        Assert.Contains(Given.Facts.ProfileOf(Given.Catalogue[name]).Categories, c => c.Status == EntryStatus.Group && c.Provenance.Locator.Contains("group entry", StringComparison.Ordinal));
    }

    [Fact]
    public void StatementsOf_Substance_AreThoseOfTheUndilutedEntry()
    {
        Assert.Contains("H330", Given.Facts.StatementsOf(Given.Catalogue["nitric acid"]));
        Assert.Empty(Given.Facts.StatementsOf(Given.Catalogue["water"]));
    }

    [Fact]
    public void Classify_SubstanceWithoutSource_IsUnclassifiedNotHarmless()
    {
        var found = Given.Pure("astatine");
        Assert.Equal(["astatine"], found.Unclassified);
        Assert.Equal(100m, found.UnknownShares[ExposureRoute.Oral]);
        Assert.Contains(found.Notes, n => n.Contains("not the same as harmless", StringComparison.Ordinal));
        Assert.Contains(LabelElements.Of(found, Given.Facts).WordsBeside, w => w.Contains("unclassified", StringComparison.Ordinal));
    }

    [Fact]
    public void Classify_MixtureWithUnclassifiedPart_StatesTheShare()
    {
        var found = Classifier.Classify(Given.Content("osmium=15; ethanol=50"), Given.Facts, RuleSet.Eu);
        Assert.Equal(15m, found.UnknownShares[ExposureRoute.Dermal]);
        Assert.Contains(LabelElements.Of(found, Given.Facts).Supplemental, s => s.Text.StartsWith("15 percent of the mixture", StringComparison.Ordinal));
    }

    [Fact]
    public void Classify_HarmlessBySource_SaysWhoSaysSo()
    {
        var found = Given.Pure("sodium chloride");
        Assert.Empty(found.Categories);
        Assert.Empty(found.Unclassified);
        Assert.Contains(found.Notes, n => n.Contains("no classification applies", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("uranium", true)]
    [InlineData("thorium dioxide", true)]
    [InlineData("radium bromide", true)]
    [InlineData("lead", false)]
    [InlineData("bismuth", false)]
    public void Classify_ContentWithRadioactiveElement_CarriesTheWord(string name, bool expected) =>
        Assert.Equal(expected, LabelElements.Of(Given.Pure(name), Given.Facts).WordsBeside.Contains("Radioactive"));

    [Theory]
    [InlineData("unknown corrosive liquid", "H314")]
    [InlineData("old flammable solvent?", "H224")]
    [InlineData("brown powder", "")]
    public void Classify_Orphan_StaysUnknownWhateverItsWordsSuggest(string words, string suspected)
    {
        var found = Classifier.Classify(Content.Orphan(words, MatterState.Liquid), Given.Facts, RuleSet.Eu);
        var label = LabelElements.Of(found, Given.Facts);
        Assert.True(found.IsUnknown);
        Assert.Empty(found.Categories);
        Assert.Equal(suspected, string.Join(' ', found.Suspected.Select(s => s.Statement)));
        Assert.Equal("Danger", label.SignalWord);
        Assert.True(label.Suspected);
        Assert.Contains("Contents unknown", label.WordsBeside);
    }

    [Theory]
    [InlineData("hydrochloric acid=10; sodium hydroxide=10", "neutralise")]
    [InlineData("sodium hypochlorite=5; hydrochloric acid=5", "chlorine")]
    [InlineData("sodium cyanide=5; acetic acid=5", "hydrogen cyanide")]
    [InlineData("sodium=5", "entry of the dry substance")]
    public void Classify_IngredientsThatReact_AreNoted(string parts, string word) =>
        Assert.Contains(Classifier.Classify(Given.Content(parts), Given.Facts, RuleSet.Eu).Notes, n => n.Contains("would react", StringComparison.Ordinal) && n.Contains(word, StringComparison.Ordinal));

    // Annex I 3.2.3.1.2: a given pH counts; a published limit wins over it, and the contradiction is said.
    [Fact]
    public void Classify_ExtremePhAgainstALimit_IsAContradictionNoted()
    {
        var acid = Mixture.Of(Given.Content("sulfuric acid=4"), Given.Facts) with { Ph = 0.5m };
        var found = Given.Classified(acid);
        Assert.DoesNotContain(found.Categories, c => c.Category.StartsWith("Skin Corr.", StringComparison.Ordinal));
        Assert.Contains(found.Notes, n => n.StartsWith("contradiction: pH 0.5", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(2.0, true)]
    [InlineData(2.1, false)]
    [InlineData(11.4, false)]
    [InlineData(11.5, true)]
    public void Classify_ExtremePhWithoutLimits_Corrodes(double ph, bool expected)
    {
        var found = Given.Classified(Given.Mixture(Given.Ingredient("one", 5)) with { Ph = (decimal)ph });
        Assert.Equal(expected, found.Has("Skin Corr. 1"));
    }

    [Fact]
    public void Classify_SolidOxidiserInWater_IsNotJudgedAndSaysSo()
    {
        var found = Given.Solution("potassium permanganate", 5);
        Assert.DoesNotContain(found.Categories, c => c.Category.StartsWith("Ox.", StringComparison.Ordinal));
        Assert.Contains(found.Notes, n => n.StartsWith("not judged: Ox. Sol. 2", StringComparison.Ordinal));
    }

    [Fact]
    public void Classify_PyrophoricInSolvent_IsCarriedOver()
    {
        var found = Classifier.Classify(Given.Catalogue.Resolve("n-butyllithium in hexane").Content!, Given.Facts, RuleSet.Eu);
        Assert.True(found.Has("Pyr. Liq. 1"));
        Assert.True(found.Has("Flam. Liq. 2"));
    }

    [Theory]
    [InlineData(RuleSet.Eu, true)]
    [InlineData(RuleSet.Us, false)]
    public void Classify_AquaticHazard_IsNoPartOfTheUsRules(RuleSet rules, bool expected) =>
        Assert.Equal(expected, Given.Pure("bromine", rules).Has("Aquatic Acute 1"));

    [Fact]
    public void Classify_EveryContentOfTheCatalogue_SaysSomething()
    {
        foreach (var content in Given.Catalogue.Preparations.Concat(Given.Catalogue.Substances.Select(Content.Of)))
        {
            foreach (var rules in Enum.GetValues<RuleSet>())
            {
                var found = Classifier.Classify(content, Given.Facts, rules);
                var label = LabelElements.Of(found, Given.Facts);
                Assert.True(found.Categories.Count == 0 || found.Reasons.Count > 0, content.Name);
                Assert.All(label.HazardStatements, s => Assert.False(string.IsNullOrWhiteSpace(s.Text)));
                Assert.True(label.Precautionary.Count <= LabelElements.UsualPrecautions);
            }
        }
    }

    [Fact]
    public void Classify_MoreThanAHundredPercent_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Given.Classified(Given.Mixture(Given.Ingredient("a", 60), Given.Ingredient("b", 60))));

    // Annex VI Note 11: boric acid and borax are added up; 0.2 + 0.1 reaches the 0.3 % of Repr. 1B.
    [Theory]
    [InlineData("boric acid=0.2; borax=0.1", true)]
    [InlineData("boric acid=0.2; borax=0.09", false)]
    public void Classify_BoronCompounds_AreAddedBeforeTheLimit(string parts, bool expected) =>
        Assert.Equal(expected, Classifier.Classify(Given.Content(parts), Given.Facts, RuleSet.Eu).Has("Repr. 1B"));

    [Fact]
    public void Classify_GasMixedWithWater_IsJudgedAsItsSolution()
    {
        var gas = Classifier.Classify(Given.Content("hydrogen chloride=4; hydrochloric acid=6"), Given.Facts, RuleSet.Eu);
        Assert.Equal(Given.Solution("hydrochloric acid", 10).Categories, gas.Categories);
        Assert.Contains(gas.Notes, n => n.Contains("judged as hydrochloric acid", StringComparison.Ordinal));
    }

    // 50 % of each by mass: 1 mol He (4.003 g) for 0.1173 mol H2S (34.08 g), so 10.5 % by volume; 440/0.105 = 4188 ppmV.
    [Fact]
    public void Classify_GasesGivenByMass_AreJudgedByVolume()
    {
        var found = Classifier.Classify(Given.Content("hydrogen sulfide=50; helium=50", MatterState.Gas), Given.Facts, RuleSet.Eu);
        Assert.Equal(4186, (double)found.AcuteEstimates[ExposureRoute.Gas], 5.0);
    }
}
