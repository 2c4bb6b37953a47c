using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Categories as a supplier's sheet writes them. Categories and statements: CLP Annex I and Annex VI Table 1.1; routes by Annex I 3.1.4.</summary>
public sealed class CategoryWordsTests
{
    private static readonly Provenance Sheet = new("a supplier's sheet", "section 2", "2026");

    private static List<string> Read(string words) =>
        [.. new CategoryWords(Given.Facts.Elements).Read(words, Sheet).Select(c => $"{c.Category} {c.Statement}")];

    [Theory]
    [InlineData("Skin Corr. 1B", "Skin Corr. 1B H314")]
    [InlineData("Skin Corr. 1", "Skin Corr. 1 H314")]
    [InlineData("skin corr. 1b", "Skin Corr. 1B H314")]
    [InlineData("Skin Corr. 1B (H314)", "Skin Corr. 1B H314")]
    [InlineData("Skin Corr. 1B: H314", "Skin Corr. 1B H314")]
    [InlineData("Acute Tox. 3 (oral)", "Acute Tox. 3 H301")]
    [InlineData("Acute Tox. 3 (dermal)", "Acute Tox. 3 H311")]
    [InlineData("Acute Tox. 3 inhalation", "Acute Tox. 3 H331")]
    [InlineData("Acute Tox. 3 (Inhaled)", "Acute Tox. 3 H331")]
    [InlineData("Acute Tox. 3 (vapour)", "Acute Tox. 3 H331")]
    [InlineData("Acute Tox. 3 (gas)", "Acute Tox. 3 H331")]
    [InlineData("Acute Tox. 3 (dust)", "Acute Tox. 3 H331")]
    [InlineData("Acute Tox. 3 * H301", "Acute Tox. 3 H301")]
    [InlineData("Repr. 1B H360FD", "Repr. 1B H360FD")]
    [InlineData("EUH066", "EUH EUH066")]
    [InlineData("EUH380", null)]
    public void Read_AsStated_IsTheCategoryWithItsStatement(string words, string? meant)
    {
        if (meant is null)
            Assert.Throws<FormatException>(() => Read(words));
        else
            Assert.Equal([meant], Read(words));
    }

    // GHS 3.3: category 2A of the GHS is CLP's category 2.
    [Theory]
    [InlineData("Eye Irrit. 2A")]
    [InlineData("eye irrit. 2a H319")]
    [InlineData("Eye Irrit. 2")]
    public void Read_EyeIrritationOfTheGhs_IsThatOfClp(string words) => Assert.Equal(["Eye Irrit. 2 H319"], Read(words));

    [Fact]
    public void Read_RouteLeftOpen_IsEveryRoute() => Assert.Equal(["Acute Tox. 3 H301", "Acute Tox. 3 H311", "Acute Tox. 3 H331"], Read("Acute Tox. 3").Order());

    [Fact]
    public void Read_AsStated_SaysWhoStatesIt()
    {
        var read = Assert.Single(new CategoryWords(Given.Facts.Elements).Read("Skin Corr. 1B H314", Sheet));
        Assert.Equal((Sheet, EntryStatus.Given), (read.Provenance, read.Status));
    }

    [Theory]
    [InlineData("Skin Cor. 1B", "'Skin Cor. 1B' is not a category of CLP Annex VI Table 1.1, such as Skin Corr. 1B; nearest: Skin Corr. 1B")]
    [InlineData("Skin Corr. 1Bx", "'Skin Corr. 1Bx' is not a category of CLP Annex VI Table 1.1, such as Skin Corr. 1B; nearest: Skin Corr. 1B")]
    [InlineData("exceedingly unpleasant in every way", "'exceedingly unpleasant in every way' is not a category of CLP Annex VI Table 1.1, such as Skin Corr. 1B")]
    [InlineData("Skin Corr. 1B H301", "'Skin Corr. 1B H301': 'H301' does not go with Skin Corr. 1B; its statements are H314")]
    [InlineData("Skin Corr. 1B (oral)", "'Skin Corr. 1B (oral)': 'oral' does not go with Skin Corr. 1B; its statements are H314")]
    public void Read_OtherWords_AreRefused(string words, string says) =>
        Assert.StartsWith(says, Assert.Throws<FormatException>(() => Read(words)).Message, StringComparison.Ordinal);
}
