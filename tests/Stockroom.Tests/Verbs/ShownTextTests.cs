using System.Text.Json;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Screens.Drawing;
using Stockroom.Storage;
using Stockroom.Verbs;

namespace Stockroom.Tests.Verbs;

/// <summary>
/// Text that came into a book by another way than the command line steers no terminal: ECMA-48 control functions (ESC, and
/// C1 alone), bidirectional overrides (Unicode UAX #9), zero-width signs.
/// </summary>
public sealed class ShownTextTests
{
    private const string Hostile = "clear\u001B[2J title\u001B]0;x\u0007 c1\u009B31m bidi\u202Egpj.exe\u2066 zero\u200Bwidth bom\uFEFF line\u2028end\nDANGER: none tag\U000E0041";

    [Theory]
    [InlineData("a\u001Bb", "a\\u001Bb")]
    [InlineData("a\u009Bb", "a\\u009Bb")]
    [InlineData("a\u202Eb", "a\\u202Eb")]
    [InlineData("a\u200Bb", "a\\u200Bb")]
    [InlineData("a\u007Fb\rc", "a\\u007Fb\\u000Dc")]
    [InlineData("\U000E0041", "\\uDB40\\uDC41")]
    [InlineData("µ 5 °C, 日本, 🧪, ð\tand plain", "µ 5 °C, 日本, 🧪, ð\tand plain")]
    public void Of_HiddenSigns_AreWrittenOut(string text, string shown) => Assert.Equal(shown, ShownText.Of(text, oneLine: true));

    [Fact]
    public void Of_HalfACharacter_IsWrittenOut() => Assert.Equal("a\\uD800b", ShownText.Of("a\uD800b", oneLine: true));

    [Fact]
    public void Of_LineFeeds_AreWrittenOutWhereOneLineIsMeant()
    {
        Assert.Equal("a\\u000Ab", ShownText.Of("a\nb", oneLine: true));
        Assert.Equal("a\nb", ShownText.Of("a\nb", oneLine: false));
    }

    [Fact]
    public void Screens_HostileText_HoldsNothingHidden() => Assert.DoesNotContain(TextFit.Clean(Hostile), ShownText.IsHidden);

    [Theory]
    [InlineData("list")]
    [InlineData("show ID")]
    [InlineData("ledger")]
    [InlineData("today")]
    [InlineData("rounds")]
    [InlineData("places")]
    [InlineData("neighbours")]
    [InlineData("substances list")]
    [InlineData("forecast ID")]
    [InlineData("move ID nowhere")]
    public void Verb_BookWithHostileTexts_PrintsNothingThatSteers(string words)
    {
        using var keeper = Keeper.WithSmallBook();
        var id = Poison(keeper);
        foreach (var json in new[] { false, true })
        {
            var answer = keeper.Run([.. words.Replace("ID", id, StringComparison.Ordinal).Split(' '), .. json && words != "substances list" ? (string[])["--json"] : []]);
            var printed = answer.Out + answer.Error;
            Assert.DoesNotContain(printed.Where(c => c != '\n'), c => ShownText.IsHidden(c) && !char.IsSurrogate(c));
            Assert.DoesNotContain("\U000E0041", printed, StringComparison.Ordinal);
            Assert.DoesNotContain(printed.Split('\n'), l => l.StartsWith("DANGER: none", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Json_HostileText_StaysADocumentWithTheSameText()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = Poison(keeper);
        Assert.Equal(Hostile, keeper.Run("show", id, "--json").Json.GetProperty("seen").GetString());
        Assert.Equal(JsonValueKind.Object, keeper.Run("list", "--json").Json.ValueKind);
    }

    // What would be an action or markup if it were not only drawn: PDF (ISO 32000-1, 12.6), SVG 1.1.
    [Fact]
    public void Label_HostileText_IsDrawnAndNothingElse()
    {
        using var keeper = Keeper.WithSmallBook();
        var id = Poison(keeper, ") Tj ET endstream endobj << /S /JavaScript /JS (app.alert(1)) >> <script>alert(1)</script> ]]> &amp; \"' " + Hostile);
        foreach (var ending in new[] { "pdf", "svg", "png" })
        {
            var file = Path.Combine(keeper.Folder, "label." + ending);
            Assert.InRange(keeper.Run("label", id, "--stock", "a4-1x2", "--out", file).Code, 0, 1);
            Assert.True(File.Exists(file), ending);
        }

        var pdf = System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(keeper.Folder, "label.pdf")));
        Assert.All((string[])["/JavaScript", "/JS", "/OpenAction", "/AA", "/Launch", "/URI", "/EmbeddedFile"], action => Assert.DoesNotContain(action, pdf, StringComparison.Ordinal));
        var svg = System.Xml.Linq.XDocument.Load(Path.Combine(keeper.Folder, "label.svg"));
        Assert.Contains("<script>alert(1)</script>", svg.Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "a" or "foreignObject" or "image");
        Assert.DoesNotContain(svg.Descendants().SelectMany(e => e.Attributes()), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(svg.Root.Value.Where(c => c is not ('\n' or '\r')), c => ShownText.IsHidden(c) && !char.IsSurrogate(c));
    }

    private static string Poison(Keeper keeper) => Poison(keeper, Hostile);

    private static string Poison(Keeper keeper, string hostile)
    {
        using var book = StockBookFolder.Open(keeper.Book, clock: keeper.Clock);
        var (id, now) = (book.Ledger.State.NewId(), keeper.Clock.GetLocalNow());
        book.Append(new Transaction(
            "Ada" + hostile[..20],
            new Received { Container = id, HappenedAt = now, Content = hostile, IsOrphan = true, Seen = hostile, FoundBy = hostile, Lot = new Lot { How = LotOrigin.Found, Origin = hostile }, To = "left-shelf", Packing = hostile, Note = hostile },
            new Marked { Container = id, HappenedAt = now, HandsOff = true, Reason = hostile },
            new PlaceLimited { Place = "left-shelf", HappenedAt = now, Name = hostile },
            new SubstanceStated { Name = "thinner", HappenedAt = now, State = "liquid", Source = "sheet" + hostile, AsOf = "2026" }));
        return id.ToString();
    }
}
