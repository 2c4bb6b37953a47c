using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Tests.Catalogue;

/// <summary>Spellings and names by rule. Common practice: IUPAC recommendations 2005 beside the trade's older names.</summary>
public sealed class NamingTests
{
    private static readonly SubstanceCatalogue Catalogue = SubstanceCatalogue.Default;

    [Theory]
    [InlineData("sulphuryl chloride", "sulfuryl chloride")]
    [InlineData("aluminum nitrate", "aluminium nitrate nonahydrate")]
    [InlineData("cesium carbonate", "caesium carbonate")]
    [InlineData("Cesium Nitrate", "caesium nitrate")]
    [InlineData("lithium aluminum hydride", "lithium aluminium hydride")]
    [InlineData("α-naphthol", "1-naphthol")]
    [InlineData("potassium hydrogen carbonate", "potassium hydrogencarbonate")]
    [InlineData("potassium bicarbonate", "potassium hydrogencarbonate")]
    [InlineData("cupric sulfate", "copper(II) sulfate pentahydrate")]
    [InlineData("copper(II) sulfate", "copper(II) sulfate pentahydrate")]
    [InlineData("copper sulphate", "copper(II) sulfate pentahydrate")]
    [InlineData("anhydrous copper sulphate", "copper(II) sulfate (anhydrous)")]
    [InlineData("ferric nitrate", "iron(III) nitrate nonahydrate")]
    [InlineData("mercuric iodide", "mercury(II) iodide")]
    [InlineData("plumbous chloride", "lead(II) chloride")]
    [InlineData("lead chloride", "lead(II) chloride")]
    [InlineData("nickel sulphate hexahydrate", "nickel(II) sulfate hexahydrate")]
    [InlineData("zinc(II) oxide", "zinc oxide")]
    [InlineData("sodium metal", "sodium")]
    [InlineData("CuSO4·5H2O", "copper(II) sulfate pentahydrate")]
    [InlineData("Sn", "tin")]
    [InlineData("Zn", "zinc")]
    [InlineData("7440-42-8", "boron")]
    public void Resolve_SpellingOrNameByRule_FindsTheSubstance(string words, string name) =>
        Assert.Equal(name, Catalogue.Resolve(words).Content?.Name);

    // Case tells a compound from an element: cobalt is not carbon monoxide, hafnium not hydrogen fluoride.
    [Theory]
    [InlineData("Co", "cobalt")]
    [InlineData("CO", "carbon monoxide")]
    [InlineData("Hf", "hafnium")]
    [InlineData("HF", "hydrogen fluoride")]
    [InlineData("No", "nobelium")]
    [InlineData("NO", "nitric oxide")]
    [InlineData("SnO2", "tin(IV) oxide")]
    public void Resolve_FormulasThatDifferInCase_AreTwoSubstances(string formula, string name) =>
        Assert.Equal(name, Catalogue.Resolve(formula).Content?.Name);

    [Theory]
    [InlineData("C4H10O", "butan-1-ol", "diethyl ether")]
    [InlineData("C8H10", "ethylbenzene", "p-xylene")]
    [InlineData("iron chloride", "iron(II) chloride tetrahydrate", "iron(III) chloride")]
    [InlineData("co", "carbon monoxide", "cobalt")]
    public void Resolve_WordsThatMeanSeveral_AsksWhich(string words, string one, string another)
    {
        var resolution = Catalogue.Resolve(words);
        Assert.Null(resolution.Content);
        Assert.Contains(one, resolution.Nearest);
        Assert.Contains(another, resolution.Nearest);
        Assert.Contains(" or ", resolution.Problem, StringComparison.Ordinal);
    }

    // A hydrate that the catalogue lacks is not taken for another one.
    [Fact]
    public void Resolve_AnotherHydrate_IsNotGuessed() => Assert.Null(Catalogue.Resolve("copper(II) sulfate trihydrate").Content);

    [Fact]
    public void FormsOf_Element_ListsThePlainFormFirst()
    {
        var forms = Catalogue.FormsOf("Zn").Select(s => s.Name).ToList();
        Assert.Equal(["zinc", "zinc powder"], forms);
        Assert.Contains("phosphorus (red)", Catalogue.FormsOf("P").Select(s => s.Name));
    }

    [Fact]
    public void Substances_BesidesElements_AreMoreThan480() =>
        Assert.True(Catalogue.Substances.Count(s => s.Element is null) >= 480);

    [Fact]
    public void Preparations_AreAtLeastNinety() => Assert.True(Catalogue.Preparations.Count >= 90);

    // Moles in a litre = per cent x density x 10 / molar mass.
    [Fact]
    public void Preparations_MadeByMolarity_AgreeWithTheirShareByMass()
    {
        var made = Catalogue.Preparations.Where(p => p.MolesPerLitre is not null).ToList();
        Assert.True(made.Count >= 30);
        Assert.All(made, p =>
        {
            var computed = (double)p.Parts[0].Percent * p.Density!.Value.GramsPerMillilitre * 10 / p.Parts[0].Substance.MolarMass!.Value.GramsPerMole;
            Assert.Equal(1.0, computed / (double)p.MolesPerLitre!.Value, 0.02);
        });
    }

    // Density of water at 20 degrees Celsius 0.998; CRC Handbook, Concentrative Properties of Aqueous Solutions.
    [Theory]
    [InlineData("sodium hydroxide 30%", 1.328)]
    [InlineData("sulfuric acid 50%", 1.395)]
    [InlineData("nitric acid 30%", 1.180)]
    [InlineData("hydrochloric acid 1 M", 1.016)]
    [InlineData("sodium chloride saturated", 1.200)]
    [InlineData("ethylene glycol 50%", 1.065)]
    public void Preparations_Density_AgreesWithTheHandbook(string name, double gramsPerMillilitre) =>
        Assert.Equal(gramsPerMillilitre, Catalogue.Resolve(name).Content!.Density!.Value.GramsPerMillilitre, 0.01);
}
