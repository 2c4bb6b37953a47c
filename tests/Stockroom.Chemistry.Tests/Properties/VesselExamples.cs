using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Filling ratios, tubes, liquid-full temperatures and the stoichiometry of a quench.</summary>
internal static class VesselExamples
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;

    public static Func<PublishedExample, Dictionary<string, double>>? Of(string model) => model switch
    {
        "p200_low_pressure" => e => In.Gives("FR_kg_L", FillingRatio.Greatest(new Density(e["rho_50C_kg_m3"])).GramsPerMillilitre),
        "p200_default" => e => In.Gives("FR_kg_L", FillingRatio.Default(new Temperature(e["BP_K"]), Density.FromGramsPerMillilitre(e["d1_kg_L"])).GramsPerMillilitre),
        "en1595_tube" => e => In.Gives("p_bar", GlassTubeStrength.En1595(Length.FromMillimetres(e["OD_mm"]), Length.FromMillimetres(e["wall_mm"]), Pressure.FromBar(e["KS_N_mm2"] * 10)).Bar),
        "en1595_wall" => e => In.Gives("wall_mm", GlassTubeStrength.WallFor(Length.FromMillimetres(e["OD_mm"]), Pressure.FromBar(e["p_bar"]), Pressure.FromBar(e["KS_N_mm2"] * 10)).Millimetres),
        "lame_hoop" => e => new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["hoop_max_MPa"] = GlassTubeStrength.LameHoopStress(Length.FromMillimetres(e["ri_mm"]), Length.FromMillimetres(e["ro_mm"]), new Pressure(e["pi_MPa"] * 1e6)).Pascals / 1e6,
            ["hoop_min_MPa"] = (GlassTubeStrength.LameHoopStress(Length.FromMillimetres(e["ri_mm"]), Length.FromMillimetres(e["ro_mm"]), new Pressure(e["pi_MPa"] * 1e6)).Pascals / 1e6) - e["pi_MPa"],
        },
        "liquid_full_T" => e => In.Gives("T_full_K", Full(e)),
        "quench" => Quench,
        _ => null,
    };

    private static double Full(PublishedExample e)
    {
        var substance = Facts.Catalogue[e.Text("substance")];
        double Rho(double kelvin) => Facts.LiquidDensity(substance, new Temperature(kelvin)).Value?.KilogramsPerCubicMetre ?? 0;
        var wanted = e["fill_fraction_at_T0"] * Rho(e["T0_K"]);
        var (low, high) = (e["T0_K"], Facts.CriticalTemperature(substance).Value!.Value.Kelvin);
        for (var i = 0; i < 60; i++)
            (low, high) = Rho((low + high) / 2) > wanted ? ((low + high) / 2, high) : (low, (low + high) / 2);
        return low;
    }

    private static Dictionary<string, double> Quench(PublishedExample e)
    {
        var moles = e["mass_target_g"] / Of(e, "target") * e["mol_ratio"];
        return new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["mass_agent_g"] = moles * Of(e, "agent"),
            ["CO2_L_25C"] = moles * PhysicalConstants.GasConstant * 298.15 / PhysicalConstants.StandardAtmosphere.Pascals * 1000,
        };
    }

    private static double Of(PublishedExample e, string which) =>
        Facts.Catalogue.ResolveSubstance(e.Text(which))?.MolarMass?.GramsPerMole ?? throw new InvalidOperationException($"{e.Text(which)} is not in the catalogue");
}
