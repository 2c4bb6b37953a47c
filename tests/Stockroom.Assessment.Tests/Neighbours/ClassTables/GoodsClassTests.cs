using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Tests.Neighbours.ClassTables;

public sealed class GoodsClassTests
{
    // Source: ADR 2025, Table A; strengths at, above and below the borders that the list itself names.
    [Theory]
    [InlineData("acetone", "1090", "3", "", "II")]
    [InlineData("methanol", "1230", "3", "6.1", "II")]
    [InlineData("diethyl ether", "1155", "3", "", "I")]
    [InlineData("nitric acid 64%", "2031", "8", "", "II")]
    [InlineData("nitric acid 65%", "2031", "8", "5.1", "II")]
    [InlineData("nitric acid 90%", "2031", "8", "5.1", "I")]
    [InlineData("acetic acid (glacial)", "2789", "8", "3", "II")]
    [InlineData("acetic acid 80%", "2790", "8", "", "II")]
    [InlineData("acetic acid 25%", "2790", "8", "", "III")]
    [InlineData("hydrogen peroxide 30%", "2014", "5.1", "8", "II")]
    [InlineData("hydrogen peroxide 20%", "2014", "5.1", "8", "II")]
    [InlineData("hydrogen peroxide 19%", "2984", "5.1", "", "III")]
    [InlineData("hydrogen peroxide 8%", "2984", "5.1", "", "III")]
    [InlineData("hydrogen peroxide 70%", "2015", "5.1", "8", "I")]
    [InlineData("sulfuric acid 98%", "1830", "8", "", "II")]
    [InlineData("sulfuric acid 37%", "2796", "8", "", "II")]
    [InlineData("perchloric acid 70%", "1873", "5.1", "8", "I")]
    [InlineData("perchloric acid 50%", "1802", "8", "5.1", "II")]
    [InlineData("ammonia solution 25%", "2672", "8", "", "III")]
    [InlineData("sodium", "1428", "4.3", "", "I")]
    [InlineData("phosphorus (white)", "1381", "4.2", "6.1", "I")]
    [InlineData("sulfur", "1350", "4.1", "", "III")]
    [InlineData("bromine", "1744", "8", "6.1", "I")]
    [InlineData("iodine", "3495", "8", "6.1", "III")]
    [InlineData("mercury", "2809", "8", "6.1", "III")]
    [InlineData("potassium cyanide", "1680", "6.1", "", "I")]
    [InlineData("chlorine", "1017", "2.3", "5.1; 8", null)]
    [InlineData("picric acid (wet)", "3364", "4.1", "", "I")]
    public void Goods_ListedContent_IsAsTheListHasIt(string name, string un, string @class, string subsidiary, string? group)
    {
        var goods = Profiles.Of(name).Goods;
        Assert.Equal((un, @class, subsidiary, group), (goods.UnNumber, goods.Class, string.Join("; ", goods.Subsidiary), goods.PackingGroup));
        Assert.False(goods.IsDerived);
    }

    // Source: UN Model Regulations part 2; the criteria of the GHS categories.
    [Theory]
    [InlineData("hand rub", "3", "II")]
    [InlineData("diglyme", "3", "III")]
    [InlineData("lauroyl peroxide", "5.2", null)]
    [InlineData("dieldrin", "6.1", "I")]
    [InlineData("potassium iodate", "5.1", "II")]
    [InlineData("aluminium sulfide", "4.3", "I")]
    [InlineData("sodium chloride", GoodsClass.NotRegulated, null)]
    [InlineData("sucrose", GoodsClass.NotRegulated, null)]
    [InlineData("hydrogen peroxide 3%", GoodsClass.NotRegulated, null)]
    public void Goods_UnlistedContent_IsDerivedFromItsCategories(string name, string @class, string? group)
    {
        var goods = Profiles.Of(name).Goods;
        Assert.Equal((@class, group), (goods.Class, goods.PackingGroup));
        Assert.Null(goods.UnNumber);
        Assert.True(goods.IsDerived);
    }

    [Fact]
    public void Goods_OrphanOrUnclassified_IsNotKnownAndNeverNotRegulated()
    {
        Assert.Null(Profiles.Orphan(MatterState.Liquid).Goods.Class);
        Assert.Null(Profiles.Of("murexide").Goods.Class);
        Assert.Null(Profiles.Orphan(MatterState.Liquid).Storage.Class);
        Assert.Null(Profiles.Of("murexide").Storage.Class);
    }

    // Two ways to the class, the list from the trade and the GHS categories from the label: they share a hazard nearly always.
    // Where they do not, Annex VI lacks what transport knows (dichloromethane, sulfur, iodine), or the list has its own idea.
    [Fact]
    public void Goods_ListAgainstCategories_ShareAHazard()
    {
        var (shared, apart) = (0, new List<string>());
        foreach (var content in SubstanceCatalogue.Default.Substances.Select(Content.Of).Concat(SubstanceCatalogue.Default.Preparations))
        {
            if (UnNumbers.Default.Find(content) is not { } listed)
                continue;
            var derived = GoodsDerivation.Derive(content, Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu), isRadioactive: false);
            if (!derived.IsDangerous || derived.Class == "9")
                continue;
            if (derived.Hazards.Contains(listed.Class) || listed.Hazards.Contains(derived.Class))
                shared++;
            else
                apart.Add($"{content.Name}: {listed} / {derived}");
        }

        Assert.True(shared > 550, $"only {shared} could be compared");
        Assert.True(apart.Count <= 10, string.Join("\n", apart));
    }

    [Fact]
    public void Rows_Figures_CanBe()
    {
        string[] classes = ["1.1", "2.1", "2.2", "2.3", "3", "4.1", "4.2", "4.3", "5.1", "5.2", "6.1", "7", "8", "9"];
        foreach (var (content, from, to, goods) in UnNumbers.Default.Rows)
        {
            Assert.Matches("^[0-9]{4}$", goods.UnNumber);
            Assert.Contains(goods.Class, classes);
            Assert.All(goods.Subsidiary, s => Assert.Contains(s, classes));
            Assert.DoesNotContain(goods.Class, goods.Subsidiary);
            Assert.True(goods.PackingGroup is null or "I" or "II" or "III", content);
            Assert.True(goods.Zone is null or "A" or "B" or "C" or "D", content);
            Assert.True(from is null || to is null || from < to, content);
        }
    }

    [Fact]
    public void Goods_ReferenceSubstances_HaveTheirNumberAndClass()
    {
        var catalogue = SubstanceCatalogue.Default;
        var (compared, wrong) = (0, new List<string>());
        // The catalogue counts magnesium turnings as the powder, which has a number of its own.
        foreach (var row in ReferenceTables.Read("reference_substances.tsv").Where(r => r["un"] != "-" && r["name"] != "magnesium turnings"))
        {
            var name = row["name"];
            var content = catalogue.Resolve(name).Content ?? catalogue.Resolve(name.Split(" (")[0]).Content;
            if (content is null)
                continue;
            compared++;
            var goods = ContactProfileOf(content).Goods;
            if (goods.UnNumber != row["un"] || goods.Class != row["class"] || string.Join(",", goods.Subsidiary) != row["subsidiary"].TrimStart('-'))
                wrong.Add($"{name}: {goods}, list says UN {row["un"]}, class {row["class"]} ({row["subsidiary"]})");
        }

        Assert.True(compared > 90, $"only {compared} names were found");
        Assert.Empty(wrong);
    }

    [Fact]
    public void Storage_ReferenceSubstances_HaveTheirClassWhereItIsSure()
    {
        var catalogue = SubstanceCatalogue.Default;
        var (compared, wrong) = (0, new List<string>());
        foreach (var row in ReferenceTables.Read("reference_substances.tsv").Where(r => r["lgk_confidence"] == "high" && r["lgk_expected"] != "-"))
        {
            var content = catalogue.Resolve(row["name"]).Content ?? catalogue.Resolve(row["name"].Split(" (")[0]).Content;
            if (content is null)
                continue;
            compared++;
            var storage = ContactProfileOf(content).Storage;
            if (storage.Class != row["lgk_expected"])
                wrong.Add($"{row["name"]}: {storage.Class} ({storage.Because}), expected {row["lgk_expected"]}");
        }

        Assert.True(compared > 55, $"only {compared} names were found");
        Assert.Empty(wrong);
    }

    private static Stockroom.Assessment.Neighbours.ContactProfile ContactProfileOf(Content content) =>
        Stockroom.Assessment.Neighbours.ContactProfile.Of(content, Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu));
}
