using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Diffusion through gas, liquid and sheet.</summary>
internal static class DiffusionExamples
{
    private const double MolarVolume = 0.022414;

    public static Func<PublishedExample, Dictionary<string, double>>? Of(string model) => model switch
    {
        "stefan_flux" => e => In.Gives("N_mol_m2_s", Flux(e)),
        "stefan_rate" => e => In.Gives("rate_mol_s", Flux(e) * In.Circle(e["diameter_m"])),
        "stefan_mass_rate" => e => In.Gives("rate_g_h", Flux(e) * e["area_m2"] * e["M_kg_mol"] * 1000 * 3600),
        "stefan_D_from_rate" => e => In.Gives("D_m2_s", StefanTube.DiffusivityFrom(
            new MolarFlux(e["mass_loss_kg"] / e["M_kg_mol"] / e["time_s"] / In.Circle(e["diameter_m"])), e.P("P_Pa"), e.T(), e.L(), e.P("p1_Pa"), e.P("p2_Pa")).SquareMetresPerSecond),
        "stefan_falling_D" => e => In.Gives("D_m2_s", StefanTube.DiffusivityFromFall(
            new Span(e["time_s"]), e.P("P_Pa"), e.T(), new Density(e["rho_kg_m3"]), new MolarMass(e["M_kg_mol"]), e.L("z0_m"), e.L("zt_m"), e.P("p1_Pa"), default).SquareMetresPerSecond),
        "sphere_sublimation_flux" => e => In.Gives("N_mol_m2_s", StefanTube.Sphere(e.D(), e.P("P_Pa"), e.T(), e.L("radius_m"), e.P("p1_Pa"), e.P("p2_Pa")).MolesPerSquareMetreSecond),
        "fick_rate" => e => In.Gives("rate_mol_s", StefanFlux.Equimolar(e.D(), e.T(), e.L(), e.P("p1_Pa"), e.P("p2_Pa")).MolesPerSquareMetreSecond * In.Circle(e["diameter_m"])),
        "fuller_1966" => e => In.Gives("D_m2_s", FullerMethod.Of1966(
            e.T(), PhysicalConstants.StandardAtmosphere * e["P_atm"], e.M("M_A"), new DiffusionVolume(e["sum_v_A"]), e.M("M_B"), new DiffusionVolume(e["sum_v_B"])).SquareMetresPerSecond),
        "fuller_2001" or "fuller" => e => In.Gives("D_m2_s", FullerMethod.Between(
            e.T(), Pressure.FromBar(e.Or("P_bar", 1.01325)), e.M("M_A"), new DiffusionVolume(e["sum_v_A"]), e.M("M_B"), new DiffusionVolume(e["sum_v_B"])).SquareMetresPerSecond),
        "wilke_lee" => e => In.Gives("D_m2_s", WilkeLeeMethod.Between(
            e.T(), Pressure.FromBar(e["P_bar"]), e.M("M_A"), new Length(e["sigma_A"] * 1e-10), new Temperature(e["eps_A"]), e.M("M_B"), new Length(e["sigma_B"] * 1e-10), new Temperature(e["eps_B"])).SquareMetresPerSecond),
        "liquid_flux" => e => In.Gives("N_mol_m2_s", Permeation.Between(e.D(), e.L(), new MolarConcentration(e["c1_mol_m3"]), new MolarConcentration(e["c2_mol_m3"])).MolesPerSquareMetreSecond),
        "wilke_chang" => e => In.Gives("D_m2_s", WilkeChang.InLiquid(
            e.T(), new Viscosity(e["mu_Pa_s"]), e.M("M_B"), new Fraction(e["phi"]), new DiffusionVolume(e["V_A_m3_kmol"])).SquareMetresPerSecond),
        "membrane_flux_DS" => e => In.Gives("N_mol_m2_s", Permeation.Gas(
            Permeation.Of(e.D(), new HenryConstant(e["S_m3STP_m3_atm"] / MolarVolume / 101_325)), e.L(), Atm(e["p1_atm"]), Atm(e["p2_atm"])).MolesPerSquareMetreSecond),
        "membrane_flux_P" => e => In.Gives("N_mol_m2_s", Permeation.Gas(
            new Permeability(e["P_m3STP_m_s_m2_atm"] / MolarVolume / 101_325), e.L(), Atm(e["p1_atm"]), Atm(e["p2_atm"])).MolesPerSquareMetreSecond),
        "membrane_mass_flux" => e => In.Gives("n_kg_m2_s", Permeation.Gas(
            Permeation.Of(e.D(), new HenryConstant(e["S_mol_m3_Pa"])), e.L(), e.P("p1_Pa"), e.P("p2_Pa")).MolesPerSquareMetreSecond * e["M_kg_mol"]),
        "wall_rate_concentrations" => e => In.Gives("rate_mol_s", Permeation.Between(
            e.D(), e.L(), new MolarConcentration(e["c1_mol_m3"]), new MolarConcentration(e["c2_mol_m3"])).MolesPerSquareMetreSecond * (In.Circle(e["diameter_m"]) + (Math.PI * e["diameter_m"] * e["depth_m"]))),
        "bottle_permeation" => e => In.Gives("loss_g", Permeation.Contact(
            LiquidPermeation.FromGramMillimetrePerSquareMetreDay(e["P_g_mm_m2_day"]), new Area(e["area_m2"]), Length.FromMillimetres(e["wall_mm"]), new Fraction(1)).KilogramsPerSecond * 1000 * 86400 * e["days"]),
        "series_permeance" => e => In.Gives("rate_ng_s", Permeation.Through(e.P("pv1_Pa"), e.P("p_int_Pa"), new VapourResistance(e["Rv_Pa_m2_s_ng"] * 1e12)).KilogramsPerSquareMetreSecond * 1e12),
        "overlay_flux" => e => In.Gives("flux_kg_m2_s", CoverResistance.Open(e.D(), new MassConcentration(e["c_sat_kg_m3"]), e.L()).KilogramsPerSquareMetreSecond),
        "film_thickness" => e => In.Gives("L_m", StefanTube.FilmFrom(
            new MolarFlux(e["mass_flux_kg_m2_s"] / e["M_kg_mol"]), e.D(), e.P("P_Pa"), e.T(), e.P("p1_Pa"), e.P("p2_Pa")).Metres),
        "henry_dissolved" => e => In.Gives("x", HenryLaw.MoleFraction(e.P("P_gas_Pa"), e.P("H_Pa")).Value),
        "henry_consistency" => e => In.Gives("H_mol_m3_Pa", HenryLaw.From(new MolarConcentration(e["solubility_g_L"] * 1000 / e["M_g_mol"]), e.P("p_sat_Pa")).MolesPerCubicMetrePascal),
        _ => null,
    };

    private static double Flux(PublishedExample e) =>
        StefanFlux.Through(e.D(), e.P("P_Pa"), e.T(), e.L(), e.P("p1_Pa"), e.P("p2_Pa")).MolesPerSquareMetreSecond;

    private static Pressure Atm(double atmospheres) => PhysicalConstants.StandardAtmosphere * atmospheres;
}
