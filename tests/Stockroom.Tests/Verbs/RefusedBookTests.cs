using Stockroom.Storage;

namespace Stockroom.Tests.Verbs;

/// <summary>A book or a file that is refused: exit 3, one line, and everything left as it was.</summary>
public sealed class RefusedBookTests
{
    private static readonly string[][] Verbs =
    [
        ["today"], ["list"], ["places"], ["ledger"], ["neighbours"], ["verify"], ["show", "C2DRH"], ["undo"], ["export", "out.csv"],
        ["add", "acetone", "--place", "store"], ["label", "C2DRH", "--out", "x.pdf"],
    ];

    public static TheoryData<string> EachVerb => [.. Verbs.Select(v => string.Join('\t', v))];

    [Theory]
    [MemberData(nameof(EachVerb))]
    public void Book_Missing_IsNamed(string verb)
    {
        using var keeper = new Keeper();
        Assert.Contains($"there is no stock book at '{keeper.Book}'", keeper.Run(verb.Split('\t')).Refused(3), StringComparison.Ordinal);
        Assert.False(Path.Exists(keeper.Book));
    }

    [Fact]
    public void Book_NeverNamed_TellsHowToBegin()
    {
        using var keeper = new Keeper { Book = null! };
        var line = keeper.Run("today").Refused(3);
        Assert.Contains("name one with --book FOLDER", line, StringComparison.Ordinal);
        Assert.Contains("stockroom demo", line, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(EachVerb))]
    public void Book_FolderThatIsNone_IsLeftByteForByte(string verb)
    {
        using var keeper = new Keeper();
        Directory.CreateDirectory(keeper.Book);
        File.WriteAllText(Path.Combine(keeper.Book, "letter.txt"), "Dear Una");
        File.WriteAllText(Path.Combine(keeper.Book, "book.litedb"), "not a database");
        var before = Keeper.FolderBytes(keeper.Book);
        Assert.Contains("is not a stock book", keeper.Run(verb.Split('\t')).Refused(3), StringComparison.Ordinal);
        Assert.Equal(before, Keeper.FolderBytes(keeper.Book));
        Assert.Equal(2, Directory.EnumerateFileSystemEntries(keeper.Book).Count());
    }

    [Theory]
    [MemberData(nameof(EachVerb))]
    public void Book_FileThatIsNone_IsLeftByteForByte(string verb)
    {
        using var keeper = new Keeper();
        File.WriteAllText(keeper.Book, "a letter, no book");
        Assert.Contains("is a file, not a stock book's folder", keeper.Run(verb.Split('\t')).Refused(3), StringComparison.Ordinal);
        Assert.Equal("a letter, no book", File.ReadAllText(keeper.Book));
    }

    [Fact]
    public void Book_HeldByAnother_IsRefusedNamingTheHolder()
    {
        using var keeper = Keeper.WithSmallBook();
        using var held = StockBookFolder.Open(keeper.Book);
        var line = keeper.Run("add", "acetone", "--place", "left-shelf").Refused(3);
        Assert.Contains($"is open in process {Environment.ProcessId}", line, StringComparison.Ordinal);
        Assert.Contains("close it there first", line, StringComparison.Ordinal);
        Assert.Equal(0, keeper.Run("list").Code);
    }

    // A place under a file can be written by nobody, root included.
    [Theory]
    [InlineData("place", "add", "attic", "--kind", "room")]
    [InlineData("demo", "--report")]
    public void Place_ThatCannotBeWritten_IsRefused(params string[] typed)
    {
        using var keeper = new Keeper();
        var file = Path.Combine(keeper.Folder, "file");
        File.WriteAllText(file, "x");
        keeper.Run([.. typed, "--book", Path.Combine(file, "new.stockbook")]).Refused(3);
        Assert.Equal("x", File.ReadAllText(file));
    }

    [Theory]
    [InlineData("export", "{0}/under/book.csv")]
    [InlineData("export", "{0}/none/book.json")]
    [InlineData("export", "{0}/folder.csv")]
    [InlineData("label", "--content", "acetone", "--out", "{0}/under/x.pdf")]
    [InlineData("label", "--content", "acetone", "--out", "{0}/folder.pdf")]
    public void File_ThatCannotBeWritten_IsRefused(params string[] typed)
    {
        using var keeper = Keeper.WithSmallBook();
        File.WriteAllText(Path.Combine(keeper.Folder, "under"), "x");
        Directory.CreateDirectory(Path.Combine(keeper.Folder, "folder.csv"));
        Directory.CreateDirectory(Path.Combine(keeper.Folder, "folder.pdf"));
        var before = Keeper.FolderBytes(keeper.Folder);
        Assert.Contains("cannot write", keeper.Run([.. typed.Select(w => w.Replace("{0}", keeper.Folder, StringComparison.Ordinal))]).Refused(3), StringComparison.Ordinal);
        Assert.Equal(before, Keeper.FolderBytes(keeper.Folder));
    }

    [Theory]
    [InlineData("facts", "--each")]
    [InlineData("pair", "--each")]
    public void File_ThatIsNotThere_IsRefused(params string[] typed)
    {
        using var keeper = new Keeper();
        Assert.Contains("cannot be read", keeper.Run([.. typed, Path.Combine(keeper.Folder, "none.txt")]).Refused(3), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_WithoutATerminal_PointsToThePlainLines()
    {
        using var keeper = Keeper.WithSmallBook();
        Assert.Contains("stockroom today", keeper.Run("open").Refused(2), StringComparison.Ordinal);
    }
}
