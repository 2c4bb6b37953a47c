using System.Text;
using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>Files that the verbs write: the same bytes for the same book, whole or not at all.</summary>
public sealed class ExportAndLabelTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    [Theory]
    [InlineData("csv")]
    [InlineData("json")]
    public void Export_Twice_GivesTheSameBytes(string format)
    {
        _keeper.Run("export", InFolder("one." + format)).Done();
        _keeper.Clock.Advance(TimeSpan.FromHours(5));
        _keeper.Run("export", InFolder("two." + format)).Done();
        Assert.Equal(File.ReadAllBytes(InFolder("one." + format)), File.ReadAllBytes(InFolder("two." + format)));
    }

    [Fact]
    public void Export_Json_KeepsEveryEntry()
    {
        _keeper.Run("export", InFolder("book.json")).Done();
        using var document = JsonDocument.Parse(File.ReadAllBytes(InFolder("book.json")));
        var ledger = _keeper.Run("ledger", "--json").Done().Json.GetProperty("entries");
        Assert.Equal(ledger.GetArrayLength(), document.RootElement.GetProperty("entries").GetArrayLength());
        Assert.Equal(_keeper.Run("verify", "--json").Done().Json.GetProperty("head").GetString(), document.RootElement.GetProperty("head").GetString());
    }

    // A cell that begins so is run as a formula by spreadsheets (OWASP, CSV injection); RFC 4180 quotes the rest.
    [Theory]
    [InlineData("=1+2")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    public void Export_Csv_GuardsAFormula(string text)
    {
        _keeper.Run("add", "water", "--place", "sink-shelf", "--origin=" + text, "--packing", "a \"can\", tight").Done();
        _keeper.Run("export", InFolder("book.csv")).Done();
        var row = Assert.Single(File.ReadAllLines(InFolder("book.csv")), l => l.Contains("tight", StringComparison.Ordinal));
        Assert.Contains(",'" + text + ",", row, StringComparison.Ordinal);
        Assert.Contains(",\"a \"\"can\"\", tight\",", row, StringComparison.Ordinal);
    }

    [Fact]
    public void Export_Csv_HasALineForEachContainer()
    {
        _keeper.Run("export", InFolder("book.csv")).Done();
        var lines = File.ReadAllText(InFolder("book.csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("id,content,", lines[0], StringComparison.Ordinal);
        Assert.Equal(Containers().Count, lines.Length - 1);
    }

    [Fact]
    public void Export_OfABookThatDoesNotHold_WritesNothing()
    {
        var lite = Path.Combine(_keeper.Book, "book.litedb");
        var bytes = File.ReadAllBytes(lite);
        var at = bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes("diisopropyl"));
        Assert.True(at > 0);
        bytes[at] ^= 1;
        File.WriteAllBytes(lite, bytes);
        _keeper.Run("export", InFolder("book.json")).Refused(3);
        Assert.False(File.Exists(InFolder("book.json")));
    }

    [Fact]
    public void Label_AllDue_WritesThePdfAndBooksThePrinting()
    {
        var answer = _keeper.Run("label", "--all-due", "--out", InFolder("labels.pdf"), "--json").Done();
        Assert.Equal(Containers(), answer.Json.GetProperty("labels").EnumerateArray().Select(l => l.GetProperty("id").GetString()!));
        Assert.All(answer.Json.GetProperty("labels").EnumerateArray(), l =>
        {
            Assert.True(l.GetProperty("complete").GetBoolean());
            Assert.Equal($"STOCKROOM:{l.GetProperty("id").GetString()}", l.GetProperty("code").GetString()!.Split('\n')[0]);
        });
        IsWholePdf(InFolder("labels.pdf"));
        Assert.Contains("no label is due", _keeper.Run("label", "--all-due", "--out", InFolder("again.pdf")).Refused(2), StringComparison.Ordinal);
        Assert.False(File.Exists(InFolder("again.pdf")));
    }

    [Fact]
    public void Label_ThatCannotBeWritten_BooksNoPrinting()
    {
        var before = File.ReadAllBytes(_keeper.Journal);
        _keeper.Run("label", "MM451", "--out", InFolder("none/labels.pdf")).Refused(3);
        Assert.Equal(before, File.ReadAllBytes(_keeper.Journal));
    }

    [Fact]
    public void Label_OneIdOfManyWrong_WritesNothing()
    {
        var before = File.ReadAllBytes(_keeper.Journal);
        _keeper.Run("label", "MM451", "MM452", "--out", InFolder("labels.pdf")).Refused(2);
        Assert.False(File.Exists(InFolder("labels.pdf")));
        Assert.Equal(before, File.ReadAllBytes(_keeper.Journal));
    }

    [Fact]
    public void Label_StockTooSmallForWhatIsRequired_ExitsOneAndNamesOneThatWouldDo()
    {
        var answer = _keeper.Run("label", "--content", "bromine", "--stock", "a4-4x12", "--out", InFolder("small.pdf"), "--json");
        Assert.Equal(1, answer.Code);
        var label = answer.Json.GetProperty("labels")[0];
        Assert.False(label.GetProperty("complete").GetBoolean());
        Assert.NotEmpty(label.GetProperty("left_off").EnumerateArray());
        Assert.NotEmpty(label.GetProperty("stocks_that_would_do").EnumerateArray());
        IsWholePdf(InFolder("small.pdf"));
    }

    [Fact]
    public void Label_Content_NeedsNoBookAndIsASample()
    {
        using var keeper = new Keeper();
        var answer = keeper.Run("label", "--content", "sulfuric acid 37%", "--stock", "a4-1x2", "--out", Path.Combine(keeper.Folder, "s.pdf"), "--json").Done();
        Assert.StartsWith("STOCKROOM:SAMPLE", answer.Json.GetProperty("labels")[0].GetProperty("code").GetString(), StringComparison.Ordinal);
    }

    private static void IsWholePdf(string file)
    {
        var text = Encoding.Latin1.GetString(File.ReadAllBytes(file));
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        Assert.EndsWith("%%EOF", text.TrimEnd(), StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(Path.GetDirectoryName(file)!, "*.part"));
    }

    private List<string> Containers() => [.. _keeper.Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    private string InFolder(string name) => Path.Combine(_keeper.Folder, name);
}
