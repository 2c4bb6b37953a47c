using Stockroom.Assessment.Holdings;
using Stockroom.Desk;
using Stockroom.Storage;
using Stockroom.Tests.Verbs;
using Stockroom.Views;

namespace Stockroom.Tests.Desk;

/// <summary>What the screens are told of a book that is damaged, or whose verification still runs.</summary>
public sealed class DamagedDeskTests
{
    [Fact]
    public void Today_OfADamagedBook_BeginsWithWhatDoesNotHold()
    {
        using var keeper = Keeper.WithDemo();
        File.WriteAllText(keeper.Journal, File.ReadAllText(keeper.Journal).Replace("diisopropyl ether", "diisopropyl other", StringComparison.Ordinal));
        using var book = BookOnSight.Open(keeper.Book);
        var desk = new StockDesk(book, StockFacts.Default, keeper.Clock);
        Assert.Equal(Attention.Danger, desk.Standing?.Weight);
        Assert.StartsWith("DAMAGED BOOK", desk.Standing?.Text, StringComparison.Ordinal);
        var first = desk.Today().Wrong[0];
        Assert.Equal((Attention.Danger, "The book is damaged"), (first.Weight, first.Title));
        Assert.Contains("of its journal was altered", first.Because, StringComparison.Ordinal);
        Assert.NotEmpty(desk.Holdings());
    }

    [Fact]
    public async Task Desk_OfASoundBook_ShowsTheSameBeforeAndAfterTheWholeIsVerified()
    {
        using var keeper = Keeper.WithDemo();
        using var book = BookOnSight.Open(keeper.Book);
        var desk = new StockDesk(book, StockFacts.Default, keeper.Clock);
        var (before, version) = (desk.Holdings(), desk.Version);
        await desk.Verified;
        Assert.Null(desk.Standing);
        Assert.Equal(version, desk.Version);
        Assert.Equal(before, desk.Holdings());
        Assert.NotEmpty(desk.CardOf(before[0].Id).Sections);
    }
}
