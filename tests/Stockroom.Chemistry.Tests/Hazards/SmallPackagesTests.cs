using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>CLP Article 29(2) and Annex I 1.5.2.1: which statements a package of up to 125 ml may leave off.</summary>
public sealed class SmallPackagesTests
{
    [Theory]
    [InlineData("Flam. Liq. 2", 125, LeaveOff.Statements)]
    [InlineData("Flam. Liq. 2", 126, null)]
    [InlineData("Flam. Liq. 1", 125, null)]
    [InlineData("Ox. Sol. 1", 10, null)]
    [InlineData("Ox. Sol. 2", 10, LeaveOff.Statements)]
    [InlineData("Water-react. 1", 10, LeaveOff.Statements)]
    [InlineData("Acute Tox. 3", 10, null)]
    [InlineData("Skin Corr. 1B", 10, null)]
    [InlineData("Aquatic Chronic 3", 10, LeaveOff.Precautions)]
    [InlineData("Met. Corr. 1", 10, LeaveOff.All)]
    public void Category_InASmallPackage_LeavesOff(string category, int millilitres, LeaveOff? expected)
    {
        Assert.Equal(expected, SmallPackages.For(category, RuleSet.Eu, millilitres));
        Assert.Null(SmallPackages.For(category, RuleSet.Un, millilitres));
        Assert.Null(SmallPackages.For(category, RuleSet.Us, millilitres));
    }

    [Fact]
    public void HarmfulOnes_SuppliedToThePublic_LeaveNothingOff()
    {
        Assert.Equal(LeaveOff.Statements, SmallPackages.For("Acute Tox. 4", RuleSet.Eu, 100));
        Assert.Null(SmallPackages.For("Acute Tox. 4", RuleSet.Eu, 100, toPublic: true));
        Assert.Equal(LeaveOff.Statements, SmallPackages.For("Skin Irrit. 2", RuleSet.Eu, 100, toPublic: true));
    }

    [Fact]
    public void Acetone_InASmallPackage_KeepsPictogramsAndSignalWord_AndNoStatement()
    {
        // Flam. Liq. 2, Eye Irrit. 2, STOT SE 3 (Annex VI 606-001-00-8): all on the list of 1.5.2.1.1; EUH066 is none of Art. 17(1)(f) or (g).
        var (classification, whole) = Label("acetone");
        var reduced = SmallPackages.Reduce(classification, HazardFacts.Default, 100)!.Elements;

        Assert.Equal(["H225", "H319", "H336"], whole.HazardStatements.Select(s => s.Code));
        Assert.Empty(reduced.HazardStatements);
        Assert.Empty(reduced.Precautionary);
        Assert.Equal(whole.Pictograms, reduced.Pictograms);
        Assert.Equal(whole.SignalWord, reduced.SignalWord);
        Assert.Equal(whole.Supplemental, reduced.Supplemental);
    }

    [Fact]
    public void Methanol_InASmallPackage_KeepsTheStatementsOfItsToxicity()
    {
        // Flam. Liq. 2 and STOT SE 1, Acute Tox. 3 (Annex VI 603-001-00-X): only H225 may go.
        var (classification, whole) = Label("methanol");
        var reduced = SmallPackages.Reduce(classification, HazardFacts.Default, 100)!.Elements;

        Assert.Equal(["H225"], whole.HazardStatements.Select(s => s.Code).Except(reduced.HazardStatements.Select(s => s.Code)));
        Assert.NotEmpty(reduced.Precautionary);
        Assert.Equal(whole.Pictograms, reduced.Pictograms);
    }

    [Fact]
    public void NothingOnTheList_ReducesNothing() => Assert.Null(SmallPackages.Reduce(Label("bromine").Classification, HazardFacts.Default, 1000));

    private static (Classification Classification, LabelElements Label) Label(string name)
    {
        var content = SubstanceCatalogue.Default.Resolve(name).Content!;
        var classification = Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu);
        return (classification, LabelElements.Of(classification, HazardFacts.Default));
    }
}
