using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Tests.Catalogue;

public sealed class SubstanceCatalogueTests
{
    private static readonly SubstanceCatalogue Catalogue = SubstanceCatalogue.Default;

    // Molar masses: CRC Handbook of Chemistry and Physics, 97th ed., Physical Constants of Inorganic / Organic Compounds.
    // Within one part in 10,000: the handbook sums sulfur as 32.065, the abridged weight is 32.06.
    [Theory]
    [InlineData("bromine", 159.808)]
    [InlineData("sulfuric acid", 98.079)]
    [InlineData("copper(II) sulfate pentahydrate", 249.685)]
    [InlineData("sodium thiosulfate pentahydrate", 248.184)]
    [InlineData("calcium hydroxide", 74.093)]
    [InlineData("nickel carbonyl", 170.734)]
    [InlineData("acetone", 58.079)]
    [InlineData("potassium alum", 474.388)]
    public void MolarMass_FromFormula_AgreesWithHandbook(string name, double gramsPerMole) =>
        Assert.Equal(gramsPerMole, Catalogue[name].MolarMass!.Value.GramsPerMole, gramsPerMole * 1e-4);

    [Theory]
    [InlineData("Bromine", "bromine")]
    [InlineData("Br2", "bromine")]
    [InlineData("7726-95-6", "bromine")]
    [InlineData("sulphur", "sulfur")]
    [InlineData("cesium", "caesium")]
    [InlineData("aluminum", "aluminium")]
    [InlineData("white phosphorus", "phosphorus (white)")]
    [InlineData("H₂O", "water")]
    [InlineData("NaOH", "sodium hydroxide")]
    [InlineData("isopropanol", "propan-2-ol")]
    public void Resolve_SynonymFormulaOrNumber_FindsTheSubstance(string words, string name) =>
        Assert.Equal(name, Catalogue.Resolve(words).Content?.Name);

    [Theory]
    [InlineData("bromin", "bromine")]
    [InlineData("sodum hydroxide", "sodium hydroxide")]
    [InlineData("acetome", "acetone")]
    public void Resolve_Misspelt_OffersTheNearest(string words, string nearest)
    {
        var resolution = Catalogue.Resolve(words);
        Assert.Null(resolution.Content);
        Assert.Contains(nearest, resolution.Nearest);
    }

    [Fact]
    public void Resolve_StrengthInPercent_MakesASolutionInWater()
    {
        var content = Catalogue.Resolve("nitric acid 55%").Content!;
        Assert.Equal(55m, content.PercentOf("nitric acid"));
        Assert.Equal(45m, content.WaterPercent);
        Assert.Equal(MatterState.Liquid, content.State);
    }

    // 1 mol/L NaOH is 40.0 g in a litre of 1.04 kg: 3.85 % by mass (CRC Handbook, Concentrative Properties of Aqueous Solutions).
    [Fact]
    public void Resolve_Molar_UsesDensity() =>
        Assert.Equal(3.85, (double)Catalogue.Resolve("sodium hydroxide 1 M").Content!.PercentOf("sodium hydroxide"), 0.06);

    [Fact]
    public void Resolve_AcidWithoutStrength_TakesTheStrongestAndSaysSo()
    {
        var content = Catalogue.Resolve("hydrochloric acid").Content!;
        Assert.Equal(37m, content.PercentOf("hydrochloric acid"));
        Assert.Contains(content.Notes, n => n.Contains("strength not given", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("nitric acid 0%")]
    [InlineData("nitric acid 101%")]
    [InlineData("")]
    public void Resolve_ImpossibleStrength_IsRefused(string words) =>
        Assert.NotNull(Catalogue.Resolve(words).Problem);

    [Theory]
    [InlineData("7726-95-6", true)]
    [InlineData("7726-95-7", false)]
    [InlineData("772695-6", false)]
    [InlineData("7732-18-5", true)]
    public void CasNumber_CheckDigit_IsVerified(string text, bool valid) =>
        Assert.Equal(valid, CasNumber.TryParse(text, out _, out _));

    [Theory]
    [InlineData("Na(OH")]
    [InlineData("NaOH)")]
    [InlineData("naoh")]
    [InlineData("")]
    public void ChemicalFormula_Malformed_IsRefused(string text) =>
        Assert.Throws<FormatException>(() => ChemicalFormula.Parse(text));
}
