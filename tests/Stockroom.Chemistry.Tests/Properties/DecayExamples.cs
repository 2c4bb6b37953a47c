using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>Radioactive decay and the kinetics of decomposition.</summary>
internal static class DecayExamples
{
    private const double Curie = 3.7e10;
    private const double ChlorineMolarMass = 70.906;

    public static Func<PublishedExample, Dictionary<string, double>>? Of(string model) => model switch
    {
        "activity_T2_gas" => e => In.Gives("Ci_per_cm3", e["atoms_per_molecule"] * PhysicalConstants.Avogadro / e["molar_volume_cm3"]
            * RadioactiveDecay.DecayConstant(new Span(e["half_life_y"] * e["year_s"])).PerSecond / Curie),
        "mass_for_activity" => e => In.Gives("mass_g", RadioactiveDecay.MassOf(new Activity(e["A_Bq"]), new Span(e["half_life_s"]), e.M("M_g_mol")).Grams),
        "specific_activity_element" => e => In.Gives("dis_min_g", RadioactiveDecay.SpecificActivity(new Span(e["half_life_y"] * e["year_s"]), e.M()).BecquerelsPerGram * e["abundance_wt_frac"] * 60),
        "specific_activity" => e => In.Gives("Bq_per_g", PropertyFacts.Default.Nuclide(e.Text("nuclide"))!.SpecificActivity.BecquerelsPerGram),
        "decay_fraction" => e => In.Gives("fraction", RadioactiveDecay.Remaining(new Span(e["half_life_s"]), new Span(e["time_s"])).Value),
        "he_from_alpha" => e => In.Gives("He_cm3_STP", RadioactiveDecay.Helium(new Activity(e["A_Bq"]), new Fraction(e["alphas"]), new Span(e["time_s"])).Moles * 22414),
        "first_order" => e => In.Gives("c", ReactionKinetics.FirstOrder(new MolarConcentration(e["c0"]), new RateConstant(e["k_1_s"]), new Span(e["t_s"])).MolesPerCubicMetre),
        "first_order_time" => e => In.Gives("t_min", ReactionKinetics.FirstOrderTime(new RateConstant(e["k_1_s"]), new Fraction(e["fraction_remaining"])).Seconds / 60),
        "second_order" => e => In.Gives("c", ReactionKinetics.SecondOrder(
            MolarConcentration.FromMolesPerLitre(e["c0"]), SecondOrderRateConstant.FromLitresPerMoleSecond(e["k_L_mol_s"]), new Span(e["t_s"])).MolesPerLitre),
        "arrhenius" => e => In.Gives("k2", ReactionKinetics.Arrhenius(new RateConstant(e["k1"]), e.T("T1_K"), new MolarEnergy(e["Ea_J_mol"]), e.T("T2_K")).PerSecond),
        "naocl_second_order" => Hypochlorite,
        "h2o2_o2_volume" => e => In.Gives("volumes", PeroxideDecay.VolumeStrength(MassConcentration.FromGramsPerLitre(e["g_H2O2_per_L"])).Value),
        _ => null,
    };

    private static Dictionary<string, double> Hypochlorite(PublishedExample e)
    {
        var facts = PropertyFacts.Default;
        var law = facts.Decomposition(facts.Catalogue["sodium hypochlorite"])!;
        var start = MolarConcentration.FromMolesPerLitre(e["c0_g_L_avail_Cl2"] / ChlorineMolarMass);
        Assert.Equal("2*c0+0.2", e.Text("I_mol_L"));
        var k = HypochloriteDecay.RateConstant(law.Coefficients, e.T(), HypochloriteDecay.IonicStrength(start, MolarConcentration.FromMolesPerLitre(0.2)));
        return In.Gives("trade_pct", ReactionKinetics.SecondOrder(start, k, Span.FromDays(e["days"])).MolesPerLitre * ChlorineMolarMass / 10);
    }
}
