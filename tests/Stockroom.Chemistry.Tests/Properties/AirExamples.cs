using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Pools, open surfaces and the air of rooms.</summary>
internal static class AirExamples
{
    private const double Pound = 0.45359237;
    private const double Foot = 0.3048;

    public static Func<PublishedExample, Dictionary<string, double>>? Of(string model) => model switch
    {
        "rmp_LFA" => e => In.Gives("LFA", PoolEvaporation.LiquidFactor(e.M(), Pressure.FromMillimetresMercury(e["VP_mmHg"]), e.T()).Value),
        "rmp_QR" => e => In.Gives("QR_lb_min", PoolEvaporation.Undiked(
            new Mass(e["QS_lb"] * Pound), new Fraction(e["LFA"]), new Fraction(e["DF"]), new Fraction(e["U_factor"])).KilogramsPerSecond * 60 / Pound),
        "crowl_K_evap" => OpenTank,
        "mackay_matsugu" => Wind,
        "ceb_open_surface" => e => In.Gives("G_g_s", PoolEvaporation.OpenSurface(
            e.M(), Pressure.FromMillimetresMercury(e["VP_mmHg"]), new Speed(e["v_ft_min"] * Foot / 60), Area.FromSquareCentimetres(e["area_cm2"]), e.T(), new Length(e["length_cm"] / 100), PhysicalConstants.StandardAtmosphere * e["P_atm"]).KilogramsPerSecond * 1000),
        "box_steady" => e => In.Gives("C_mg_m3", WellMixedAir.Steady(new MassRate(e["G_mg_h"] * 1e-6 / 3600), new VolumeRate(e["Q_m3_h"] / 3600), new Fraction(e["k"])).MilligramsPerCubicMetre),
        "box_transient" => e => In.Gives("C_mg_m3", WellMixedAir.After(
            default, new MassRate(e["G_mg_h"] * 1e-6 / 3600), new VolumeRate(e["Q_m3_h"] / 3600), new Fraction(e.Or("k", 1)), new Volume(e["V_m3"]), new Span(e["t_h"] * 3600)).MilligramsPerCubicMetre),
        "saturation_concentration" => e => In.Gives("C_mg_m3", GasLaw.Concentration(e.P("p_Pa"), new MolarMass(e["M_kg_mol"]), e.T()).MilligramsPerCubicMetre),
        "ppm_to_mgm3" => e => In.Gives("mg_m3", GasLaw.AtReference(Fraction.FromPartsPerMillion(e["ppm"]), e.M("M_g_mol")).MilligramsPerCubicMetre),
        "twa8" => e => In.Gives("TWA_ppm", WellMixedAir.EightHourMean(Pairs(e, "segments").Select(s => (new Span(s.First * 3600), Fraction.FromPartsPerMillion(s.Second)))).PartsPerMillion),
        _ => null,
    };

    private static IEnumerable<(double First, double Second)> Pairs(PublishedExample e, string name) =>
        e.Inputs.GetProperty(name).EnumerateArray().Select(s => (s[0].GetDouble(), s[1].GetDouble()));

    private static Dictionary<string, double> OpenTank(PublishedExample e)
    {
        var t = new Temperature(e["T_R"] / 1.8);
        var k = PoolEvaporation.StillDraught(e.M());
        var rate = new MassRate(PoolEvaporation.Flux(k, Pressure.FromMillimetresMercury(e["Psat_mmHg"]), e.M(), t).KilogramsPerSquareMetreSecond * In.Circle(e["diameter_ft"] * Foot));
        var fresh = new VolumeRate(e["Qv_ft3_min"] * Math.Pow(Foot, 3) / 60);
        return new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["K_ft_min"] = k.MetresPerSecond / Foot * 60,
            ["Qm_lb_min"] = rate.KilogramsPerSecond * 60 / Pound,
            ["C_ppm_k1"] = WellMixedAir.ShareByVolume(rate, e.M(), fresh, new Fraction(1), t, Pressure.FromMillimetresMercury(e["P_mmHg"])).PartsPerMillion,
        };
    }

    private static Dictionary<string, double> Wind(PublishedExample e)
    {
        var k = PoolEvaporation.ByWind(new Speed(e["U_m_s"]), new Length(e["diameter_m"]), new Fraction(e["Sc"]));
        return new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["k_m_s"] = k.MetresPerSecond,
            ["flux_kg_m2_s"] = PoolEvaporation.Flux(k, e.P("p_Pa"), new MolarMass(e["M_kg_mol"]), e.T()).KilogramsPerSquareMetreSecond,
        };
    }
}
