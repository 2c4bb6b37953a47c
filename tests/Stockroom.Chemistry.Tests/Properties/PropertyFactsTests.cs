using System.Reflection;
using CsCheck;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Properties;

public sealed class PropertyFactsTests
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;
    private static readonly SubstanceCatalogue Catalogue = SubstanceCatalogue.Default;

    private static Temperature C(double celsius) => Temperature.FromCelsius(celsius);

    [Theory]
    [InlineData("closures.tsv")]
    [InlineData("cover-transport.tsv")]
    [InlineData("covers.tsv")]
    [InlineData("decomposition.tsv")]
    [InlineData("diffusivity-in-air.tsv")]
    [InlineData("exposure-limits.tsv")]
    [InlineData("fuller-volumes.tsv")]
    [InlineData("henry.tsv")]
    [InlineData("isotopes.tsv")]
    [InlineData("liquid-density.tsv")]
    [InlineData("material-resistance.tsv")]
    [InlineData("natural-isotopes.tsv")]
    [InlineData("permeability.tsv")]
    [InlineData("properties.tsv")]
    [InlineData("solution-vapour.tsv")]
    [InlineData("vapour-pressure.tsv")]
    [InlineData("vessels.tsv")]
    [InlineData("wall-diffusivity.tsv")]
    public void Table_OfPhysics_IsEmbedded(string name) => Assert.Contains(name, EmbeddedTables.Names);

    [Fact]
    public void Tables_All_ReadStrictly()
    {
        var water = Catalogue["water"];
        Assert.True(Facts.VapourPressure(water, C(20)).IsKnown && Facts.LiquidDensity(water, C(20)).IsKnown && Facts.DiffusivityInAir(water, C(20)).IsKnown);
        Assert.NotEmpty(Facts.Permeability("HDPE", water));
        Assert.NotEmpty(Facts.Resistances(water, "HDPE"));
        Assert.NotEmpty(Facts.ExposureLimits(Catalogue["bromine"]));
        Assert.NotNull(Facts.ThroughCover(Catalogue["bromine"], "water"));
        Assert.NotNull(Facts.Decomposition(Catalogue["hydrogen peroxide"]));
        Assert.NotEmpty(WareCatalogue.Default.Vessels);
        Assert.NotEmpty(WareCatalogue.Default.Closures);
        Assert.NotEmpty(WareCatalogue.Default.Covers);
    }

    // The solid's value: 41 Pa at 25 degrees C (0.31 mmHg, NIOSH 0.3 at 77 degrees F), not the liquid row's 141.
    [Fact]
    public void VapourPressure_SolidIodine_IsTheSolids() =>
        Assert.Equal(41, Facts.VapourPressure(Catalogue["iodine"], C(25)).Value!.Value.Pascals, 1.0);

    [Fact]
    public void VapourPressure_BelowMeltingWithoutASolidRow_LiesBelowTheLiquidRowAndSaysSo()
    {
        var fact = Facts.VapourPressure(Catalogue["phosphorus (white)"], C(20));
        Assert.InRange(fact.Value!.Value.Pascals, 1, 6); // 0.026 mmHg = 3.5 Pa at 20 degrees C, NIOSH
        Assert.Contains("solid below", fact.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("argon")]
    [InlineData("helium")]
    [InlineData("oxygen")]
    [InlineData("hydrogen")]
    public void VapourPressure_AboveTheCriticalTemperature_IsNone(string gas)
    {
        var fact = Facts.VapourPressure(Catalogue[gas], C(20));
        Assert.Null(fact.Value);
        Assert.Contains("critical", fact.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void VapourPressure_NothingKnown_IsAReasonAndNotANumber()
    {
        var fact = Facts.VapourPressure(Catalogue["methylene blue"], C(20));
        Assert.Null(fact.Value);
        Assert.False(string.IsNullOrEmpty(fact.Reason));
    }

    [Fact]
    public void VapourPressure_OutsideTheFit_WidensAndSaysSo()
    {
        var inside = Facts.VapourPressure(Catalogue["bromine"], C(50));
        var outside = Facts.VapourPressure(Catalogue["bromine"], C(150));
        Assert.Null(inside.Note);
        Assert.NotNull(outside.Note);
        Assert.True(outside.Spread.Factor > inside.Spread.Factor * 1.5);
    }

    [Fact]
    public void VapourPressure_Hotter_NeverFalls()
    {
        var all = Catalogue.Substances.ToList();
        Gen.Select(Gen.Int[0, all.Count - 1], Gen.Double[-20, 90], Gen.Double[0.1, 20]).Sample((i, celsius, more) =>
        {
            var (cool, warm) = (Facts.VapourPressure(all[i], C(celsius)), Facts.VapourPressure(all[i], C(celsius + more)));
            return cool.Value is not { } a || warm.Value is not { } b || b.Pascals >= a.Pascals * 0.97;
        }, iter: 20_000);
    }

    [Fact]
    public void LiquidDensity_Hotter_NeverRises()
    {
        // Water alone is denser at 4 degrees C than below.
        var liquids = Catalogue.Substances.Where(s => s.Name is not ("water" or "heavy water") && Facts.LiquidDensity(s, C(30)).IsKnown).ToList();
        Assert.True(liquids.Count > 80);
        Gen.Select(Gen.Int[0, liquids.Count - 1], Gen.Double[0, 90], Gen.Double[0.1, 20]).Sample((i, celsius, more) =>
        {
            var (cool, warm) = (Facts.LiquidDensity(liquids[i], C(celsius)), Facts.LiquidDensity(liquids[i], C(celsius + more)));
            return cool.Value is not { } a || warm.Value is not { } b || b.KilogramsPerCubicMetre <= a.KilogramsPerCubicMetre * 1.005;
        }, iter: 5_000);
    }

    [Fact]
    public void LiquidDensity_OfASolid_IsRefused() =>
        Assert.Contains("solid below", Facts.LiquidDensity(Catalogue["gallium"], C(20)).Reason, StringComparison.Ordinal);

    // Hydrochloric acid 36 %: 14.1 kPa of hydrogen chloride at 20 degrees C (Perry); ammonia 25 %: 48 kPa at 20 degrees C (safety data sheets, common practice).
    [Theory]
    [InlineData("hydrochloric acid 36%", "hydrogen chloride", 14_065, 0.02)]
    [InlineData("ammonia solution 25%", "ammonia", 46_000, 0.12)]
    public void Vapours_OverASolution_AreTheListed(string content, string gas, double pascals, double tolerance)
    {
        var vapour = Vapours.Over(Catalogue.Resolve(content).Content!, C(20), Facts).Single(v => v.Gas.Name == gas);
        Assert.Equal(pascals, vapour.Pressure.Value!.Value.Pascals, pascals * tolerance);
    }

    // Weaker than any listed, at 25 degrees C. Ammonia by Henry's constant of 59 mol/(kg atm), 1 % and 0.1 % (Sander 2015); hydrogen chloride over 1 mol/kg
    // by m2 g2/K, g = 0.809 and K = 2.0E6 mol2/(kg2 atm) (Clegg and Brimblecombe 1988, from memory); water over 1 % acid by Raoult.
    [Theory]
    [InlineData("ammonia solution", "ammonia", 1, 1018, 1.35)]
    [InlineData("ammonia solution", "ammonia", 0.1, 101, 1.35)]
    [InlineData("hydrochloric acid", "hydrogen chloride", 3.52, 0.0325, 2)]
    [InlineData("sulfuric acid", "water", 1, 3157, 1.01)]
    public void SolutionPressure_Weak_GoesTowardsHenryAndPureWater(string solute, string component, double percent, double pascals, double factor)
    {
        var p = Facts.SolutionPressure(Catalogue[solute], Catalogue[component], Fraction.FromPercent(percent), C(25))!;
        Assert.InRange(p.Value!.Value.Pascals, pascals / factor, pascals * factor);
        Assert.Contains("weaker than any listed", p.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ammonia solution", "ammonia", 5.02)]
    [InlineData("hydrochloric acid", "hydrogen chloride", 20)]
    [InlineData("nitric acid", "nitric acid", 50)]
    [InlineData("sulfuric acid", "water", 5)]
    public void SolutionPressure_AtTheWeakestListed_DoesNotJump(string solute, string component, double percent)
    {
        double At(double share) => Facts.SolutionPressure(Catalogue[solute], Catalogue[component], Fraction.FromPercent(share), C(20))!.Value!.Value.Pascals;
        Assert.Equal(1, At(percent - 1e-6) / At(percent), 1e-5);
        if (component != "water")
        {
            var (below, above) = ((At(percent) - At(percent - 0.01)) / 0.01, (At(percent + 0.01) - At(percent)) / 0.01);
            Assert.Equal(1, below / above, solute == "ammonia solution" ? 0.6 : 0.02);
            Assert.True(At(1e-3) < At(percent) / 1000);
        }
    }

    // Lye boils where its water presses one atmosphere: caustic soda 20 % at 108, 30 % at 117, 50 % at 142 degrees C, potash lye 40 % at 124, 50 % at 144
    // (makers' handbooks, from memory); saturated potash lye stands at 8.2 % humidity (Greenspan 1977). Brine of calcium chloride boils at 110 with 30 % and
    // at 120 with 40 %, stands at 29 % humidity when saturated at 25 degrees C, 45.3 % (ASHRAE and makers' handbooks, from memory).
    [Theory]
    [InlineData("sodium hydroxide", 20, 108, 101.3)]
    [InlineData("sodium hydroxide", 30, 117, 101.3)]
    [InlineData("sodium hydroxide", 50, 142, 101.3)]
    [InlineData("potassium hydroxide", 40, 124, 101.3)]
    [InlineData("potassium hydroxide", 50, 144, 101.3)]
    [InlineData("potassium hydroxide", 54.8, 25, 0.26)]
    [InlineData("calcium chloride", 30, 110, 101.3)]
    [InlineData("calcium chloride", 40, 120, 101.3)]
    [InlineData("calcium chloride", 45.3, 25, 0.92)]
    public void LyeAndBrine_BoilWhereTheyShould(string name, double percent, double celsius, double kilopascals) =>
        Assert.Equal(1, Facts.SolutionPressure(Catalogue[name], Catalogue["water"], Fraction.FromPercent(percent), C(celsius))!.Value!.Value.Pascals / 1000 / kilopascals, 0.08);

    // Raoult's law is right for little lye in much water.
    [Theory]
    [InlineData("sodium hydroxide", 40.0)]
    [InlineData("potassium hydroxide", 56.1)]
    public void Lye_Weak_IsNearRaoult(string name, double molarMass)
    {
        var ions = 2 * 10 / molarMass;
        var raoult = 90 / 18.015 / ((90 / 18.015) + ions) * Facts.VapourPressure(Catalogue["water"], C(20)).Value!.Value.Pascals;
        Assert.Equal(1, Facts.SolutionPressure(Catalogue[name], Catalogue["water"], Fraction.FromPercent(10), C(20))!.Value!.Value.Pascals / raoult, 0.05);
    }

    [Theory]
    [InlineData("bromine", 0.1)]
    [InlineData("chlorine", 0.5)]
    [InlineData("mercury", null)]
    public void StrictestLimit_IsTheLowestForDailyWork(string name, double? ppm)
    {
        var limit = Facts.StrictestLimit(Catalogue[name])!;
        Assert.NotEqual("immediately dangerous", limit.Kind);
        Assert.NotNull(limit.Concentration);
        if (ppm is { } p)
            Assert.Equal(p, limit.Share!.Value.PartsPerMillion, 0.01);
        Assert.All(Facts.ExposureLimits(Catalogue[name]).Where(l => l.IsForDailyWork), l => Assert.True(l.Concentration!.Value >= limit.Concentration!.Value));
    }

    [Fact]
    public void SubstanceFacts_Bromine_CarriesASourceForEveryField()
    {
        var facts = SubstanceFacts.Of(Catalogue.Resolve("bromine").Content!, C(20), Facts);
        Assert.Equal(MatterState.Liquid, facts.State);
        Assert.Equal(-7.2, facts.Melting!.Value.Celsius, 0.1);
        Assert.Equal(58.8, facts.Boiling!.Value.Celsius, 0.1);
        Assert.Equal(3.12, facts.Density!.Value.GramsPerMillilitre, 0.02);
        Assert.Equal(23.3, facts.VapourPressure!.Value.Kilopascals, 0.5);
        foreach (var field in new[] { "formula", "cas", "melting_c", "boiling_c", "density_g_ml", "vapour_pressure_kpa", "diffusivity_in_air_cm2_s", "exposure_limit" })
            Assert.False(string.IsNullOrWhiteSpace(facts.Sources[field]), field);
    }

    [Fact]
    public void SubstanceFacts_EverySubstanceAndPreparation_IsAnsweredWithoutANumberMadeUp()
    {
        foreach (var content in Catalogue.Substances.Select(Content.Of).Concat(Catalogue.Preparations))
        {
            var facts = SubstanceFacts.Of(content, C(25), Facts);
            Assert.True(facts.VapourPressure is null || (double.IsFinite(facts.VapourPressure.Value.Pascals) && facts.VapourPressure.Value.Pascals >= 0), content.Name);
            Assert.True(facts.VapourPressure is not null || facts.Reasons.ContainsKey("vapour_pressure_kpa"), content.Name);
            Assert.True(facts.Density is null || facts.Density.Value.KilogramsPerCubicMetre is > 0 and < 45_000, content.Name);
        }
    }

    [Fact]
    public void Elements_All118_HaveFacts()
    {
        var elements = Catalogue.Substances.Where(s => s.Element is not null).Select(s => s.Element).Distinct().ToList();
        Assert.Equal(118, elements.Count);
        foreach (var s in Catalogue.Substances.Where(s => s.Element is not null && s.Name != "activated carbon"))
            Assert.True(Facts.Density(s, C(25)).IsKnown, s.Name);
    }

    // Common practice: a boiling point is where the vapour pressure is one atmosphere. Those of CRC against the fits.
    [Fact]
    public void VapourPressure_AtTheBoilingPoint_IsOneAtmosphere()
    {
        var off = new List<string>();
        var checkedCount = 0;
        foreach (var s in Catalogue.Substances)
        {
            if (Facts.BoilingPoint(s).Value is not { } boiling || Facts.VapourPressure(s, boiling) is not { Value: { } p, Note: null })
                continue;
            checkedCount++;
            if (Math.Abs((p.Pascals / 101_325) - 1) > 0.06)
                off.Add($"{s.Name}: {p.Bar:0.00} bar at {boiling.Celsius:0.0} degrees C");
        }

        Assert.True(checkedCount > 60);
        Assert.True(off.Count <= checkedCount * 0.06, string.Join(Environment.NewLine, off));
    }

    [Fact]
    public void PublicSignatures_CarryNoBareDouble()
    {
        var bare = typeof(PropertyFacts).Assembly.GetExportedTypes()
            .Where(t => t.Namespace == "Stockroom.Chemistry.Properties")
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => m switch
            {
                MethodBase b => b.GetParameters().Any(p => IsBare(p.ParameterType)) || (b is MethodInfo i && IsBare(i.ReturnType)),
                PropertyInfo p => IsBare(p.PropertyType),
                FieldInfo f => IsBare(f.FieldType),
                _ => false,
            })
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}");
        Assert.Equal([], bare);
    }

    private static bool IsBare(Type t) => t == typeof(double) || t == typeof(float) || t == typeof(double?);

    // A limit in parts per million is one of vapour, whatever the substance is at rest: 2 ppm of I2 (253.81 g/mol) over 24.465 L/mol are 20.7 mg/m3.
    [Fact]
    public void ExposureLimit_OfASolidInPartsPerMillion_IsAVapour()
    {
        var danger = Facts.ExposureLimits(Catalogue.Resolve("iodine").Content!.Pure!).Single(l => !l.IsForDailyWork);
        Assert.Equal(20.75, danger.Concentration!.Value.KilogramsPerCubicMetre * 1e6, 0.05);
    }

    [Theory]
    [InlineData("HDPE bottle 1 L", "HDPE bottle 1000 mL")]
    [InlineData("hdpe bottle 0,5l", "HDPE bottle 500 mL")]
    [InlineData("Glass vial 20ml", "glass vial 20 mL")]
    [InlineData("HDPE bottle 1.001 L", null)]
    [InlineData("HDPE bottle L", null)]
    public void Vessel_NamedByLitres_IsFound(string typed, string? name) =>
        Assert.Equal(name, WareCatalogue.Default.FindVessel(typed)?.Name);
}
