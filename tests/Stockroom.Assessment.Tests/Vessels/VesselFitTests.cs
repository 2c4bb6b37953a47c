using Stockroom.Assessment.Tests.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Tests.Vessels;

/// <summary>Material resistance; the ratings are common practice in the trade.</summary>
public sealed class VesselFitTests
{
    private static ResistanceFinding Resists(string material, string content) => VesselFit.Resists(material, Bench.Content(content), Bench.Facts);

    [Theory]
    [InlineData("borosilicate glass", "bromine", ResistanceRating.Good)]
    [InlineData("PP", "bromine", ResistanceRating.Poor)]
    [InlineData("HDPE", "hydrofluoric acid 40%", ResistanceRating.Good)]
    [InlineData("borosilicate glass", "hydrofluoric acid 40%", ResistanceRating.Poor)]
    [InlineData("soda-lime glass", "hydrofluoric acid 40%", ResistanceRating.Poor)]
    [InlineData("HDPE", "diethyl ether", ResistanceRating.Limited)]
    [InlineData("PP", "nitric acid 68%", ResistanceRating.Poor)]
    [InlineData("aluminium", "mercury", ResistanceRating.Poor)]
    [InlineData("cork", "perchloric acid 70%", ResistanceRating.Poor)]
    [InlineData("HDPE", "hydrochloric acid 37%", ResistanceRating.Good)]
    [InlineData("PTFE", "caesium", ResistanceRating.Poor)]
    [InlineData("LDPE", "iodine", ResistanceRating.Limited)]
    public void Resists_CommonPractice_Agrees(string material, string content, ResistanceRating rating)
    {
        var finding = Resists(material, content);
        Assert.Equal(rating, finding.Rating);
        Assert.NotNull(finding.Source);
    }

    [Fact]
    public void Resists_OtherStrength_TakesTheNearestAndSaysSo()
    {
        var finding = Resists("HDPE", "nitric acid 90%");
        Assert.Equal(ResistanceRating.Poor, finding.Rating);
        Assert.Contains("listed strength of 95 %", finding.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unobtainium", "bromine")]
    [InlineData("PTFE", "methylene blue")]
    public void Resists_NotListed_IsUnknownWithAReason(string material, string content)
    {
        var finding = Resists(material, content);
        Assert.Null(finding.Rating);
        Assert.False(string.IsNullOrWhiteSpace(finding.Because));
    }

    [Fact]
    public void Resists_Orphan_IsNeverGood() =>
        Assert.Null(VesselFit.Resists("borosilicate glass", Content.Orphan("unknown", MatterState.Liquid), Bench.Facts).Rating);

    // Common practice: plastic caps fail with halogens.
    [Fact]
    public void Fit_BromineUnderAPlasticCap_IsPoorAtTheCap()
    {
        var worst = VesselFit.Of(Bench.Of("bromine", 60, "glass reagent bottle 100 mL", "plain polypropylene screw cap"), Bench.Facts)[0];
        Assert.Equal(("liner", "PP", ResistanceRating.Poor), (worst.Part, worst.Finding.Material, worst.Finding.Rating!.Value));
    }

    [Fact]
    public void Fit_BromineBehindGlass_HasNothingPoor() =>
        Assert.DoesNotContain(VesselFit.Of(Bench.BromineUnder("water"), Bench.Facts), w => w.Finding.Rating == ResistanceRating.Poor);

    // The acid cover is judged too: it attacks the polypropylene cap less than bromine does, but it is judged.
    [Fact]
    public void Fit_Cover_IsJudgedBesideTheContent() =>
        Assert.Contains(VesselFit.Of(Bench.BromineUnder("sulfuric acid 98%"), Bench.Facts), w => w.By == "cover" && w.Finding.Rating is not null);

    [Fact]
    public void Fit_LyeBehindAGroundJoint_Seizes() =>
        Assert.Contains(VesselFit.Of(Bench.Of("sodium hydroxide 10%", 100, "ground-joint bottle 250 mL", "ground-glass stopper, dry"), Bench.Facts), w => w.Finding is { Material: "ground joint", Rating: ResistanceRating.Limited });

    [Fact]
    public void Resistance_EveryRatedPair_HasASource()
    {
        foreach (var substance in Bench.Facts.Catalogue.Substances)
        {
            foreach (var material in Bench.Facts.RatedMaterials)
                Assert.All(Bench.Facts.Resistances(substance, material), r => Assert.False(string.IsNullOrWhiteSpace(r.Provenance.Source)));
        }
    }
}
