using System.Collections.Immutable;
using Stockroom.Assessment.Rounds;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;
using TestResult = Stockroom.Book.Containers.TestResult;

namespace Stockroom.Assessment.Tests.Rounds;

public sealed class DueChecksTests
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    // NRC peroxide list B: test 12 months after opening, again every 6 months (Cornell University, Appendix J).
    [Theory]
    [InlineData(364, false)]
    [InlineData(365, true)]
    [InlineData(366, true)]
    public void Ether_AfterOpening_IsDueAtTwelveMonths(int daysOpen, bool due) =>
        Assert.Equal(due, Due(Ether() with { OpenedOn = Today.AddDays(-daysOpen) }).Any(d => d.What == "test for peroxides"));

    [Theory]
    [InlineData(179, false)]
    [InlineData(180, true)]
    public void Ether_Tested_IsDueSixMonthsLater(int daysSinceTest, bool due)
    {
        var tested = Ether() with
        {
            OpenedOn = Today.AddDays(-700),
            LastTested = ImmutableSortedDictionary<string, TestResult>.Empty.Add("peroxides", new TestResult(1, Today.AddDays(-daysSinceTest), "none found")),
        };
        Assert.Equal(due, Due(tested).Any(d => d.What == "test for peroxides"));
    }

    [Fact]
    public void Ether_LookedAtOnly_StaysDue()
    {
        var looked = Ether() with
        {
            OpenedOn = Today.AddDays(-400),
            LastTested = ImmutableSortedDictionary<string, TestResult>.Empty.Add("round", new TestResult(1, Today.AddDays(-1), "in order")),
        };
        Assert.Contains(Due(looked), d => d.What == "test for peroxides");
    }

    [Fact]
    public void HandsOff_IsNeverAskedToBeHandled() =>
        Assert.Empty(Due(Ether() with { OpenedOn = Today.AddDays(-4000), HandsOff = "crystals" }));

    // Trade practice: at least 2 cm of water over white phosphorus.
    [Theory]
    [InlineData(20, false)]
    [InlineData(19.9, true)]
    public void Phosphorus_UnderLessThanTwoCentimetres_IsToppedUp(double depth, bool due)
    {
        var phosphorus = Ether() with
        {
            ContentName = "phosphorus (white)",
            OpenedOn = null,
            ReceivedOn = Today.AddDays(-5),
            Cover = new Cover("water", (decimal)depth, Today.AddDays(-5), Today.AddDays(-2)),
        };
        var found = Due(phosphorus).ToList();
        Assert.Equal(due, found.Any(d => d.What == "top up the water cover"));
        Assert.All(found, d => Assert.NotEqual("", d.Source));
    }

    [Fact]
    public void Rules_NameOnlyWhatTheCatalogueKnows() => Assert.NotEmpty(RoundRules.Default.Rules);

    private static Container Ether() => new()
    {
        Id = ContainerId.AtOrAfter(0),
        ContentName = "diethyl ether",
        PlaceId = "shelf",
        Lot = new Lot { How = LotOrigin.Bought },
        ReceivedOn = Today.AddDays(-200),
    };

    private static IEnumerable<DueItem> Due(Container container) =>
        DueChecks.For(container, SubstanceCatalogue.Default.Resolve(container.ContentName).Content!, RoundRules.Default, Today);
}
