using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Precedence of pictograms, signal word and statements: CLP Art. 20, 26, 27 and 28.</summary>
public sealed class LabelElementsTests
{
    [Theory]
    [InlineData("Org. Perox. B H241;Eye Irrit. 2 H319;Skin Sens. 1 H317", "GHS01 GHS02 GHS07", "", "Danger")] // Art. 26(1)(a): both of type B are compulsory
    [InlineData("Acute Tox. 3 H301;Skin Irrit. 2 H315;STOT SE 3 H335", "GHS06", "", "Danger")] // (b)
    [InlineData("Skin Corr. 1B H314;Acute Tox. 4 H302", "GHS05 GHS07", "", "Danger")] // (c) spares acute toxicity
    [InlineData("Skin Corr. 1B H314;Skin Irrit. 2 H315", "GHS05", "", "Danger")] // (c)
    [InlineData("Met. Corr. 1 H290;Skin Irrit. 2 H315;Eye Irrit. 2 H319", "GHS05", "", "Warning")] // (c), as GHS05 stands whatever for
    [InlineData("Resp. Sens. 1 H334;Skin Sens. 1 H317;Eye Irrit. 2 H319", "GHS08", "", "Danger")] // (d)
    [InlineData("Resp. Sens. 1 H334;Skin Sens. 1 H317;STOT SE 3 H335", "GHS07 GHS08", "", "Danger")] // (d) spares STOT SE 3
    [InlineData("Carc. 2 H351;Skin Sens. 1 H317", "GHS07 GHS08", "", "Warning")] // (d) needs respiratory sensitisation
    [InlineData("Flam. Gas 1A H220;Press. Gas (Comp.) H280", "GHS02", "GHS04", "Danger")] // (e)
    [InlineData("Expl. 1.1 H201;Ox. Sol. 1 H271", "GHS01", "GHS03", "Danger")] // (a)
    [InlineData("Aquatic Acute 1 H400;Aquatic Chronic 1 H410", "GHS09", "", "Warning")]
    [InlineData("Aquatic Chronic 3 H412", "", "", null)]
    public void Pictograms_ByPrecedence_RemainAsTheArticleSays(string categories, string shown, string optional, string? signal)
    {
        var label = Label(categories);
        Assert.Equal(shown, string.Join(' ', label.Pictograms));
        Assert.Equal(optional, string.Join(' ', label.OptionalPictograms));
        Assert.Equal(signal, label.SignalWord);
    }

    [Theory]
    [InlineData("Aquatic Acute 1 H400;Aquatic Chronic 1 H410", "H410")]
    [InlineData("Skin Corr. 1B H314;Eye Dam. 1 H318", "H314")]
    [InlineData("Skin Corr. 1B H314;Acute Tox. 4 H302", "H302 H314")]
    [InlineData("Acute Tox. 2 H300;Acute Tox. 1 H310;Acute Tox. 2 H330", "H300+H310+H330")]
    [InlineData("Acute Tox. 4 H302;Acute Tox. 3 H311", "H302 H311")]
    [InlineData("Aquatic Acute 1 H400;Aquatic Chronic 2 H411", "H400 H411")]
    public void HazardStatements_Repetition_IsLeftOut(string categories, string codes) =>
        Assert.Equal(codes, string.Join(' ', Label(categories).HazardStatements.Select(s => s.Code).Order(StringComparer.Ordinal)));

    [Fact]
    public void Precautions_OfManyHazards_AreAtMostSixWithReasons()
    {
        var label = LabelElements.Of(Given.Solution("formaldehyde solution", 37), Given.Facts);
        Assert.Equal(6, label.Precautionary.Count);
        Assert.All(label.Precautionary, p => Assert.NotEmpty(p.Because));
        Assert.True(LabelElements.Of(Given.Solution("formaldehyde solution", 37), Given.Facts, 20).Precautionary.Count > 6);
    }

    // CLP Annex I Tables 2.6.2 and 3.2.5: fire and skin first.
    [Theory]
    [InlineData("ethanol", 96, "P210")]
    [InlineData("hydrochloric acid", 37, "P280")]
    [InlineData("hydrochloric acid", 37, "P305+P351+P338")]
    public void Precautions_ForCommonReagents_HoldTheExpected(string substance, double percent, string code) =>
        Assert.Contains(LabelElements.Of(Given.Solution(substance, (decimal)percent), Given.Facts).Precautionary, p => p.Code == code);

    [Fact]
    public void Precautions_UnderUnRules_UseTheNewCodes()
    {
        var codes = LabelElements.Of(Given.Solution("hydrochloric acid", 37, RuleSet.Un), Given.Facts, 20).Precautionary.Select(p => p.Code).ToList();
        Assert.Contains("P305+P354+P338", codes);
        Assert.DoesNotContain("P310", codes);
    }

    [Fact]
    public void Statements_UnderUnRules_LoseTheLettersOfClp() =>
        Assert.Contains(LabelElements.Of(Given.Pure("n-hexane", RuleSet.Un), Given.Facts).HazardStatements, s => s is { Code: "H361", Text: "Suspected of damaging fertility" });

    [Fact]
    public void Supplemental_UnderOtherRules_IsLeftOut()
    {
        Assert.Contains("EUH014", Given.Pure("sodium").StatementCodes);
        Assert.DoesNotContain("EUH014", Given.Pure("sodium", RuleSet.Un).StatementCodes);
    }

    [Fact]
    public void Supplemental_Sensitiser_IsNamed() =>
        Assert.Contains(
            LabelElements.Of(Given.Solution("formaldehyde solution", 0.1m), Given.Facts).Supplemental,
            s => s.Text == "Contains formaldehyde solution. May produce an allergic reaction.");

    private static LabelElements Label(string categories) =>
        LabelElements.Of(Given.Classified(Given.Mixture(Given.Ingredient("one", 100, categories.Split(';')))), Given.Facts);
}
