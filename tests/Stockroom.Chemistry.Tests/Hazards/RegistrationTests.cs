using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

public sealed class RegistrationTests
{
    [Fact]
    public void HazardClasses_List_HoldsEveryClass()
    {
        var registered = HazardClasses.All.Select(c => c.GetType()).ToHashSet();
        var missing = typeof(HazardClass).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(HazardClass)) && !t.IsAbstract && !t.IsNested && !registered.Contains(t));
        Assert.Empty(missing);
        Assert.Equal(HazardClasses.All.Count, registered.Count);
    }

    [Fact]
    public void LabelElements_EveryCategory_BelongsToOneClassAndBack()
    {
        var inTable = Given.Facts.Elements.Rows.Select(r => r.Category).ToHashSet();
        var inClasses = HazardClasses.All.SelectMany(c => c.Categories).ToList();
        Assert.Equal(inClasses.Count, inClasses.Distinct().Count());
        Assert.Equal(inTable.Order(), inClasses.Order());
    }

    [Fact]
    public void HazardClasses_Names_AreThoseOfTheTable() =>
        Assert.All(HazardClasses.All, c => Assert.Contains(Given.Facts.Elements.Rows, r => r.HazardClass == c.Name && c.Owns(r.Category)));

    [Fact]
    public void Hazards_EveryCategoryOfEverySubstance_HasLabelElementsAndWording()
    {
        foreach (var substance in Given.Catalogue.Substances)
        {
            foreach (var category in Given.Facts.ProfileOf(substance).Categories.Where(c => c.Category != "EUH"))
            {
                Assert.True(Given.Facts.Elements.Of(category.Category, category.Statement) is not null, $"{substance}: {category.Category} {category.Statement}");
                Assert.NotEmpty(Given.Facts.Texts.Published(category.Statement, RuleSet.Eu));
            }
        }
    }

    [Fact]
    public void Hazards_SelfClassified_SayFromMemory() =>
        Assert.All(
            Given.Catalogue.Substances.SelectMany(s => Given.Facts.ProfileOf(s).Categories).Where(c => c.Status == EntryStatus.Self),
            c => Assert.True(c.Provenance.FromMemory));

    [Fact]
    public void Limits_EveryResult_IsACategoryOfAClass() =>
        Assert.All(Given.Facts.Limits.Rows.Where(r => r.Way is "alone" or "alone gas" or "sum"), r => Assert.NotNull(HazardClasses.Of(r.Result!)));

    // IUPAC: 38 elements have no stable isotope once bismuth is left out.
    [Fact]
    public void Radioactive_Elements_AreThoseWithoutStableIsotope()
    {
        var weights = Given.Catalogue.AtomicWeights.Keys.Where(Given.Facts.Radioactive.IsRadioactive).ToList();
        Assert.Equal(37, weights.Count);
        Assert.Contains("U", weights);
        Assert.DoesNotContain("Pb", weights);
    }

    [Fact]
    public void FlashPoints_Table_IsReadAndFalls() =>
        Assert.True(Given.Facts.FlashPoints.Of("ethanol", 40m)!.Value.Celsius > Given.Facts.FlashPoints.Of("ethanol", 80m)!.Value.Celsius);

    [Fact]
    public void Tables_OfHazards_AreAllEmbedded() =>
        Assert.All(
            ["hazards.tsv", "concentration-limits.tsv", "statements.tsv", "label-elements.tsv", "generic-limits.tsv"],
            t => Assert.Contains(t, EmbeddedTables.Names));
}
