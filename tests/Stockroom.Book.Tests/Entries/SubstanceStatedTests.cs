using Stockroom.Book.Entries;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Book.Tests.Entries;

public sealed class SubstanceStatedTests
{
    private static SubstanceStated Stated(string name, string? hazards, string? cas = null) =>
        new() { HappenedAt = SampleBook.Now, Name = name, State = "liquid", Synonyms = "house solvent", Cas = cas, Hazards = hazards, Source = "supplier's sheet", AsOf = "2026-01" };

    [Fact]
    public void Stated_NewSubstance_IsFoundByItsNames()
    {
        var book = new SampleBook();
        book.Append(Stated("lab thinner no. 4", "Flam. Liq. 2 H225; EUH066"));
        var content = book.State.Catalogue().Resolve("house solvent").Content!;
        Assert.Equal("lab thinner no. 4", content.Name);
        Assert.Equal("the keeper: supplier's sheet", content.Provenance!.Source);
        Assert.Equal(["EUH066", "H225"], book.State.Hazards().StatementsOf(content.Pure!).Order());
    }

    [Fact]
    public void Stated_CorrectionOfTheCatalogue_WinsAndSaysWhose()
    {
        var book = new SampleBook();
        book.Append(Stated("acetone", "none"));
        var profile = book.State.Hazards().ProfileOf(book.State.Catalogue()["acetone"]);
        Assert.Equal(HazardKnowledge.NotClassified, profile.Knowledge);
        Assert.StartsWith("the keeper", profile.NotClassifiedBy!.Source, StringComparison.Ordinal);
        Assert.Equal(HazardKnowledge.Classified, HazardFacts.Default.ProfileOf(book.State.Catalogue()["acetone"]).Knowledge);
    }

    [Theory]
    [InlineData("H225", null, "hazards")]
    [InlineData("Flam. Liq. 9 H225", null, "hazards")]
    [InlineData(null, "67-64-2", "check digit")]
    public void Stated_WrongWords_AreRefused(string? hazards, string? cas, string says)
    {
        var book = new SampleBook();
        Assert.Contains(says, book.Refused(Stated("acetone", hazards, cas)), StringComparison.Ordinal);
        Assert.Empty(book.State.OwnSubstances);
    }
}
