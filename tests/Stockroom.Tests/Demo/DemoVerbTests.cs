using Stockroom.Demo;
using Stockroom.Storage;
using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>Where the demo makes its book, and what it never overwrites.</summary>
public sealed class DemoVerbTests
{
    [Fact]
    public void Demo_OverItsOwnBook_MakesItFresh()
    {
        using var keeper = Keeper.WithDemo();
        keeper.Run("move", keeper.IdOf("sucrose"), "sink-shelf").Done();
        keeper.Run("demo", "--report", "--book", keeper.Book).Done();
        Assert.Equal("salts-upper", keeper.Run("show", keeper.IdOf("sucrose"), "--json").Done().Json.GetProperty("place").GetString());
    }

    [Fact]
    public void Demo_OverAFolderThatIsNotItsOwn_IsRefusedAndLeavesIt()
    {
        using var keeper = new Keeper();
        Directory.CreateDirectory(keeper.Book);
        File.WriteAllText(Path.Combine(keeper.Book, "letter.txt"), "Dear Una");
        Assert.Contains("is not a demo book; the demo overwrites none but its own", keeper.Run("demo", "--report", "--book", keeper.Book).Refused(3), StringComparison.Ordinal);
        Assert.Equal("Dear Una", File.ReadAllText(Path.Combine(keeper.Book, "letter.txt")));
        Assert.Single(Directory.EnumerateFileSystemEntries(keeper.Book));
    }

    [Fact]
    public void Demo_OverAKeepersBook_IsRefusedAndLeavesIt()
    {
        using var keeper = Keeper.WithSmallBook();
        var before = keeper.BookBytes();
        keeper.Run("demo", "--report", "--book", keeper.Book).Refused(3);
        Assert.Equal(before, keeper.BookBytes());
    }

    [Fact]
    public void Demo_OverItsBookThatIsOpen_IsRefusedAndLeavesIt()
    {
        using var keeper = Keeper.WithDemo();
        using (StockBookFolder.Open(keeper.Book))
            Assert.Contains("is open in process", keeper.Run("demo", "--report", "--book", keeper.Book).Refused(3), StringComparison.Ordinal);
        keeper.Run("verify").Done();
    }

    [Fact]
    public void Demo_OverAFile_IsRefusedAndLeavesIt()
    {
        using var keeper = new Keeper();
        File.WriteAllText(keeper.Book, "a letter");
        keeper.Run("demo", "--report", "--book", keeper.Book).Refused(3);
        Assert.Equal("a letter", File.ReadAllText(keeper.Book));
    }

    [Fact]
    public void Demo_WithoutABook_GoesToTheKeepersDataFolder()
    {
        using var keeper = new Keeper();
        keeper.Run("demo").Done();
        Assert.True(StockBookFolder.IsBook(Path.Combine(keeper.DataFolder, "demo.stockbook")));
        Assert.False(Path.Exists(keeper.Book));
    }

    [Theory]
    [InlineData("today", "2028-02-29")]
    [InlineData("yesterday", "2028-02-28")]
    [InlineData("3 weeks ago", "2028-02-08")]
    [InlineData("1 week ago", "2028-02-22")]
    [InlineData("2 months ago", "2027-12-29")]
    [InlineData("1 year ago", "2027-02-28")]
    [InlineData("4 years ago", "2024-02-29")]
    [InlineData("2024-02-29", "2024-02-29")]
    [InlineData("2023-02-29", null)]
    [InlineData("29.02.2024", null)]
    [InlineData("-3 days ago", null)]
    [InlineData("3 days", null)]
    [InlineData("1000 years ago", null)]
    [InlineData("99999999999 days ago", null)]
    [InlineData("5000 months ago", "1611-06-29")]
    public void RelativeDate_FromALeapDay_IsADayOfTheCalendar(string words, string? expected) =>
        Assert.Equal(expected, RelativeDate.Read(words, new DateOnly(2028, 2, 29))?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
}
