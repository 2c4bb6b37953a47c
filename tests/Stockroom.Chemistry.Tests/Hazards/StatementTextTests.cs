using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>The wording belongs to the edition. The texts here are those of CLP Annexes III and IV, GHS Annex 3 and 29 CFR 1910.1200 Appendix C.</summary>
public sealed class StatementTextTests
{
    [Theory]
    [InlineData("H225", RuleSet.Eu, "Highly flammable liquid and vapour")]
    [InlineData("H225", RuleSet.Us, "Highly flammable liquid and vapor")]
    [InlineData("H229", RuleSet.Eu, "Pressurised container: May burst if heated")]
    [InlineData("H229", RuleSet.Un, "Pressurized container: may burst if heated")]
    [InlineData("H261", RuleSet.Eu, "In contact with water releases flammable gases")]
    [InlineData("H261", RuleSet.Un, "In contact with water releases flammable gas")]
    [InlineData("H271", RuleSet.Eu, "May cause fire or explosion; strong oxidiser")]
    [InlineData("H271", RuleSet.Un, "May cause fire or explosion; strong oxidizer")]
    [InlineData("H314", RuleSet.Eu, "Causes severe skin burns and eye damage")]
    [InlineData("H301+H311+H331", RuleSet.Eu, "Toxic if swallowed, in contact with skin or if inhaled")]
    [InlineData("EUH208", RuleSet.Eu, "Contains <name of sensitising substance>. May produce an allergic reaction.")]
    [InlineData("P210", RuleSet.Eu, "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.")]
    [InlineData("P280", RuleSet.Un, "Wear protective gloves/protective clothing/eye protection/face protection/hearing protection/…")]
    public void Published_ByEdition_IsTheWordingOfTheEdition(string code, RuleSet rules, string text) =>
        Assert.Equal(text, Given.Facts.Texts.Published(code, rules));

    [Theory]
    [InlineData("H372", "lungs, inhalation", "Causes damage to organs (lungs, inhalation) through prolonged or repeated exposure")]
    [InlineData("H372", null, "Causes damage to organs through prolonged or repeated exposure")]
    [InlineData("H370", "nervous system", "Causes damage to organs (nervous system)")]
    [InlineData("H350", null, "May cause cancer")]
    [InlineData("H360", null, "May damage fertility or the unborn child")]
    public void Printed_WhatMayBeStated_IsFilledOrLeftOut(string code, string? organs, string text) =>
        Assert.Equal(text, Given.Facts.Texts.Printed(code, RuleSet.Eu, organs));

    [Fact]
    public void Printed_EveryStatement_HasNoPlaceholderLeft() =>
        Assert.All(Given.Facts.Texts.All.Keys.Where(k => k.Code != "EUH208"), k => Assert.DoesNotContain('<', Given.Facts.Texts.Printed(k.Code, k.Edition)));

    // Every wording against the reference list, letter by letter.
    [Fact]
    public void Published_EveryStatement_AgreesWithTheReferenceList()
    {
        var folder = ReferenceTable.FolderOrSkip();
        var compared = 0;
        foreach (var file in (string[])["statements_h.tsv", "statements_euh.tsv", "statements_p.tsv"])
        {
            foreach (var row in ReferenceTable.Rows(Path.Combine(folder, file)))
            {
                foreach (var (edition, column) in ((RuleSet, string)[])[(RuleSet.Eu, "text_clp_2025"), (RuleSet.Un, "text_ghs_rev9_10")])
                {
                    if (!Given.Facts.Texts.All.TryGetValue((row["code"], edition), out var ours))
                        continue;
                    compared++;
                    Assert.Equal(row[column].Split(" (later revision")[0], ours);
                }
            }
        }

        Assert.True(compared > 480, $"only {compared} wordings were compared");
    }
}
