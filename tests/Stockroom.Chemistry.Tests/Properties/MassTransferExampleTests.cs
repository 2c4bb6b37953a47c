using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Textbook examples of diffusion, permeation, pools and room air; the source stands beside each.</summary>
public sealed class MassTransferExampleTests
{
    private static readonly Pressure Atmosphere = new(101_300);

    private static void Near(double expected, double actual, double relative) => Assert.Equal(expected, actual, Math.Abs(expected) * relative);

    // Dutta 2.4: oxygen into an absorbing liquid, 15 mm tube; Anantharaman and Begum 2.15: benzene tank of 10 m.
    [Theory]
    [InlineData(2.1e-5, 0.05, 21_273, 0.015, 7.151e-7, 0.005)]
    [InlineData(5.555555555555556e-6, 0.01, 20_000, 10, 0.3922, 0.002)]
    public void Stefan_RateOverADiameter_ComesOut(double d, double path, double inside, double diameter, double expected, double tolerance)
    {
        var flux = StefanFlux.Through(new Diffusivity(d), Atmosphere, new Temperature(298), new Length(path), new Pressure(inside), default);
        Near(expected, flux.MolesPerSquareMetreSecond * Math.PI / 4 * diameter * diameter, tolerance);
    }

    // Cengel 14.9: water, 1.23 g in 15 days.
    [Fact]
    public void StefanTube_MeasuredLoss_GivesTheCoefficient()
    {
        var flux = new MolarFlux(0.00123 / 0.018 / 1_296_000 / (Math.PI / 4 * 0.03 * 0.03));
        Near(3.06e-5, StefanTube.DiffusivityFrom(flux, new Pressure(83_500), new Temperature(293), new Length(0.4), new Pressure(2340), default).SquareMetresPerSecond, 0.005);
    }

    // Anantharaman and Begum 2.19: toluene, level from 2 to 8 cm in 275 h.
    [Fact]
    public void StefanTube_FallingLevel_GivesTheCoefficientAndTheTime()
    {
        var (t, rho, m) = (new Temperature(312.4), new Density(850), MolarMass.FromGramsPerMole(92));
        var d = StefanTube.DiffusivityFromFall(new Span(990_000), Atmosphere, t, rho, m, new Length(0.02), new Length(0.08), new Pressure(7640), default);
        Near(9.154e-6, d.SquareMetresPerSecond, 0.01);
        Near(990_000, StefanTube.TimeToFall(d, Atmosphere, t, rho, m, new Length(0.02), new Length(0.08), new Pressure(7640), default).Seconds, 1e-9);
    }

    // Geankoplis 6.2-4: naphthalene sphere.
    [Fact]
    public void Sphere_Naphthalene_ComesOut() =>
        Near(9.687e-5, StefanTube.Sphere(new Diffusivity(6.92e-6), new Pressure(101_325), new Temperature(318), new Length(0.002), new Pressure(73.994), default).MolesPerSquareMetreSecond, 0.003);

    // Dutta 2.5: alcohol drying off a floor, 50 g/(m2 min).
    [Fact]
    public void Film_FromDryingTime_ComesOut()
    {
        var flux = new MolarFlux(0.0008333333333333334 / 0.06);
        Near(0.00193, StefanTube.FilmFrom(flux, new Diffusivity(9.95e-6), Atmosphere, new Temperature(300), new Pressure(6500), default).Metres, 0.01);
    }

    // Geankoplis 6.2-5 (volumes of 1966); Benitez 1.6.
    [Fact]
    public void Diffusivity_OlderFullerAndWilkeLee_ComeOut()
    {
        Near(9.025e-6, FullerMethod.Of1966(new Temperature(298.9), new Pressure(101_325), MolarMass.FromGramsPerMole(74.1), new DiffusionVolume(91.28), MolarMass.FromGramsPerMole(29), new DiffusionVolume(20.1)).SquareMetresPerSecond, 0.002);
        var wilkeLee = WilkeLeeMethod.Between(
            new Temperature(273), Pressure.FromBar(1), MolarMass.FromGramsPerMole(76), new Length(4.483e-10), new Temperature(467), MolarMass.FromGramsPerMole(29), new Length(3.62e-10), new Temperature(97));
        Near(9.52e-6, wilkeLee.SquareMetresPerSecond, 0.003);
    }

    // Geankoplis 6.3-2 and 6.4-2; Incropera 14.3.
    [Fact]
    public void LiquidAndSheet_TextbookExamples_ComeOut()
    {
        Near(1.277e-9, WilkeChang.InLiquid(new Temperature(298), new Viscosity(0.8937e-3), MolarMass.FromGramsPerMole(18.02), new Fraction(2.6), new DiffusionVolume(0.074)).SquareMetresPerSecond, 0.003);
        Near(3.635e-6, Permeation.Between(new Diffusivity(7.27e-10), new Length(0.04), new MolarConcentration(200), default).MolesPerSquareMetreSecond, 0.002);
        var wall = Math.PI * 0.005 * 0.003;
        var cup = Permeation.Between(new Diffusivity(6e-14), new Length(5e-5), new MolarConcentration(4.5), new MolarConcentration(0.5)).MolesPerSquareMetreSecond * (wall + (Math.PI / 4 * 0.005 * 0.005));
        Near(3.2e-13, cup, 0.003);
    }

    // Crank, section 4.3: 1 mm and 1e-12 m2/s: 46 hours.
    [Fact]
    public void Permeation_TimeLag_IsASixthOfTheSquareOverTheCoefficient() => Near(166_667, Permeation.TimeLag(new Diffusivity(1e-12), new Length(1e-3)).Seconds, 1e-4);

    // US EPA, Offsite Consequence Analysis: appendix B liquid factors, and 20,000 lb of acrylonitrile undiked.
    [Theory]
    [InlineData(53.06, 108, 0.018)]
    [InlineData(159.81, 212, 0.073)]
    [InlineData(119.38, 196, 0.055)]
    [InlineData(189.69, 12.4, 0.0048)]
    public void Pool_LiquidFactor_ComesOut(double molarMass, double millimetres, double factor) =>
        Near(factor, PoolEvaporation.LiquidFactor(MolarMass.FromGramsPerMole(molarMass), Pressure.FromMillimetresMercury(millimetres), new Temperature(298)).Value, 0.03);

    [Fact]
    public void Pool_Undiked_ComesOut() =>
        Near(307, PoolEvaporation.Undiked(new Mass(20_000 * 0.45359237), new Fraction(0.018), new Fraction(0.61), new Fraction(1.4)).KilogramsPerSecond * 60 / 0.45359237, 0.005);

    // Crowl and Louvar, open tank of toluene: 0.948 ft/min, 0.162 lb/min, 230 ppm in 3000 ft3/min.
    [Fact]
    public void Pool_OpenTankOfToluene_ComesOut()
    {
        var (m, t, p) = (MolarMass.FromGramsPerMole(92), new Temperature(537 / 1.8), Pressure.FromMillimetresMercury(28.2));
        var k = PoolEvaporation.StillDraught(m);
        Near(0.948, k.MetresPerSecond / 0.3048 * 60, 0.01);
        var area = Math.PI / 4 * Math.Pow(5 * 0.3048, 2);
        var rate = new MassRate(PoolEvaporation.Flux(k, p, m, t).KilogramsPerSquareMetreSecond * area);
        Near(0.162, rate.KilogramsPerSecond * 60 / 0.45359237, 0.01);
        var fresh = new VolumeRate(3000 * Math.Pow(0.3048, 3) / 60);
        Near(230, WellMixedAir.ShareByVolume(rate, m, fresh, new Fraction(1), t, Pressure.FromMillimetresMercury(760)).PartsPerMillion, 0.01);
    }

    // Kawamura and Mackay 1987 by hand: 0.0048 x 0.3^(7/9) x 0.5^(-1/9) x 1.8^(-2/3); EPA CEB 1991 by hand.
    [Fact]
    public void Pool_WindAndOpenSurface_ComeOut()
    {
        var k = PoolEvaporation.ByWind(new Speed(0.3), new Length(0.5), new Fraction(1.8));
        Near(0.00137348, k.MetresPerSecond, 0.002);
        Near(1.51092e-4, PoolEvaporation.Flux(k, new Pressure(2910), MolarMass.FromGramsPerMole(92.14), new Temperature(293.15)).KilogramsPerSquareMetreSecond, 0.002);
        var open = PoolEvaporation.OpenSurface(
            MolarMass.FromGramsPerMole(92.14), Pressure.FromMillimetresMercury(28.4), new Speed(100 * 0.3048 / 60), Area.FromSquareCentimetres(1000), new Temperature(298), new Length(0.357), new Pressure(101_325));
        Near(0.059378, open.KilogramsPerSecond * 1000, 0.002);
    }

    // AIHA well-mixed room; 29 CFR 1910.1000(d): eight-hour mean and mixture of three.
    [Fact]
    public void Air_SteadyMeanAndMixture_ComeOut()
    {
        var steady = WellMixedAir.Steady(new MassRate(10e-6 / 3600), new VolumeRate(50.0 / 3600), new Fraction(1));
        Near(0.2, steady.MilligramsPerCubicMetre, 0.001);
        var hours = new[] { (2.0, 150.0), (2, 75), (4, 50) }.Select(x => (new Span(x.Item1 * 3600), Fraction.FromPartsPerMillion(x.Item2)));
        Near(81.25, WellMixedAir.EightHourMean(hours).PartsPerMillion, 1e-6);
        var three = new[] { (500.0, 1000.0), (45, 200), (40, 200) }.Select(x => (Fraction.FromPartsPerMillion(x.Item1), Fraction.FromPartsPerMillion(x.Item2)));
        Near(0.925, WellMixedAir.SumOfShares(three).Value, 1e-9);
    }

    [Fact]
    public void Air_AfterALongTime_IsTheSteadyState()
    {
        var (g, q, v) = (new MassRate(1e-8), new VolumeRate(0.01), new Volume(30));
        Near(WellMixedAir.Steady(g, q, new Fraction(0.3)).KilogramsPerCubicMetre, WellMixedAir.After(default, g, q, new Fraction(0.3), v, Span.FromDays(30)).KilogramsPerCubicMetre, 1e-9);
        Assert.Equal(0, WellMixedAir.After(default, g, q, new Fraction(0.3), v, default).KilogramsPerCubicMetre);
    }

    // Cengel 14.6: moisture through two resistances in series.
    [Fact]
    public void Permeation_ThroughAResistance_ComesOut() =>
        Near(94355e-12, Permeation.Through(new Pressure(1404), new Pressure(234), new VapourResistance(0.0124e12)).KilogramsPerSquareMetreSecond, 0.002);

    // Cengel 14.3: air in water.
    [Fact]
    public void Henry_AirInWater_ComesOut() => Near(1.452e-5, HenryLaw.MoleFraction(new Pressure(90_040), new Pressure(6.2e9)).Value, 0.002);
}
