using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>A given pH that contradicts the published limits: the stricter side first, the limits win (CLP Annex I 3.2.3.1.2).</summary>
public sealed class PhContradictionTests
{
    [Theory]
    [InlineData("sodium hydroxide=10", 7.0, "sodium hydroxide 10 % means Skin Corr. 1A")]
    [InlineData("sulfuric acid=20", 4.0, "sulfuric acid 20 % means Skin Corr. 1A")]
    [InlineData("hydrochloric acid=3", 8.0, "hydrochloric acid 3 % means a pH of 2 or less")]
    [InlineData("sulfuric acid=4", 0.5, "pH 0.5 would mean Skin Corr. 1")]
    public void Ph_AgainstTheLimits_IsAContradictionStricterSideFirst(string parts, double ph, string words) =>
        Assert.Contains(Notes(parts, ph), n => n.StartsWith("contradiction: " + words, StringComparison.Ordinal));

    [Theory]
    [InlineData("sodium hydroxide=10", 14.0)]
    [InlineData("sulfuric acid=20", 0.0)]
    [InlineData("acetic acid=10", 2.4)]
    [InlineData("sodium chloride=10", 7.0)]
    [InlineData("hydrochloric acid=10; sodium hydroxide=10", 7.0)]
    public void Ph_ThatAgrees_IsNoContradiction(string parts, double ph) =>
        Assert.DoesNotContain(Notes(parts, ph), n => n.StartsWith("contradiction", StringComparison.Ordinal));

    [Fact]
    public void Ph_MilderThanTheLimits_ChangesNoCategory() =>
        Assert.Equal(
            Given.Solution("sodium hydroxide", 10).Categories,
            Classifier.Classify(Given.Content("sodium hydroxide=10"), Given.Facts, RuleSet.Eu, new Measured { Ph = 7m }).Categories);

    private static IReadOnlyList<string> Notes(string parts, double ph) =>
        Classifier.Classify(Given.Content(parts), Given.Facts, RuleSet.Eu, new Measured { Ph = (decimal)ph }).Notes;
}
