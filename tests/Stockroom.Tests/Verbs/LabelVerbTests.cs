using System.Text;
using System.Text.Json;
using System.Xml.Linq;

namespace Stockroom.Tests.Verbs;

/// <summary>What the verb label makes and says: kinds of file, editions, small packages, frames, the printer.</summary>
public sealed class LabelVerbTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithSmallBook();

    public void Dispose() => _keeper.Dispose();

    [Theory]
    [InlineData("x.pdf", "%PDF-")]
    [InlineData("x.svg", "<?xml")]
    [InlineData("x.png", "\u0089PNG")]
    public void Out_OfEachKind_IsWritten(string name, string begins)
    {
        var answer = _keeper.Run("label", "--content", "acetone", "--out", InFolder(name), "--json").Done();

        Assert.Equal(InFolder(name), answer.Json.GetProperty("files")[0].GetString());
        Assert.StartsWith(begins, Encoding.Latin1.GetString(File.ReadAllBytes(InFolder(name))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'50' is not a resolution; give 72 to 1200", "--out", "x.png", "--dpi", "50")]
    [InlineData("'2030' is not a set of formatting rules; only 2024 is", "--out", "x.pdf", "--formatting", "2030")]
    [InlineData("it goes with --rules eu", "--out", "x.pdf", "--formatting", "2024", "--rules", "us")]
    [InlineData("--inside allows black frames; it goes with --black", "--out", "x.pdf", "--inside")]
    [InlineData("'0' is not a capacity in mL", "--out", "x.pdf", "--volume", "0")]
    [InlineData("'lots' is not a capacity in mL", "--out", "x.pdf", "--volume", "lots")]
    [InlineData("stock 'a4-2x4' has no red frames printed on it; these have: a4-2x4-1-frame", "--out", "x.pdf", "--preprinted")]
    [InlineData("design 'card' is not for stock 'a4-2x4'", "--out", "x.pdf", "--design", "card")]
    [InlineData("what goes to the printer is a .pdf", "--out", "x.svg", "--print")]
    public void WrongWords_AreRefusedInOneLine_AndNothingIsWritten(string expected, params string[] words)
    {
        var inFolder = words.Select(w => w.StartsWith("x.", StringComparison.Ordinal) ? InFolder(w) : w).ToArray();

        Assert.Contains(expected, _keeper.Run(["label", "--content", "acetone", .. inFolder]).Refused(2), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_keeper.Folder));
    }

    [Fact]
    public void UnknownDesign_IsRefusedWithTheNamesThereAre() =>
        Assert.Contains("the designs are card, label, mark, specimen", _keeper.Run("label", "--content", "acetone", "--out", InFolder("x.pdf"), "--design", "poster").Refused(3), StringComparison.Ordinal);

    [Fact]
    public void KeepersOwnDesign_WithAFault_IsNamedByFileMemberAndValue()
    {
        var folder = Path.Combine(_keeper.DataFolder, "labels", "designs");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "mine.json"), "{\"name\": \"mine\", \"colour\": 1}");

        Assert.Contains("mine.json: member 'colour': unknown; the members are name", _keeper.Run("label", "--content", "acetone", "--out", InFolder("x.pdf")).Refused(3), StringComparison.Ordinal);
    }

    // CLP Annex I 1.5.2.1.1: acetone's categories are on the list; 1.5.2 counts up to 125 ml; GHS and 29 CFR 1910.1200 have no such list.
    [Theory]
    [InlineData("eu", "125", true)]
    [InlineData("eu", "126", false)]
    [InlineData("un", "125", false)]
    [InlineData("us", "100", false)]
    public void StatementsOfASmallPackage_AreLeftOff_OnlyWhereTheEditionAllows(string rules, string volume, bool allowed)
    {
        var answer = _keeper.Run("label", "--content", "acetone", "--stock", "a4-4x12", "--rules", rules, "--volume", volume, "--out", InFolder("x.pdf"), "--json");
        var label = answer.Json.GetProperty("labels")[0];

        Assert.Equal(allowed, label.GetProperty("relief").GetString()?.Contains("Annex I 1.5.2.1", StringComparison.Ordinal) == true);
        Assert.Equal(!allowed, label.GetProperty("left_off").EnumerateArray().Any(l => l.GetString()!.StartsWith("hazard statement H", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("eu", "11", "Annex I 1.5.1.2", true)]
    [InlineData("eu", "10", "Annex I 1.5", true)]
    [InlineData("un", "500", "GHS 1.4.10.5.4.4", true)]
    [InlineData("us", "100", "1910.1200(f)(12)(ii)", true)]
    [InlineData("us", "101", null, false)]
    [InlineData("us", "3", "1910.1200(f)(12)", true)]
    public void FullLabelOnTheOuterPacking_ReducesTheSmallOne_ByItsClause(string rules, string volume, string? clause, bool complete)
    {
        var answer = _keeper.Run(
            "label", "--content", "methanol", "--stock", "roll-38x25", "--rules", rules, "--volume", volume, "--outer", "--keeper", "M. Sole, 555 0100", "--out", InFolder("x.pdf"), "--json");
        var label = answer.Json.GetProperty("labels")[0];

        if (clause is null)
            Assert.Equal(JsonValueKind.Null, label.GetProperty("relief").ValueKind);
        else
            Assert.Contains(clause, label.GetProperty("relief").GetString(), StringComparison.Ordinal);
        Assert.True(!complete || !label.GetProperty("left_off").EnumerateArray().Any(l => l.GetString()!.Contains("statement", StringComparison.Ordinal)), label.ToString());
    }

    [Fact]
    public void Black_SaysThatFramesMustBeRed_AndOffersFramedStock()
    {
        var answer = _keeper.Run("label", "--content", "acetone", "--black", "--out", InFolder("x.pdf"));

        Assert.Equal(1, answer.Code);
        Assert.Contains("the frames must be red", answer.Out, StringComparison.Ordinal);
        Assert.Contains("a4-2x4-2-frames (2)", answer.Out, StringComparison.Ordinal);
        Assert.Equal(0, _keeper.Run("label", "--content", "acetone", "--black", "--inside", "--out", InFolder("x.pdf")).Code);
    }

    [Fact]
    public void FramedStock_WithAnotherNumberOfPictograms_IsRefused()
    {
        Assert.Contains("no frame may stay empty", _keeper.Run("label", "--content", "sodium hydroxide", "--stock", "a4-2x4-2-frames", "--out", InFolder("x.pdf")).Refused(3), StringComparison.Ordinal);
        _keeper.Run("label", "--content", "acetone", "--stock", "a4-2x4-2-frames", "--preprinted", "--out", InFolder("x.pdf")).Done();
    }

    [Fact]
    public void Print_WithoutLp_IsOneClearLine() => Assert.Contains(
        "there is no 'lp' on this computer", _keeper.Run("label", "--content", "acetone", "--print").Refused(3), StringComparison.Ordinal);

    [Fact]
    public void Print_SendsThePdfToLp_WithPrinterAndTrueSize()
    {
        if (OperatingSystem.IsWindows())
            return;
        var bin = Directory.CreateDirectory(InFolder("bin")).FullName;
        var lp = Path.Combine(bin, "lp");
        File.WriteAllText(lp, $"#!/bin/sh\necho \"$@\" > '{InFolder("said")}'\nfor last; do :; done\nhead -c 5 \"$last\" > '{InFolder("got")}'\necho 'request id is 7'\n");
        File.SetUnixFileMode(lp, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        _keeper.SearchPath = bin;
        var answer = _keeper.Run("label", "--content", "acetone", "--stock", "roll-102x76", "--print", "thermal", "--json").Done();

        Assert.Equal("request id is 7", answer.Json.GetProperty("printed").GetString());
        Assert.StartsWith("-d thermal -o print-scaling=none -o media=Custom.", File.ReadAllText(InFolder("said")), StringComparison.Ordinal);
        Assert.Equal("%PDF-", File.ReadAllText(InFolder("got")));
        File.WriteAllText(lp, "#!/bin/sh\necho 'lp: no such printer' >&2\nexit 1\n");
        Assert.Contains("the printer refused the labels: lp: no such printer", _keeper.Run("label", "--content", "acetone", "--print", "x").Refused(3), StringComparison.Ordinal);
    }

    // The printed label against the classification that the verb classify gives: the same pictograms, and exactly its statements.
    [Theory]
    [InlineData("bromine")]
    [InlineData("acetone")]
    [InlineData("potassium dichromate")]
    [InlineData("nitric acid 65%")]
    [InlineData("sodium")]
    [InlineData("phosphorus (white)")]
    [InlineData("sodium hypochlorite 12%")]
    [InlineData("copper")]
    public void DrawnLabel_HasThePictogramsAndStatementsOfTheClassification(string content)
    {
        _keeper.Run("label", "--content", content, "--stock", "a4-door-card", "--out", InFolder("x.svg")).Done();
        var classified = _keeper.Run("classify", content, "--json").Done().Json;
        XNamespace svg = "http://www.w3.org/2000/svg";
        XNamespace link = "http://www.w3.org/1999/xlink";
        var drawn = XDocument.Load(InFolder("x.svg"));
        var used = drawn.Descendants(svg + "use").Select(u => u.Attribute(link + "href")!.Value[1..]).Where(n => n.StartsWith("GHS", StringComparison.Ordinal));
        var text = string.Concat(drawn.Descendants(svg + "text").Select(t => t.Value)).Replace(" ", "", StringComparison.Ordinal);

        Assert.Equal(classified.GetProperty("pictograms").EnumerateArray().Select(p => p.GetString()), used);
        foreach (var kind in new[] { "hazard_statements", "precautionary_statements" })
        {
            Assert.All(classified.GetProperty(kind).EnumerateArray(), s =>
                Assert.Contains(s.GetProperty("text").GetString()!.Replace(" ", "", StringComparison.Ordinal), text, StringComparison.Ordinal));
        }

        var signal = classified.GetProperty("signal_word").GetString();
        Assert.Equal(signal == "Danger", text.Contains("Danger", StringComparison.Ordinal));
        Assert.Equal(signal == "Warning", text.Contains("Warning", StringComparison.Ordinal));
    }

    private string InFolder(string name) => Path.Combine(_keeper.Folder, name);
}
