using System.Text.Json;
using System.Xml.Linq;

namespace Stockroom.Tests.Verbs;

/// <summary>The sheets as somebody reads them: the text of what is drawn.</summary>
public sealed class SheetVerbTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void Door_SaysWhatIsInside_WhomToCall_AndWhen()
    {
        var text = Door("metals-cupboard", "--call", "Maren Sole, 555 0100");

        Assert.Contains("Call the local emergency number, then: Maren Sole, 555 0100", text, StringComparison.Ordinal);
        Assert.Contains("as of 2026-06-15", text, StringComparison.Ordinal);
        Assert.All(new[] { "caesium", "sodium", "potassium", "zinc powder", "gallium" }, n => Assert.Contains(n, text, StringComparison.Ordinal));
        Assert.Contains("40 g", text, StringComparison.Ordinal);

        // CLP Annex VI: caesium catches fire by itself (H250 comes before H260), gallium is corrosive to metals.
        var contents = text[text.IndexOf("the worst first", StringComparison.Ordinal)..];
        Assert.True(contents.IndexOf("sodium", StringComparison.Ordinal) < contents.IndexOf("gallium", StringComparison.Ordinal));
    }

    // Water on alkali metals, carbon dioxide on reactive metals (Prudent Practices in the Laboratory, Table 3.9): what must not be used, with the source.
    [Fact]
    public void Door_SaysWhatNotToUse_WithReasonAndSource()
    {
        var text = Door("metals-cupboard", "--call", "x");
        var not = text[text.IndexOf("Do not use", StringComparison.Ordinal)..text.IndexOf("the worst first", StringComparison.Ordinal)];

        Assert.Contains("WATER, FOAM caesium", not, StringComparison.Ordinal);
        Assert.Contains("CARBON DIOXIDE caesium", not, StringComparison.Ordinal);
        Assert.Contains("Prudent Practices", not, StringComparison.Ordinal);
        Assert.DoesNotContain("gallium", not, StringComparison.Ordinal);
    }

    [Fact]
    public void Door_NamesHandsOffAndUnknownFirst()
    {
        Assert.Contains("HANDS OFF: do not move, open or touch; keep away, get help: diisopropyl ether (MM451", Door("fire-cabinet", "--call", "x"), StringComparison.Ordinal);
        Assert.Contains("CONTENTS UNKNOWN: treat as the worst they could be: unknown corrosive liquid", Door("salts", "--call", "x"), StringComparison.Ordinal);
    }

    [Fact]
    public void Door_WithoutAnybodyToCall_LeavesALineAndSaysSo()
    {
        var answer = _keeper.Run("sheet", "door", "acid-cabinet", "--out", InFolder("door.pdf"));

        Assert.Equal(0, answer.Code);
        Assert.Contains("nobody to call is named", answer.ErrorLine, StringComparison.Ordinal);
        Assert.Contains("____________", Door("acid-cabinet"), StringComparison.Ordinal);
    }

    [Fact]
    public void Door_OfAnEmptyPlace_SaysThatTheBookMayBeBehind()
    {
        _keeper.Run("place", "add", "annex", "--kind", "room", "--id", "annex").Done();

        Assert.Contains("By the book nothing stands here.", Door("annex", "--call", "x"), StringComparison.Ordinal);
    }

    [Fact]
    public void Door_OfACabinet_IsOnePage() =>
        Assert.Equal(1, _keeper.Run("sheet", "door", "metals-cupboard", "--call", "x", "--out", InFolder("door.pdf"), "--json").Done().Json.GetProperty("pages").GetInt32());

    [Fact]
    public void Catalogue_NamesEveryContainerOnce_ElementByElement()
    {
        var text = Text("sheet", "catalogue");
        var ids = _keeper.Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("id").GetString()!).ToList();

        Assert.All(ids, id => Assert.Equal(1, text.Split($" {id} ").Length - 1));
        var (hydrogen, sodium, uranium) = (Heading("1 · H · Hydrogen"), Heading("11 · Na · Sodium"), Heading("Compounds, reagents and other things"));
        Assert.True(0 < hydrogen && hydrogen < sodium && sodium < uranium);
        Assert.Contains("of 118 elements", text, StringComparison.Ordinal);

        int Heading(string words) => text.IndexOf(words, StringComparison.Ordinal);
    }

    [Fact]
    public void Rounds_HasALineForEverythingDue()
    {
        var text = Text("sheet", "rounds");
        var due = _keeper.Run("rounds", "--json").Done().Json.GetProperty("due").EnumerateArray().ToList();

        Assert.NotEmpty(due);
        Assert.All(due, d => Assert.Contains(d.GetProperty("id").GetString()!, text, StringComparison.Ordinal));
        Assert.Contains($"{due.Count} due on 2026-06-15", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "a file is needed", "sheet", "rounds")]
    [InlineData(2, "sheets are written as .pdf, .svg or .png", "sheet", "rounds", "--out", "x.doc")]
    [InlineData(2, "'a9' is not a paper; it is one of a4, letter", "sheet", "rounds", "--out", "x.pdf", "--paper", "a9")]
    [InlineData(2, "there is no place 'moon'", "sheet", "door", "moon", "--call", "x", "--out", "x.pdf")]
    [InlineData(3, "there is no folder", "sheet", "rounds", "--out", "none/x.pdf")]
    public void WrongWords_AreRefusedInOneLine_AndNothingIsWritten(int code, string expected, params string[] words)
    {
        var inFolder = words.Select(w => w.Contains("x.", StringComparison.Ordinal) ? InFolder(w) : w).ToArray();

        Assert.Contains(expected, _keeper.Run(inFolder).Refused(code), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_keeper.Folder));
    }

    [Fact]
    public void Sheets_DoNotWriteInTheBook()
    {
        var before = File.ReadAllBytes(_keeper.Journal);
        Door("prep", "--call", "x");

        Assert.Equal(before, File.ReadAllBytes(_keeper.Journal));
    }

    private string Door(string place, params string[] words) => Text(["sheet", "door", place, .. words]);

    /// <summary>All pages' text in reading order.</summary>
    private string Text(params string[] words)
    {
        var answer = _keeper.Run([.. words, "--out", InFolder("sheet.svg"), "--json"]);
        Assert.Equal(0, answer.Code);
        var files = answer.Json.GetProperty("files").EnumerateArray().Select(f => f.GetString()!).ToList();
        XNamespace svg = "http://www.w3.org/2000/svg";
        return " " + string.Join(' ', files.SelectMany(f => XDocument.Load(f).Descendants(svg + "text").Select(t => t.Value))) + " ";
    }

    private string InFolder(string name) => Path.Combine(_keeper.Folder, name);
}
