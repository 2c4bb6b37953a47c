using System.Text.Json.Nodes;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Designs;

public sealed class DesignReaderTests : IDisposable
{
    private static readonly LabelStocks Stocks = LabelStocks.Load();
    private readonly string _folder = Directory.CreateTempSubdirectory("designs").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Members() => [.. Good().Select(m => m.Key)];

    public static TheoryData<string> Sizes() => [.. Good()["sizes"]!.AsObject().Select(m => m.Key)];

    [Theory]
    [MemberData(nameof(Members))]
    public void MissingMember_IsRefused(string member) => Refused($"mine.json: member '{member}': missing", d => d.Remove(member));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void MissingSize_IsRefused(string size) => Refused($"mine.json: member 'sizes.{size}': missing", d => d["sizes"]!.AsObject().Remove(size));

    [Theory]
    [InlineData("mine.json: member 'colour': unknown; the members are name, ", "colour", "\"red\"")]
    [InlineData("mine.json: member 'layout': 'wide' is not one of full, mark", "layout", "\"wide\"")]
    [InlineData("mine.json: member 'shapes': 'square' is not one of rectangle, disc", "shapes", "[\"square\"]")]
    [InlineData("mine.json: member 'shapes': is empty", "shapes", "[]")]
    [InlineData("mine.json: member 'head': 'amount' does not stand there; what may is name, formula, warnings", "head", "[\"name\", \"amount\"]")]
    [InlineData("mine.json: member 'head': lacks 'name': a label says what is inside", "head", "[\"formula\", \"warnings\"]")]
    [InlineData("mine.json: member 'hazards': keep the order pictograms, signal word", "hazards", "[\"signal word\", \"pictograms\"]")]
    [InlineData("mine.json: member 'hazards': 'signal word' stands there twice", "hazards", "[\"signal word\", \"signal word\"]")]
    [InlineData("mine.json: member 'priority': 'small print' stands neither in always nor in priority", "priority", "[\"rest of name\", \"pictograms\", \"formula\", \"hazard statements\", \"precautionary statements\", \"dates\", \"amount\", \"other\", \"cover\", \"lot\", \"keeper\", \"place\"]")]
    [InlineData("mine.json: member 'priority': 'cover' is ranked but has no place", "foot", "[\"amount\", \"other\", \"dates\", \"place\", \"lot\", \"keeper\", \"small print\"]")]
    [InlineData("mine.json: member 'priority': 'warnings' stands neither in always nor in priority", "always", "[\"id\", \"code\", \"name\", \"signal word\"]")]
    [InlineData("mine.json: member 'code_at': in the layout full the code stands at [\"top right\"]", "code_at", "[\"bottom\"]")]
    [InlineData("mine.json: member 'name_room_of_height': 1.5 is not a share above 0 up to 1", "name_room_of_height", "1.5")]
    [InlineData("mine.json: member 'least_width_mm': -1 is outside 0 to 2000 mm", "least_width_mm", "-1")]
    [InlineData("mine.json: member 'usual': 1 is not true or false", "usual", "1")]
    [InlineData("mine.json: member 'sizes': the sizes is one JSON object, not array", "sizes", "[]")]
    public void WrongValue_IsRefusedWithFileMemberAndWhatIsRight(string expected, string member, string value) =>
        Refused(expected, d => d[member] = JsonNode.Parse(value));

    [Theory]
    [InlineData("mine.json: member 'sizes.name.least_mm': 12 is more than most_mm 10", "name", "least_mm", "12")]
    [InlineData("mine.json: member 'sizes.code.of_height': 0 is not a share above 0 up to 1", "code", "of_height", "0")]
    [InlineData("mine.json: member 'sizes.details.most_mm': 1.2 is too small to read; at least 1.71", "details", "most_mm", "1.2")]
    public void WrongSize_IsRefused(string expected, string size, string member, string value) => Refused(expected, d =>
    {
        d["sizes"]![size]!["least_mm"] = 1;
        d["sizes"]![size]![member] = JsonNode.Parse(value);
    });

    [Fact]
    public void RankedTwice_IsRefused() => Refused(
        "mine.json: member 'priority': 'name' stands in both always and priority; it belongs into one of them", d => d["priority"]!.AsArray().Add("name"));

    [Fact]
    public void UnknownSmallerDesign_IsRefused()
    {
        Write(d => d["smaller"] = "tiny");

        Assert.Contains("member 'smaller': 'tiny' is not a design of the layout mark", Assert.Throws<LabelException>(() => LabelDesigns.Load(_folder)).Message);
    }

    [Fact]
    public void UnknownDesign_IsRefusedWithTheNamesThereAre() => Assert.Equal(
        "there is no label design 'big'; the designs are card, label, mark, specimen", Assert.Throws<LabelException>(() => LabelDesigns.Default.Named("big")).Message);

    [Fact]
    public void KeepersOwnDesign_Drives_WhatStandsWhere()
    {
        // Warnings over the name, the place first at the foot, and no lot at all.
        Write(d =>
        {
            d["head"] = new JsonArray("warnings", "name", "formula");
            d["foot"] = new JsonArray("place", "amount", "other", "cover", "dates", "keeper", "small print");
            d["priority"]!.AsArray().Remove(d["priority"]!.AsArray().First(p => p!.GetValue<string>() == "lot"));
        });
        var text = Samples.NitricAcid with
        {
            Extra = ["HANDS OFF"],
            Details = [new("Amount", "500 mL", LabelPart.Amount), new("Lot", "R-0417", LabelPart.Lot), new("Place", "Prep room", LabelPart.Place)],
        };
        var fit = LabelLayout.LayOut(text, Stocks.Named("a4-1x2"), design: LabelDesigns.Load(_folder).Named("mine"));
        var words = Geometry.Words(fit.Drawing.Items);

        Assert.Equal("mine", fit.Design);
        Assert.True(words.IndexOf("HANDS OFF", StringComparison.Ordinal) < words.IndexOf("Nitric acid", StringComparison.Ordinal));
        Assert.True(words.IndexOf("Prep room", StringComparison.Ordinal) < words.IndexOf("500 mL", StringComparison.Ordinal));
        Assert.DoesNotContain("R-0417", words);
        Assert.Equal([new LeftOff("Lot", Required: false)], fit.LeftOff);
    }

    [Fact]
    public void DesignWithoutStatements_SaysWhatTheLawRequiresAndItLeavesOff()
    {
        Write(d =>
        {
            d["hazards"] = new JsonArray("pictograms", "signal word");
            foreach (var part in new[] { "hazard statements", "precautionary statements" })
            {
                d["priority"]!.AsArray().Remove(d["priority"]!.AsArray().First(p => p!.GetValue<string>() == part));
            }
        });
        var fit = LabelLayout.LayOut(Samples.NitricAcid, Stocks.Named("a4-1x2"), design: LabelDesigns.Load(_folder).Named("mine"));

        Assert.False(fit.IsComplete);
        Assert.Contains(new LeftOff("hazard statement H314", Required: true), fit.LeftOff);
        Assert.Contains("Not all hazards are shown", Geometry.Words(fit.Drawing.Items));
    }

    [Fact]
    public void Priority_SaysWhatGoesFirst()
    {
        // Each stock keeps a beginning of the design's order and drops the rest of it.
        var design = LabelDesigns.Default.Named("label");
        LabelPart[] kinds = [LabelPart.Amount, LabelPart.Dates, LabelPart.Cover, LabelPart.Lot, LabelPart.Keeper, LabelPart.Place];
        var text = Samples.Ether with { Details = [.. kinds.Select(k => new Detail(k.ToString(), $"particular {k} of some length", k))] };
        var some = 0;
        foreach (var stock in Stocks.All.Where(s => s.Frames.Count == 0 && s.Shape == StockShape.Rectangle))
        {
            var off = LabelLayout.LayOut(text, stock, design: design).LeftOff.Select(l => l.What).ToHashSet();
            var kept = design.Priority.Where(kinds.Contains).Select(k => !off.Contains(k.ToString())).ToList();
            Assert.Equal(kept.OrderDescending(), kept);
            some += kept.Contains(true) && kept.Contains(false) ? 1 : 0;
        }

        Assert.True(some > 0, "no stock was small enough to choose between particulars");
    }

    [Fact]
    public void EveryStock_HasAUsualDesign() => Assert.All(Stocks.All, s => Assert.True(LabelDesigns.Default.For(s).IsUsual));

    private void Write(Action<JsonObject> change)
    {
        var design = Good();
        change(design);
        File.WriteAllText(Path.Combine(_folder, "mine.json"), design.ToJsonString());
    }

    private static void Refused(string expected, Action<JsonObject> change)
    {
        var design = Good();
        change(design);
        var error = Assert.Throws<LabelException>(() => DesignReader.Read(design.ToJsonString(), "mine.json"));

        Assert.StartsWith(expected, error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    /// <summary>The program's own design under another name.</summary>
    private static JsonObject Good()
    {
        var design = JsonNode.Parse(Stockroom.Labels.Files.EmbeddedFile.Text("Designs.label.json"))!.AsObject();
        design["name"] = "mine";
        return design;
    }
}
