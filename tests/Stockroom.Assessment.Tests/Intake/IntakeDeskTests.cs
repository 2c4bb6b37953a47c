using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Tests.Intake;

public sealed class IntakeDeskTests
{
    private static readonly IntakeDesk Desk = new(PropertyFacts.Default, WareCatalogue.Default);

    // CRC Handbook of Chemistry and Physics, densities at 20 C: acetone 0.7900, n-hexane 0.6593, bromine 3.1028, mercury 13.546 g/mL.
    [Theory]
    [InlineData("acetone", "20 mL", 15.80)]
    [InlineData("n-hexane", "1 L", 659.3)]
    [InlineData("bromine", "10 mL", 31.03)]
    [InlineData("mercury", "0.5 mL", 6.773)]
    public void Receive_Volume_BooksTheMassByTheDensityAndKeepsItsSource(string content, string amount, double grams)
    {
        var received = Receive(content, amount);
        Assert.InRange((double)received.NetGrams!, grams * 0.99, grams * 1.01);
        Assert.Equal(amount, received.Quantity);
        Assert.NotEqual("", received.Density!.Source);
    }

    // Sulfuric acid 98 % by mass: 1.836 g/mL at 20 C (Perry's Chemical Engineers' Handbook, table of aqueous sulfuric acid).
    [Fact]
    public void Receive_VolumeOfASolution_UsesItsOwnDensity() =>
        Assert.InRange((double)Receive("sulfuric acid 98%", "100 mL").NetGrams!, 181, 186);

    [Theory]
    [InlineData("3.5 g", 3.5)]
    [InlineData("1 kg", 1000)]
    [InlineData("250 mg", 0.25)]
    public void Receive_Mass_IsBookedAsTypedWithNoDensity(string amount, double grams)
    {
        var received = Receive("acetone", amount);
        Assert.Equal((decimal)grams, received.NetGrams);
        Assert.Null(received.Density);
    }

    [Fact]
    public void Receive_NoAmount_StaysUnknown()
    {
        var received = Receive("acetone", null);
        Assert.Null(received.NetGrams);
        Assert.Null(received.Quantity);
    }

    [Fact]
    public void Receive_VolumeOfAnOrphan_IsRefused() => Assert.Contains(
        "the density of an unknown content is not known; weigh it", Refused(new IntakeRequest { Content = "orphan", Seen = "green liquid", Amount = "20 mL", Place = "shelf" }), StringComparison.Ordinal);

    [Fact]
    public void Receive_VolumeOfAMixtureWithoutDensity_AsksForGrams()
    {
        var mixed = new IntakeRequest { Content = "cleaner", Mix = "sodium hydroxide=10%; water=90%", Place = "shelf" };
        Assert.Contains("give the amount in grams", Refused(mixed with { Amount = "100 mL" }), StringComparison.Ordinal);
        Assert.Equal(100m, Desk.Receive(mixed with { Amount = "100 g" }, Id, Moment).NetGrams);
    }

    // A vessel holds a quarter more than its name, to its brim: common practice.
    [Theory]
    [InlineData("124 mL", true)]
    [InlineData("125 mL", true)]
    [InlineData("126 mL", false)]
    [InlineData("98 g", true)]
    [InlineData("100 g", false)]
    public void Receive_LiquidAgainstItsVessel_IsRefusedAboveWhatItHolds(string amount, bool fits)
    {
        var request = new IntakeRequest { Content = "acetone", Amount = amount, Vessel = "glass reagent bottle 100 mL", Place = "shelf" };
        if (fits)
            Assert.Equal(amount, Desk.Receive(request, Id, Moment).Quantity);
        else
            Assert.Contains("more than one glass reagent bottle 100 mL holds", Refused(request), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unknown corrosive liquid", MatterState.Liquid)]
    [InlineData("brown crystals, label gone", MatterState.Solid)]
    [InlineData("a piece of metal", MatterState.Solid)]
    [InlineData("something in a can", MatterState.Unknown)]
    public void Receive_Orphan_KeepsWhatIsSeenAndOnlyAStateThatWasSaid(string seen, MatterState state)
    {
        var received = Desk.Receive(new IntakeRequest { Content = " Orphan ", Seen = seen, FoundBy = "Maren Sole", How = LotOrigin.Bought, Place = "shelf" }, Id, Moment);
        Assert.True(received.IsOrphan);
        Assert.Equal((seen, "Maren Sole", LotOrigin.Found), (received.Seen, received.FoundBy, received.Lot.How));
        Assert.Equal(state, received.State);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void Receive_OrphanOfWhichNothingIsSeen_IsRefused(string? seen) =>
        Assert.Contains("needs what is seen on it", Refused(new IntakeRequest { Content = "orphan", Seen = seen, Place = "shelf" }), StringComparison.Ordinal);

    [Fact]
    public void Receive_OrphanWithAComposition_IsRefused() =>
        Assert.Contains("no known composition", Refused(new IntakeRequest { Content = "orphan", Seen = "liquid", Mix = "water=100%", Place = "shelf" }), StringComparison.Ordinal);

    // An unknown name is never taken for an orphan by itself.
    [Theory]
    [InlineData("acetonne", "nearest: acetone")]
    [InlineData("unknown corrosive liquid", "booked with the word 'orphan'")]
    public void Receive_NameThatIsNotKnown_IsRefused(string content, string words) =>
        Assert.Contains(words, Refused(new IntakeRequest { Content = content, Place = "shelf" }), StringComparison.Ordinal);

    [Theory]
    [InlineData("propanone", "acetone")]
    [InlineData("67-64-1", "acetone")]
    [InlineData("H2SO4", "sulfuric acid")]
    [InlineData("Sulphuric Acid 98 %", "sulfuric acid 98%")]
    public void Receive_SynonymFormulaOrCasNumber_IsBookedUnderItsName(string typed, string name) =>
        Assert.Equal(name, Receive(typed, null).Content);

    [Theory]
    [InlineData("none", null)]
    [InlineData("water", "water")]
    [InlineData("Paraffin Oil", "paraffin oil")]
    [InlineData("sulphuric acid 98%", "sulfuric acid 98%")]
    public void Receive_Cover_IsBookedUnderItsName(string typed, string? name) =>
        Assert.Equal(name, Desk.Receive(new IntakeRequest { Content = "acetone", Cover = typed, Place = "shelf" }, Id, Moment).Cover);

    private static readonly DateTimeOffset Moment = new(2026, 6, 15, 12, 0, 0, TimeSpan.Zero);

    private static ContainerId Id => ContainerId.AtOrAfter(0);

    private static Received Receive(string content, string? amount) => Desk.Receive(new IntakeRequest { Content = content, Amount = amount, Place = "shelf" }, Id, Moment);

    private static string Refused(IntakeRequest request)
    {
        var message = Assert.Throws<BookRefusal>(() => Desk.Receive(request, Id, Moment)).Message;
        Assert.DoesNotContain('\n', message);
        return message;
    }
}
