using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Possession;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Catalogue;

public sealed class ElementFactsTests
{
    private const double Year = 31_556_926;
    private static readonly SubstanceCatalogue Catalogue = SubstanceCatalogue.Default;

    [Fact]
    public void Isotopes_All118Elements_AreStableExceptWhereTheyAreRadioactive()
    {
        var symbols = Catalogue.AtomicWeights.Keys.Where(s => s != "D").ToList();
        Assert.Equal(118, symbols.Count);
        Assert.All(symbols, s => Assert.NotNull(ElementIsotopes.Of(s)));

        // Bismuth alone decays and yet counts as not radioactive at the bench.
        Assert.Equal(["Bi"], symbols.Where(s => !ElementIsotopes.Of(s)!.IsStable && !HazardFacts.Default.Radioactive.IsRadioactive(s)));
        Assert.DoesNotContain(symbols, s => ElementIsotopes.Of(s)!.IsStable && HazardFacts.Default.Radioactive.IsRadioactive(s));
    }

    // Half-lives: NUBASE2020, Kondev et al., Chinese Physics C 45, 030001.
    [Theory]
    [InlineData("U", "U-238", 4.463e9)]
    [InlineData("Th", "Th-232", 1.4e10)]
    [InlineData("Ra", "Ra-226", 1600)]
    [InlineData("Am", "Am-243", 7350)]
    public void Isotopes_RadioactiveElement_NamesTheLongestLived(string symbol, string nuclide, double years)
    {
        var isotopes = ElementIsotopes.Of(symbol)!;
        Assert.Equal(nuclide, isotopes.LongestLived);
        Assert.Equal(1.0, isotopes.HalfLife!.Value.Seconds / (years * Year), 0.02);
    }

    // IUPAC, Abridged standard atomic weights, 2021: five figures.
    [Theory]
    [InlineData("He", 4.0026)]
    [InlineData("F", 18.998)]
    [InlineData("Na", 22.990)]
    [InlineData("P", 30.974)]
    [InlineData("Pb", 207.2)]
    [InlineData("Yb", 173.05)]
    [InlineData("U", 238.03)]
    public void AtomicWeights_AreAbridged(string symbol, double weight) => Assert.Equal(weight, Catalogue.AtomicWeights[symbol]);

    [Fact]
    public void Readings_WhereSourcesDiffer_TheOtherIsListedBesideThePreferred()
    {
        var iron = Catalogue["iron"];
        var melting = PropertyFacts.Default.Readings(iron).Where(r => r.Kind == PropertyKind.MeltingPoint).ToList();
        Assert.Equal([true, false], melting.Select(r => r.IsPreferred));
        Assert.Equal(PropertyFacts.Default.MeltingPoint(iron).Value, melting[0].Temperature);
        Assert.NotEqual(melting[0].Provenance.Source, melting[1].Provenance.Source);
        Assert.Contains(PropertyFacts.Default.OtherReadings(iron), r => r.Value == "1808");
    }

    // Regulation (EU) 2019/1148, Annex I: hydrogen peroxide 12 %, nitric acid 3 %, sulfuric acid 15 % by weight.
    [Theory]
    [InlineData("hydrogen peroxide 12%", false)]
    [InlineData("hydrogen peroxide 12.1%", true)]
    [InlineData("nitric acid 3%", false)]
    [InlineData("nitric acid 65%", true)]
    [InlineData("sulfuric acid 15%", false)]
    [InlineData("sulfuric acid 37%", true)]
    public void Possession_RestrictedSubstance_SaysWhetherTheLimitIsPassed(string name, bool above)
    {
        var fact = Assert.Single(PossessionFacts.Of(Catalogue.Resolve(name).Content!), f => f.Kind == "restricted");
        Assert.Equal(above, fact.IsAboveLimit);
        Assert.NotEmpty(fact.Provenance.AsOf);
    }

    [Fact]
    public void Possession_SubstanceThatNoRuleNames_HasNone() => Assert.Empty(PossessionFacts.Of(Catalogue.Resolve("sodium chloride").Content!));

    [Fact]
    public void Possession_EveryRow_NamesItsLaw() =>
        Assert.All(EmbeddedTables.Facts("possession.tsv", "substance", "rule", "kind", "limit_percent", "upper_percent", "note").Rows, r => Assert.NotEmpty(r.Text("rule")));
}
