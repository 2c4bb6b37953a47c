using Stockroom.Assessment.Recipes;
using Stockroom.Book;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Tests.Recipes;

public sealed class MixFileTests
{
    // The form of the contract; 100/(16/1600) would be 10000 without the others.
    [Fact]
    public void Read_EveryField_ReachesTheMixture()
    {
        var file = Read("""
            {"rules": "un", "state": "liquid", "ph": null, "flash_point_c": 61.5, "ingredients": [
              {"name": "A", "percent": 16, "categories": ["Skin Irrit. 2"], "ate": {"oral_mg_kg": 1600, "inhalation_vapour_mg_l": null},
               "m_acute": 10, "m_chronic": 1, "limits": [{"category": "Skin Corr. 1B", "from_percent": 5, "below_percent": 15}], "ph": 1.8, "toxicity_unknown": ["oral"]}]}
            """);
        Assert.Equal(RuleSet.Un, file.Rules);
        Assert.Equal(61.5m, file.Mixture.FlashPointCelsius);
        var profile = Assert.Single(file.Mixture.Ingredients).Profile;
        Assert.Equal("H315", Assert.Single(profile.Categories).Statement);
        Assert.Equal((ExposureRoute.Oral, 1600m), (profile.Estimates[0].Route, profile.Estimates[0].Value));
        Assert.Equal((10m, 1m, 1.8m), (profile.AcuteFactor, profile.ChronicFactor, profile.Ph));
        var limit = Assert.Single(profile.Limits);
        Assert.True(limit.Contains(5m) && limit.Contains(14.99m) && !limit.Contains(15m) && !limit.Contains(4.99m));
        Assert.Equal([ExposureRoute.Oral], profile.UnknownRoutes);
    }

    [Theory]
    [InlineData("Acute Tox. 3 (oral)", "H301")]
    [InlineData("Acute Tox. 3 oral", "H301")]
    [InlineData("Acute Tox. 2 H330", "H330")]
    [InlineData("STOT SE 3 (H336)", "H336")]
    [InlineData("Repr. 1B H360FD", "H360FD")]
    [InlineData("Skin Corr. 1", "H314")]
    [InlineData("EUH066", "EUH066")]
    [InlineData("Eye Irrit. 2A", "H319")]
    [InlineData("STOT SE 3", "H335 H336")]
    [InlineData("Acute Tox. 4", "H302 H312 H332")]
    public void Read_Category_HasTheStatementMeantOrAllThatCouldBe(string category, string codes) =>
        Assert.Equal(codes, string.Join(' ', One($"\"categories\": [\"{category}\"]").Categories.Select(c => c.Statement)));

    [Fact]
    public void Read_CategoryWithoutRouteBesideAnEstimate_IsThatOfTheEstimate() =>
        Assert.Equal("H312", Assert.Single(One("\"categories\": [\"Acute Tox. 4\"], \"ate\": {\"dermal_mg_kg\": 1500}").Categories).Statement);

    [Fact]
    public void Read_CatalogueSubstanceWithoutData_IsNotTakenAsHarmless()
    {
        var file = Read("""{"ingredients": [{"name": "sulfuric acid", "percent": 20}, {"name": "water", "percent": 80}]}""");
        Assert.NotEmpty(file.Mixture.Ingredients[0].Categories);
        Assert.Contains(file.Mixture.Notes, n => n.Contains("the catalogue's were taken", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_OneIngredientTwice_IsAddedUp() =>
        Assert.Equal(6m, Assert.Single(Read("""{"ingredients": [{"name": "A", "percent": 3, "categories": ["Carc. 2"]}, {"name": "a", "percent": 3, "categories": ["Carc. 2"]}]}""").Mixture.Ingredients).Percent);

    [Theory]
    [InlineData("{", "is not JSON: line 1")]
    [InlineData("[]", "must be a JSON object")]
    [InlineData("""{"ingredients": []}""", "names no ingredients")]
    [InlineData("""{"ingredients": [{"percent": 10}]}""", "has no name")]
    [InlineData("""{"ingredients": [{"name": "A"}]}""", "has no percent")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 101}]}""", "up to 100")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 60}, {"name": "B", "percent": 60}]}""", "more than 100 %")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 6, "categories": ["Skin Korr. 1B"]}]}""", "nearest: Skin Corr. 1B")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 6, "categries": ["Carc. 2"]}]}""", "nearest: categories")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 6, "ate": {"oral_mg_kg": -1}}]}""", "above 0")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 6, "toxicity_unknown": ["eyes"]}]}""", "oral, dermal or inhalation")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 6, "limits": [{"category": "Carc. 2", "from_percent": 5, "below_percent": 5}]}]}""", "above from_percent")]
    [InlineData("""{"ingredients": [{"name": "A", "percent": 3, "categories": ["Carc. 2"]}, {"name": "A", "percent": 3, "categories": ["Carc. 1A"]}]}""", "different data")]
    [InlineData("""{"rules": "uk", "ingredients": [{"name": "A", "percent": 6}]}""", "eu, un or us")]
    [InlineData("""{"state": "paste", "ingredients": [{"name": "A", "percent": 6}]}""", "liquid, solid or gas")]
    [InlineData("""{"ph": 20, "ingredients": [{"name": "A", "percent": 6}]}""", "from -2 to 16")]
    public void Read_WhatIsNotRight_IsRefusedInOneLine(string json, string words)
    {
        var message = Assert.Throws<BookRefusal>(() => Read(json)).Message;
        Assert.Contains(words, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    private static HazardProfile One(string data) => Read($$"""{"ingredients": [{"name": "A", "percent": 10, {{data}}}]}""").Mixture.Ingredients[0].Profile;

    private static MixFile Read(string json) => MixFile.Read(json, HazardFacts.Default, SubstanceCatalogue.Default);
}
