using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Worked examples that were published; the source stands beside each.</summary>
public sealed class PublishedExampleTests
{
    // UN Sub-Committee of Experts on the GHS, guidance example 3.1(a), ST/SG/AC.10/C.4/2008/23: the lower end of a range is taken.
    [Fact]
    public void AcuteOral_RangeEstimate_IsCategory4()
    {
        var found = Given.Classified(
            Given.Mixture(Given.WithAte("1", 16, ExposureRoute.Oral, 1600), Given.WithAte("2", 4, ExposureRoute.Oral, 200), Given.WithAte("3", 80, ExposureRoute.Oral, 3450)),
            RuleSet.Un);
        Assert.Equal(1880, (double)found.AcuteEstimates[ExposureRoute.Oral], 1.0);
        Assert.Equal(["Acute Tox. 4"], Given.Names(found));
    }

    // The same under CLP, without category 5: 100/(16/1600 + 4/200) = 3333, not classified.
    [Fact]
    public void AcuteOral_RangeEstimateUnderClp_LeavesTheLeastToxicOut()
    {
        var found = Given.Classified(
            Given.Mixture(Given.WithAte("1", 16, ExposureRoute.Oral, 1600), Given.WithAte("2", 4, ExposureRoute.Oral, 200), Given.WithAte("3", 80, ExposureRoute.Oral, 3450)));
        Assert.Equal(3333, (double)found.AcuteEstimates[ExposureRoute.Oral], 1.0);
        Assert.Empty(found.Categories);
    }

    // Guidance example 3.1(c), ST/SG/AC.10/C.4/2008/23 Annex 2: only the first ingredient contributes.
    [Fact]
    public void AcuteOral_NonContributingIngredients_AreLeftOut()
    {
        var found = Given.Classified(
            Given.Mixture(Given.WithAte("1", 4, ExposureRoute.Oral, 1737), Given.WithAte("2", 5, ExposureRoute.Oral, 5001), Given.WithAte("3", 5, ExposureRoute.Oral, 5400), Given.Ingredient("4", 86)),
            RuleSet.Un);
        Assert.Equal(43425, (double)found.AcuteEstimates[ExposureRoute.Oral], 0.5);
        Assert.Empty(found.Categories);
    }

    // Guidance example 3.2/3.3(a), skin: an ingredient of extreme pH counts from 1 % on although the whole is at pH 4.
    [Fact]
    public void Skin_IngredientOfExtremePh_IsCorrosive()
    {
        var acid = Given.Ingredient("1", 4, "Skin Corr. 1 H314");
        acid = acid with { Profile = acid.Profile with { Ph = 1.8m } };
        var mixture = Given.Mixture(acid, Given.Ingredient("2", 5, "Skin Irrit. 2 H315"), Given.Ingredient("3", 5, "Skin Irrit. 3 H316"), Given.Unknown("4", 86)) with { Ph = 4.0m };
        Assert.Equal(["Skin Corr. 1"], Given.Names(Given.Classified(mixture, RuleSet.Un)));
    }

    // New Zealand EPA, User Guide for Thresholds and Classifications (EPA0109, 2012), Table 19.5, mixture Z: 10 x (100 x 0.05 + 1) + 5 = 65.
    [Theory]
    [InlineData(RuleSet.Un, "Aquatic Acute 2")]
    [InlineData(RuleSet.Eu, "")]
    public void AquaticAcute_HighlyToxicPart_IsSummedWithItsFactor(RuleSet rules, string expected)
    {
        var p = Given.Ingredient("P", 0.05m, "Aquatic Acute 1 H400");
        p = p with { Profile = p.Profile with { AcuteFactor = 100 } };
        var q = Given.Ingredient("Q", 1, "Aquatic Acute 1 H400");
        q = q with { Profile = q.Profile with { AcuteFactor = 1 } };
        var found = Given.Classified(Given.Mixture(Given.Ingredient("B", 5, "Aquatic Acute 2 H401"), p, q, Given.Ingredient("T", 40, "Aquatic Acute 3 H402")), rules);
        Assert.Equal(expected, string.Join(", ", Given.Names(found).Where(n => n.StartsWith("Aquatic", StringComparison.Ordinal))));
    }

    // ECHA Helpdesk, mixture classification exercises, seminar of 2012-03-05, examples 1 and 2.
    [Theory]
    [InlineData(0.8)]
    [InlineData(1.8)]
    public void SkinIrritation_LittleThickener_IsNotClassified(double percent) =>
        Assert.Empty(Given.Classified(Given.Mixture(Given.Ingredient("surfactant", 9), Given.Ingredient("thickener", (decimal)percent, "Skin Irrit. 2 H315"))).Categories);

    // ECHA, Guidance on the Application of the CLP Criteria, 3.2.5.3 (recalled, the arithmetic redone): 10 x 2 + 1.8 + 5.4 = 27.2.
    [Fact]
    public void Skin_AdditivityWithLittleAcid_IsIrritant()
    {
        var found = Given.Classified(Given.Mixture(
            Given.Ingredient("A", 1.8m, "Skin Irrit. 2 H315"), Given.Ingredient("B", 0.5m), Given.Ingredient("C", 5.4m, "Skin Irrit. 2 H315"), Given.Ingredient("D", 4), Given.Ingredient("E", 2, "Skin Corr. 1A H314")));
        Assert.Equal("Skin Irrit. 2", Given.Names(found)[0]);
    }

    // Safe Work Australia, GHS classification training, answer sheet, example 1: oral LD50 200 mg/kg and Carc. 2.
    [Fact]
    public void Label_ToxicAndSuspectedCarcinogen_AgreesWithAnswerSheet()
    {
        var substance = new HazardProfile
        {
            Name = "example 1",
            Knowledge = HazardKnowledge.Classified,
            Categories = [Given.Category("Carc. 2 H351")],
            Estimates = [new AcuteToxicityEstimate(ExposureRoute.Oral, 200m, new("answer sheet", "-", "2012"))],
        };
        var found = Given.Classified(new Mixture { State = MatterState.Solid, Ingredients = [new Ingredient(substance, 100m, MatterState.Solid)] });
        var label = LabelElements.Of(found, Given.Facts);
        Assert.Equal(["H301", "H351"], label.HazardStatements.Select(s => s.Code));
        Assert.Equal(["GHS06", "GHS08"], label.Pictograms);
        Assert.Equal("Danger", label.SignalWord);
    }

    // The same, example 3: no exclamation mark although a skin sensitiser is present, and one combined statement.
    [Fact]
    public void Label_SeveralClasses_AgreesWithAnswerSheet()
    {
        var found = Given.Classified(Given.Mixture(Given.Ingredient(
            "example 3", 100, "Carc. 1B H350", "Acute Tox. 3 H331", "Acute Tox. 3 H311", "Acute Tox. 3 H301", "Flam. Liq. 3 H226", "Skin Corr. 1B H314", "Skin Sens. 1 H317")));
        var label = LabelElements.Of(found, Given.Facts);
        Assert.Equal(["GHS02", "GHS05", "GHS06", "GHS08"], label.Pictograms);
        Assert.Equal(["H226", "H301+H311+H331", "H314", "H317", "H350"], label.HazardStatements.Select(s => s.Code).Order());
        Assert.Equal("Danger", label.SignalWord);
    }

    // UN GHS Rev. 4 to 7, 2.2.5 (recalled, the arithmetic redone): 2 % H2, 6 % CH4, 27 % Ar, 65 % He; 3.7/5.7 + 11.1/14.3 = 1.42.
    [Fact]
    public void FlammableGas_WorkedExample_Burns()
    {
        var found = Given.Classified(Gases(("hydrogen", 2), ("methane", 6), ("argon", 27), ("helium", 65)));
        Assert.Equal(1.42, (double)Given.Facts.Gases.FlammableSum([("hydrogen", 2m), ("methane", 6m), ("argon", 27m), ("helium", 65m)])!.Value, 0.01);
        Assert.True(found.Has("Flam. Gas 1"));
        Assert.False(Given.Classified(Gases(("hydrogen", 1), ("nitrogen", 99))).Has("Flam. Gas 1"));
    }

    // UN GHS 2.4.4 (recalled, the arithmetic redone): 9 % O2, 16 % N2O, 75 % N2 has 18.6 % of the power of oxygen.
    [Fact]
    public void OxidisingGas_WorkedExample_IsBelowTheLimit()
    {
        Assert.Equal(18.6m, Given.Facts.Gases.OxidisingPower([("oxygen", 9m), ("nitrous oxide", 16m), ("nitrogen", 75m)]));
        Assert.False(Given.Classified(Gases(("oxygen", 9), ("nitrous oxide", 16), ("nitrogen", 75))).Has("Ox. Gas 1"));
        Assert.True(Given.Classified(Gases(("oxygen", 23.5m), ("nitrogen", 76.5m))).Has("Ox. Gas 1"));
    }

    private static Mixture Gases(params (string Name, decimal Percent)[] gases) => new()
    {
        State = MatterState.Gas,
        Ingredients = [.. gases.Select(g => new Ingredient(Given.Facts.ProfileOf(Given.Catalogue[g.Name]), g.Percent, MatterState.Gas))],
    };
}
