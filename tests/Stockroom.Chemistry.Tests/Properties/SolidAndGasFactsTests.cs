using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>What is known of frozen liquids, of gases that can be liquid, and of what sublimes.</summary>
public sealed class SolidAndGasFactsTests
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;

    private static Substance Of(string name) => Facts.Catalogue[name];

    private static Temperature C(double celsius) => Temperature.FromCelsius(celsius);

    private static double Pascals(string name, double celsius) => Facts.VapourPressure(Of(name), C(celsius)).Value!.Value.Pascals;

    // Landolt-Boernstein IV/20, sublimation, recomputed by hand; ice: Murphy and Koop 2005, 259.9 Pa at -10 degrees C; osmium tetroxide: 7 mmHg at
    // 20 degrees C (NIOSH Pocket Guide, from memory).
    [Theory]
    [InlineData("acetic acid", 0, 240, 0.01)]
    [InlineData("benzene", -10, 1513, 0.01)]
    [InlineData("cyclohexane", -10, 1949, 0.01)]
    [InlineData("iodine monochloride", 0, 626, 0.01)]
    [InlineData("water", -10, 259.9, 0.005)]
    [InlineData("osmium tetroxide", 20, 933, 0.01)]
    public void VapourPressure_OfASolidThatIsListed_IsTheSolids(string name, double celsius, double pascals, double relative) =>
        Assert.Equal(pascals, Pascals(name, celsius), pascals * relative);

    // Common practice: at the melting point solid and liquid have the same vapour pressure.
    [Theory]
    [InlineData("acetic acid", 0.1)]
    [InlineData("benzene", 0.05)]
    [InlineData("cyclohexane", 0.05)]
    [InlineData("hydrogen cyanide", 0.05)]
    [InlineData("iodine", 0.1)]
    [InlineData("iodine monochloride", 0.1)]
    [InlineData("naphthalene", 0.1)]
    [InlineData("osmium tetroxide", 0.01)]
    [InlineData("water", 0.01)]
    public void VapourPressure_AcrossTheMeltingPoint_HasNoStep(string name, double relative)
    {
        var melting = Facts.MeltingPoint(Of(name)).Value!.Value.Celsius;
        Assert.Equal(1, Pascals(name, melting - 0.2) / Pascals(name, melting + 0.2), relative + 0.04);
    }

    // Ice is 916.7 kg/m3 (CRC Handbook, from memory); of solid mercury and benzene only the liquid's density is in the tables.
    [Fact]
    public void Density_OfAFrozenLiquid_IsNeverTheLiquids()
    {
        Assert.Equal(916.7, Facts.Density(Of("water"), C(-10)).Value!.Value.KilogramsPerCubicMetre, 10.0);
        foreach (var (name, celsius) in new[] { ("mercury", -50.0), ("benzene", 0.0), ("acetic acid", 10.0) })
        {
            var fact = Facts.Density(Of(name), C(celsius));
            Assert.Null(fact.Value);
            Assert.Contains("only of its liquid", fact.Reason, StringComparison.Ordinal);
            Assert.NotNull(Facts.RoomDensity(Of(name), C(celsius)));
        }
    }

    // Poling, Prausnitz, O'Connell: ethylbenzene, measured 13.3 kPa at 347.25 K and 333 kPa at 460 K (from memory).
    [Theory]
    [InlineData(347.25, 13_300)]
    [InlineData(460, 332_800)]
    public void LeeKesler_Ethylbenzene_IsTheMeasured(double kelvin, double pascals) =>
        Assert.Equal(pascals, LeeKesler.Pressure(new(409.36), new(617.15), new(3_609_000), new(kelvin)).Pascals, pascals * 0.03);

    // Vapour pressures at 20 degrees C from memory of gas makers' data sheets: nitrous oxide 50.8 bar, isobutane 3.0 bar, vinyl chloride 3.4 bar,
    // chloromethane 4.9 bar, propylene 10.2 bar.
    [Theory]
    [InlineData("nitrous oxide", 50.8)]
    [InlineData("isobutane", 3.02)]
    [InlineData("vinyl chloride", 3.4)]
    [InlineData("chloromethane", 4.9)]
    [InlineData("propylene", 10.2)]
    public void VapourPressure_OfAGasWithCriticalData_HoldsTheMakers(string name, double bar)
    {
        var fact = Facts.VapourPressure(Of(name), C(20));
        Assert.InRange(bar, fact.Value!.Value.Bar / fact.Spread.Factor, fact.Value.Value.Bar * fact.Spread.Factor);
    }

    // Chlorine at 20 degrees C: the gas weighs 2.95 g/L at one atmosphere, the liquid under its own pressure 1.41 g/mL (CRC Handbook, from memory).
    [Fact]
    public void SubstanceFacts_OfALiquefiableGas_GivesBothDensities()
    {
        var facts = SubstanceFacts.Of(Facts.Catalogue.Resolve("chlorine").Content!, C(20), Facts);
        Assert.Equal(0.00295, facts.Density!.Value.GramsPerMillilitre, 0.0001);
        Assert.Equal(1.41, facts.LiquefiedDensity!.Value.GramsPerMillilitre, 0.01);
        Assert.False(facts.IsDensityOfLiquefied);
        Assert.Null(SubstanceFacts.Of(Facts.Catalogue.Resolve("bromine").Content!, C(20), Facts).LiquefiedDensity);
    }

    // Liquids under their own pressure by reference equations of state: sulfur dioxide 1.381 g/mL at 20 degrees C (Gao 2016), hydrogen sulfide 0.788
    // (Lemmon 2006), hydrogen chloride 0.837 (Thol 2018); above its critical temperature of 9 degrees C ethylene is a gas only.
    [Theory]
    [InlineData("sulfur dioxide", 1.381, true)]
    [InlineData("hydrogen sulfide", 0.788, true)]
    [InlineData("hydrogen chloride", 0.837, true)]
    [InlineData("ethylene", 0.00117, false)]
    public void SubstanceFacts_OfACompoundThatCanBeLiquefied_IsTheLiquidAsItIsKept(string name, double gramsPerMillilitre, bool isLiquefied)
    {
        var facts = SubstanceFacts.Of(Facts.Catalogue.Resolve(name).Content!, C(20), Facts);
        Assert.Equal(1, facts.Density!.Value.GramsPerMillilitre / gramsPerMillilitre, 0.02);
        Assert.Equal(isLiquefied, facts.IsDensityOfLiquefied);
        Assert.InRange(facts.GasDensity!.Value.GramsPerMillilitre, 0.001, 0.003);
    }

    // Arsenic sublimes at 616 degrees C (CRC Handbook) and has no boiling point at one atmosphere.
    [Fact]
    public void SubstanceFacts_OfWhatSublimes_SaysWhere()
    {
        var facts = SubstanceFacts.Of(Facts.Catalogue.Resolve("arsenic").Content!, C(20), Facts);
        Assert.Null(facts.Boiling);
        Assert.Equal(616, facts.Sublimation!.Value.Celsius, 1);
        Assert.Contains("sublimation point", facts.Sources["vapour_pressure_kpa"], StringComparison.Ordinal);
    }

    // Redlich-Kwong has Zc = 1/3; far below the critical point a vapour is nearly ideal: butane at 1 atm and its boiling point, Z = 0.96 (common practice).
    [Fact]
    public void VapourCompressibility_FallsFromNearOneToAThird()
    {
        var (tc, pc) = (new Temperature(425.1), new Pressure(3_796_000));
        Assert.Equal(0.96, RedlichKwong.VapourCompressibility(PhysicalConstants.StandardAtmosphere, new(272.7), tc, pc).Value, 0.01);
        Assert.Equal(1.0 / 3, RedlichKwong.VapourCompressibility(pc, tc, tc, pc).Value, 0.02);
    }

    // 10 CFR 71 Appendix A, Table A-1: natural thorium, 8.1e3 Bq/g (from memory): Th-232 and the Th-228 that no purification parts from it.
    [Fact]
    public void Thorium_Natural_HasTheRegulationsActivity()
    {
        var becquerels = Facts.Nuclides(Of("thorium")).Sum(s => s.Nuclide.DecayConstant.PerSecond * s.MassShare.Value / s.Nuclide.MolarMass.KilogramsPerMole * 1e-3 * 6.02214076e23);
        Assert.Equal(8.1e3, becquerels, 0.2e3);
    }
}
