using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>The keeper's own facts lie on top of the catalogue's and win visibly.</summary>
public sealed class OwnFactsTests
{
    private static readonly Provenance Sheet = new("safety data sheet of the supplier", "section 2", "2026-01");

    private static readonly HazardProfile Own = new()
    {
        Name = "sodium chloride",
        Knowledge = HazardKnowledge.Classified,
        Categories = [new AssignedCategory("Eye Irrit. 2", "H319", Sheet)],
    };

    [Fact]
    public void With_OwnProfile_WinsOverTheCatalogueAndSaysSo()
    {
        var facts = With("sodium chloride", Own);
        var found = Classify("sodium chloride", facts);
        Assert.Equal(["Eye Irrit. 2"], Given.Names(found));
        Assert.Contains("keeper's own", found.Reasons.Single().Because, StringComparison.Ordinal);
        Assert.Equal(Sheet, found.Reasons.Single().Source);
        Assert.Contains(found.Notes, n => n.Contains("the catalogue says that no classification applies", StringComparison.Ordinal));
    }

    [Fact]
    public void With_MilderThanTheCatalogue_StillNamesWhatTheCatalogueSays()
    {
        var milder = Own with { Name = "sulfuric acid" };
        var found = Classify("sulfuric acid", With("sulfuric acid", milder));
        Assert.Equal(["Eye Irrit. 2"], Given.Names(found));
        Assert.Contains(found.Notes, n => n.Contains("Skin Corr. 1A H314", StringComparison.Ordinal));
    }

    [Fact]
    public void With_SubstanceOfUnknownHazards_BecomesKnown()
    {
        var found = Classify("astatine", With("astatine", Own));
        Assert.Empty(found.Unclassified);
        Assert.True(found.Has("Eye Irrit. 2"));
    }

    [Fact]
    public void With_LeavesTheFactsUnderneathAsTheyWere()
    {
        _ = With("sodium chloride", Own);
        Assert.Empty(Classify("sodium chloride", Given.Facts).Categories);
        Assert.Equal(Given.Names(Classify("bromine", Given.Facts)), Given.Names(Classify("bromine", With("sodium chloride", Own))));
    }

    [Fact]
    public void With_Mixture_CountsTheOwnProfile()
    {
        var facts = With("sodium chloride", Own);
        Assert.True(Classifier.Classify(Given.Content("sodium chloride=10"), facts, RuleSet.Eu).Has("Eye Irrit. 2"));
        Assert.False(Classifier.Classify(Given.Content("sodium chloride=9.99"), facts, RuleSet.Eu).Has("Eye Irrit. 2"));
    }

    private static HazardFacts With(string name, HazardProfile profile) =>
        Given.Facts.With(new Dictionary<string, HazardProfile>(StringComparer.Ordinal) { [name] = profile });

    private static Classification Classify(string name, HazardFacts facts) => Classifier.Classify(Content.Of(Given.Catalogue[name]), facts, RuleSet.Eu);
}
