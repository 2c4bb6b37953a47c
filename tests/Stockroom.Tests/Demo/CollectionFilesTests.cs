using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>Another collection in the same files works as well, and a bad cell is named by file, line and column.</summary>
public sealed class CollectionFilesTests : IDisposable
{
    private readonly Keeper _keeper = new();
    private readonly Collection _files;

    public CollectionFilesTests() => _files = new Collection(_keeper);

    public void Dispose() => _keeper.Dispose();

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Collection_OfAnother_IsJudgedAsTheDemoIs(string lineEnd)
    {
        _files.Demo(lineEnd).Done();
        var found = Findings.Of(_keeper);
        // Nitric acid above and with flammable liquids: 40 CFR 264 Appendix V; tetrahydrofuran, opened over a year: Prudent Practices, list B.
        Assert.Equal(["neighbours: nitric acid 65% in north-top"], found.Wrong.Select(w => w.Words).Distinct());
        Assert.Equal(["test for peroxides: tetrahydrofuran in north-low"], found.Due.Select(d => d.Words));
        _keeper.Run("move", _keeper.IdOf("nitric acid 65%"), "south-low").Done();
        Assert.Empty(Findings.Of(_keeper).Wrong);
    }

    [Fact]
    public void Collection_WithoutHistory_IsBooked()
    {
        _files.History.Clear();
        _files.Demo().Done();
        Assert.Equal(4, _keeper.Run("list", "--json").Done().Json.GetProperty("containers").GetArrayLength());
    }

    [Fact]
    public void Collection_Dates_CountBackFromToday()
    {
        _files.Demo().Done();
        var shown = _keeper.Run("show", _keeper.IdOf("acetone"), "--json").Done().Json;
        Assert.Equal(("2025-12-01", "2026-06-15"), (shown.GetProperty("received").GetString(), shown.GetProperty("opened").GetString()));
        Assert.Equal("2025-12-15", _keeper.Run("show", _keeper.IdOf("nitric acid 65%"), "--json").Done().Json.GetProperty("received").GetString());
    }

    // Columns of containers.tsv by their number from 0, as the heading has them; the head is line 1.
    [Theory]
    [InlineData("acid", 3, "glass botle 500 mL", "containers.tsv:2, column vessel: 'glass botle 500 mL' is not a vessel")]
    [InlineData("acid", 4, "a rag", "containers.tsv:2, column closure: 'a rag' is not a closure")]
    [InlineData("acid", 5, "mud", "containers.tsv:2, column cover: 'mud' is not a cover")]
    [InlineData("spirit", 1, "acetonne", "containers.tsv:3, column content: 'acetonne' is not in the catalogue; nearest: acetone")]
    [InlineData("spirit", 2, "-400 mL", "containers.tsv:3, column amount: '-400 mL' must be above zero")]
    [InlineData("spirit", 2, "400 furlongs", "containers.tsv:3, column amount: 'furlongs' in '400 furlongs' is not a unit")]
    [InlineData("spirit", 11, "2026-13-01", "containers.tsv:3, column received: '2026-13-01' is not a date")]
    [InlineData("spirit", 11, "2 fortnights ago", "containers.tsv:3, column received: '2 fortnights ago' is not a date")]
    [InlineData("spirit", 11, "2026-06-20", "containers.tsv:3, column container: 2026-06-20 lies in the future")]
    [InlineData("spirit", 12, "2025-11-30", "containers.tsv:3, column opened: ")]
    [InlineData("spirit", 11, "", "containers.tsv:3, column received")]
    [InlineData("salt", 8, "cellar", "containers.tsv:4, column place: 'cellar' is not a place of places.tsv")]
    [InlineData("salt", 0, "acid", "containers.tsv:4, column container: 'acid' stands twice")]
    [InlineData("salt", 9, "stolen", "containers.tsv:4, column how")]
    [InlineData("salt", 14, "heavy", "containers.tsv:4, column gross_g")]
    [InlineData("salt", 15, "bell\a", "containers.tsv:4: holds the control character U+0007")]
    [InlineData("salt", 16, "more", "containers.tsv:4: has 17 cells where the header has 16 columns")]
    public void Containers_BadCell_IsNamedByFileLineAndColumn(string key, int cell, string words, string expected)
    {
        Collection.Put(_files.Containers, key, cell, words);
        AssertRefused(expected);
    }

    [Theory]
    [InlineData("north", 2, "wardrobe", "places.tsv:4, column kind")]
    [InlineData("north", 3, "barn", "places.tsv:4, column inside: 'barn' does not stand above in this table")]
    [InlineData("north", 0, "lab", "places.tsv:4, column place: 'lab' stands twice")]
    [InlineData("north-top", 5, "high", "places.tsv:5, column height_m")]
    [InlineData("lab", 7, "5000", "places.tsv:3, column place: a place at 5000 C cannot be")]
    [InlineData("south", 3, "north-low", "places.tsv:7, column place: ")]
    public void Places_BadCell_IsNamedByFileLineAndColumn(string key, int cell, string words, string expected)
    {
        Collection.Put(_files.Places, key, cell, words);
        AssertRefused(expected);
    }

    [Theory]
    [InlineData("acid", 1, "vinegar", "history.tsv:2, column container: 'vinegar' is not a container of containers.tsv")]
    [InlineData("acid", 0, "soon", "history.tsv:2, column when: 'soon' is not a date")]
    [InlineData("acid", 0, "3 years ago", "history.tsv:2, column what: ")]
    [InlineData("acid", 2, "admired", "history.tsv:2, column what")]
    [InlineData("spirit", 3, "-3", "history.tsv:4, column what: ")]
    [InlineData("spirit", 3, "heavy", "history.tsv:4, column value")]
    public void History_BadCell_IsNamedByFileLineAndColumn(string key, int cell, string words, string expected)
    {
        Collection.Put(_files.History, key, cell, words);
        AssertRefused(expected);
    }

    [Fact]
    public void Containers_ColumnMissing_IsNamed()
    {
        _files.Containers[0] = _files.Containers[0].Replace("\tvessel", "", StringComparison.Ordinal);
        AssertRefused("containers.tsv:1, column vessel: is missing from the header");
    }

    [Fact]
    public void Containers_ColumnUnknown_IsNamed()
    {
        _files.Containers[0] += "\tcolour";
        AssertRefused("containers.tsv:1, column colour: is not a column of this table");
    }

    [Theory]
    [InlineData("places.tsv")]
    [InlineData("containers.tsv")]
    public void Folder_WithoutAFile_IsRefused(string name)
    {
        _files.Demo().Done();
        File.Delete(Path.Combine(_files.Folder, name));
        Assert.Contains("cannot be read", _keeper.Run("demo", "--report", "--from", _files.Folder, "--book", Path.Combine(_keeper.Folder, "other")).Refused(3), StringComparison.Ordinal);
    }

    // A demo book that is there stays as it was when the collection that would replace it cannot be.
    [Fact]
    public void Collection_ThatCannotBe_LeavesTheOldDemoBook()
    {
        _files.Demo().Done();
        var before = _keeper.BookBytes();
        Collection.Put(_files.History, "acid", 0, "3 years ago");
        _files.Demo().Refused(3);
        Assert.Equal(before, _keeper.BookBytes());
    }

    private void AssertRefused(string expected)
    {
        Assert.Contains(expected, _files.Demo().Refused(3), StringComparison.Ordinal);
        Assert.False(Path.Exists(_keeper.Book));
    }
}
