using CsCheck;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards.Reactions;

/// <summary>
/// Equivalent for equivalent, with IUPAC abridged atomic weights: HCl 36.46, NaOH 40.00, NaCl 58.44, H2SO4 98.08,
/// Na2SO4 142.04, Na2CO3 105.99, NaHCO3 84.01, KOH 56.11, HNO3 63.01, KNO3 101.10, Ca(OH)2 74.09, CaCl2 110.98 g/mol.
/// </summary>
public sealed class NeutralisationTests
{
    // Moles for 100 g: 10/36.46 = 0.2743 of HCl, 10/40.00 = 0.2500 of NaOH; 0.0243 x 36.46 = 0.885 g HCl, 0.25 x 58.44 = 14.61 g NaCl left.
    // 10/98.08 x 2 = 0.2039 equivalents, 5/40.00 = 0.1250: 0.0789/2 x 98.08 = 3.87 g H2SO4, 0.0625 x 142.04 = 8.88 g Na2SO4.
    // 3/36.46 = 0.0823, 4/74.09 x 2 = 0.1080: 0.0257/2 x 74.09 = 0.952 g Ca(OH)2, 0.0411 x 110.98 = 4.57 g CaCl2.
    // 5/63.01 = 0.0794, 5/56.11 = 0.0891: 0.00976 x 56.11 = 0.548 g KOH, 0.0794 x 101.10 = 8.02 g KNO3.
    [Theory]
    [InlineData("hydrochloric acid=10; sodium hydroxide=10", "hydrochloric acid", 0.885, "sodium chloride", 14.61)]
    [InlineData("sulfuric acid=10; sodium hydroxide=5", "sulfuric acid", 3.87, "sodium sulfate", 8.88)]
    [InlineData("hydrochloric acid=3; calcium hydroxide=4", "calcium hydroxide", 0.952, "calcium chloride", 4.57)]
    [InlineData("nitric acid=5; potassium hydroxide=5", "potassium hydroxide", 0.548, "potassium nitrate", 8.02)]
    public void AcidWithHydroxide_ByEquivalents_LeavesTheExcess(string parts, string left, double excess, string salt, double formed)
    {
        var found = Classify(parts);
        Assert.Equal(excess, PercentLeft(found, left), 0.006);
        Assert.Equal(formed, PercentLeft(found, salt), 0.006);
    }

    // 7.292 g HCl and 8.000 g NaOH are 0.2 mol each: 11.69 g NaCl, nothing of either is left.
    [Fact]
    public void AcidWithHydroxide_EquivalentAmounts_LeavesSaltWaterAlone()
    {
        var found = Classify("hydrochloric acid=7.292; sodium hydroxide=8");
        Assert.Empty(found.Categories);
        Assert.DoesNotContain("hydrochloric", LeftIn(found), StringComparison.Ordinal);
        Assert.Contains("sodium chloride 11.6", LeftIn(found), StringComparison.Ordinal);
    }

    // 10/98.08 = 0.1020 mol H2SO4 use 0.1020 mol = 10.81 g of the carbonate; 4.487 g of CO2 leave, so 100 g become 95.51 g: 4.19/0.9551 = 4.39 %.
    [Fact]
    public void AcidWithCarbonate_LosesTheCarbonDioxide()
    {
        var found = Classify("sulfuric acid=10; sodium carbonate=15");
        Assert.Equal(4.39, PercentLeft(found, "sodium carbonate"), 0.006);
        Assert.Equal(15.16, PercentLeft(found, "sodium sulfate"), 0.006);
        Assert.Contains(found.Notes, n => n.Contains("carbon dioxide", StringComparison.Ordinal) && n.Contains("never close", StringComparison.Ordinal));
    }

    // 5/36.46 = 0.1371 mol use 11.52 g NaHCO3; more is not there: 8/84.01 = 0.0952 mol, 0.0419 x 36.46 = 1.528 g HCl in 100 - 4.19 = 95.81 g: 1.59 %.
    [Fact]
    public void AcidWithHydrogencarbonate_LeavesTheExcessAcid() =>
        Assert.Equal(1.59, PercentLeft(Classify("hydrochloric acid=5; sodium hydrogencarbonate=8"), "hydrochloric acid"), 0.006);

    // 3.646 g HCl and 1.703 g NH3 are 0.1 mol each: 5.349 g NH4Cl.
    [Fact]
    public void AcidWithAmmonia_GivesTheAmmoniumSalt() =>
        Assert.Equal(5.349, PercentLeft(Classify("hydrochloric acid=3.646; ammonia solution=1.703"), "ammonium chloride"), 0.006);

    // 0.25 mol x 55.8 kJ/mol = 14 kJ; 14/0.418 = 33 K in 100 g of water.
    [Fact]
    public void AcidWithHydroxide_Heat_IsSaid() =>
        Assert.Contains(Classify("hydrochloric acid=10; sodium hydroxide=10").Notes, n => n.Contains("about 14 kJ", StringComparison.Ordinal) && n.Contains("33 degrees", StringComparison.Ordinal));

    // 13.2 kJ or so for 100 g of dilute acid warm it by 31 K, which boils it if it is hot; 1 % of each by 3 K.
    [Theory]
    [InlineData("hydrochloric acid=10; sodium hydroxide=10", true)]
    [InlineData("hydrochloric acid=1; sodium hydroxide=1", false)]
    public void AcidWithHydroxide_ThatWouldSpit_IsWarnedOf(string parts, bool spits) =>
        Assert.Equal(spits, Classify(parts).Notes.Any(n => n.Contains("spit or boil", StringComparison.Ordinal)));

    // 0.01 % of either gives off 0.014 kJ, a thirtieth of a kelvin.
    [Fact]
    public void AcidWithHydroxide_InTraces_GivesNoHeatWorthSaying() =>
        Assert.DoesNotContain(Classify("hydrochloric acid=0.01; sodium hydroxide=0.01").Notes, n => n.Contains("gives off", StringComparison.Ordinal));

    [Theory]
    [InlineData("hydrochloric acid=10; sodium hydroxide=10", "hydrochloric acid is left over")]
    [InlineData("sulfuric acid=10; sodium hydroxide=5", "sulfuric acid is left over (counted as the acid itself, not as its acid salt: the stricter side)")]
    [InlineData("sulfuric acid=5; sodium hydroxide=10", "sodium hydroxide is left over")]
    [InlineData("hydrochloric acid=3; calcium hydroxide=4", "calcium hydroxide is left over")]
    [InlineData("sulfuric acid=10; sodium carbonate=15", "sodium carbonate is left over (counted as the carbonate itself: the stricter side)")]
    [InlineData("hydrochloric acid=10; sodium carbonate=1", "hydrochloric acid is left over")]
    [InlineData("iodine=1; sodium thiosulfate pentahydrate=5", "sodium thiosulfate pentahydrate is left over")]
    [InlineData("iodine=5; sodium thiosulfate pentahydrate=1", "iodine is left over")]
    public void Reaction_SaysWhatIsLeftOver(string parts, string says) =>
        Assert.EndsWith($"; {says}", Classify(parts).Notes.Single(n => n.StartsWith("ingredients would react: ", StringComparison.Ordinal)), StringComparison.Ordinal);

    // Charges of 2 and 2 pair one to one, 1 and 2 two to one: BaSO4, CaCl2, Na2SO4.
    [Theory]
    [InlineData("sulfuric acid=1; barium hydroxide octahydrate=1", "barium sulfate")]
    [InlineData("hydrochloric acid=1; calcium hydroxide=1", "calcium chloride")]
    [InlineData("sulfuric acid=1; sodium hydroxide=1", "sodium sulfate")]
    public void Salt_IsNamedByItsIons(string parts, string salt) =>
        Assert.Contains(Classify(parts).Notes, n => n.Contains($"neutralise each other to {salt}", StringComparison.Ordinal));

    // Thiosulfate falls apart in acid before it meets the iodine: common practice.
    [Fact]
    public void IodineWithThiosulfate_InAcid_IsNotComputed() =>
        Assert.DoesNotContain(Classify("iodine=1; sodium thiosulfate pentahydrate=5; hydrochloric acid=5").Notes, n => n.Contains("sodium tetrathionate", StringComparison.Ordinal));

    // Iodometry: 1/253.8 = 0.00394 mol I2 use 0.00788 mol = 1.956 g of Na2S2O3.5H2O; 3.044 g of 5 are left, and 1.181 g NaI form.
    [Fact]
    public void IodineWithThiosulfate_IsUsedUp()
    {
        var found = Classify("iodine=1; sodium thiosulfate pentahydrate=5");
        Assert.Equal(3.044, PercentLeft(found, "sodium thiosulfate pentahydrate"), 0.006);
        Assert.Equal(1.181, PercentLeft(found, "sodium iodide"), 0.006);
        Assert.Contains("sodium tetrathionate", string.Join(' ', found.Unclassified), StringComparison.Ordinal);
    }

    // A salt that the catalogue does not have is unclassified, never harmless.
    [Fact]
    public void Neutralisation_SaltOutsideTheCatalogue_IsUnclassified()
    {
        foreach (var acid in (string[])["hydriodic acid", "hydrobromic acid", "perchloric acid"])
        {
            foreach (var alkali in (string[])["barium hydroxide octahydrate", "lithium hydroxide monohydrate", "calcium hydroxide"])
            {
                var found = Classify($"{acid}=5; {alkali}=5");
                var note = found.Notes.Single(n => n.Contains("neutralise each other to ", StringComparison.Ordinal));
                var salt = note.Split("neutralise each other to ")[1].Split(',')[0];
                Assert.Equal(Given.Catalogue.Find(salt) is null || Given.Facts.ProfileOf(Given.Catalogue[salt]).Knowledge == HazardKnowledge.Unknown, found.Unclassified.Contains(salt));
            }
        }
    }

    [Theory]
    [InlineData("acetic acid=10; sodium hydroxide=5", "neutralise")]
    [InlineData("sodium hypochlorite=5; hydrochloric acid=5", "chlorine")]
    [InlineData("sodium hypochlorite=5; sodium thiosulfate pentahydrate=5", "reduce each other")]
    [InlineData("sodium cyanide=5; acetic acid=5", "hydrogen cyanide")]
    [InlineData("citric acid=5; sodium carbonate=5", "carbon dioxide")]
    public void OtherReactions_AreSaidAndNotJudged(string parts, string word) =>
        Assert.Contains(Classify(parts).Notes, n => n.StartsWith("not judged: ingredients would react", StringComparison.Ordinal) && n.Contains(word, StringComparison.Ordinal));

    // The hydroxide of the bleach is used up first; the danger that is left is said all the same.
    [Fact]
    public void Neutralisation_OfOneIngredient_DoesNotHideAnotherDanger() =>
        Assert.Contains(Classify("sodium hypochlorite=5; sodium hydroxide=5; hydrochloric acid=4").Notes, n => n.Contains("toxic gases", StringComparison.Ordinal));

    [Fact]
    public void Neutralisation_WhereNothingReacts_LeavesThePartsAsTheyAre() =>
        Assert.DoesNotContain(Classify("hydrochloric acid=10; sodium chloride=10").Notes, n => n.Contains("react", StringComparison.Ordinal));

    // Lavoisier: what is left adds up to all of what did not leave as gas; each figure is rounded at the fourth place.
    [Fact]
    public void Neutralisation_AnyAmounts_AddsUp()
    {
        string[] acids = ["hydrochloric acid", "nitric acid", "sulfuric acid", "perchloric acid", "hydrobromic acid"];
        string[] alkalis = ["sodium hydroxide", "potassium hydroxide", "calcium hydroxide", "barium hydroxide octahydrate", "sodium carbonate", "sodium hydrogencarbonate", "ammonia solution"];
        Gen.Select(Gen.Int[0, acids.Length - 1], Gen.Int[0, alkalis.Length - 1], Gen.Int[1, 3000], Gen.Int[1, 3000]).Sample((acid, alkali, a, b) =>
        {
            var figures = Left($"{acids[acid]}={a / 100m}; {alkalis[alkali]}={b / 100m}")["classified is what is left: ".Length..].Split(';')
                .Select(p => decimal.Parse(p.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture));
            Assert.Equal(100.0, (double)figures.Sum(), 0.001);
        }, iter: 300);
    }

    private static Classification Classify(string parts) => Classifier.Classify(Given.Content(parts), Given.Facts, RuleSet.Eu);

    private static double PercentLeft(Classification found, string substance)
    {
        var part = LeftIn(found)["classified is what is left: ".Length..].Split("; ").Single(p => p[..p[..^2].LastIndexOf(' ')] == substance);
        return double.Parse(part.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Left(string parts) => LeftIn(Classify(parts));

    private static string LeftIn(Classification found) => found.Notes.Single(n => n.StartsWith("classified is what is left", StringComparison.Ordinal));
}
