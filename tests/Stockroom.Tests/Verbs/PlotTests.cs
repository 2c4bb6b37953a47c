using System.Xml.Linq;
using SkiaSharp;

namespace Stockroom.Tests.Verbs;

/// <summary>A forecast drawn into a file or the terminal.</summary>
public sealed class PlotTests : IDisposable
{
    private static readonly string[] Bromine =
        ["forecast", "--content", "bromine", "--amount", "20 mL", "--vessel", "glass reagent bottle 100 mL", "--closure", "plain polypropylene screw cap"];

    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    private string At(string file) => Path.Combine(_keeper.Folder, file);

    [Fact]
    public void Plot_Png_IsAPictureWithACurveAndABand()
    {
        _keeper.Run([.. Bromine, "--plot", At("a.png")]).Done();
        using var picture = SKBitmap.Decode(At("a.png"));
        Assert.Equal((1200, 720), (picture.Width, picture.Height));
        var colours = new Dictionary<SKColor, int>();
        for (var x = 0; x < picture.Width; x += 2)
        {
            for (var y = 0; y < picture.Height; y += 2)
                colours[picture.GetPixel(x, y)] = colours.GetValueOrDefault(picture.GetPixel(x, y)) + 1;
        }

        // White ground and the pale blue of the band are the two commonest; the line itself is dark.
        var common = colours.OrderByDescending(c => c.Value).Take(2).Select(c => c.Key).ToList();
        Assert.Contains(SKColors.White, common);
        Assert.Contains(common, c => c.Blue > c.Red + 15 && colours[c] > 10_000);
        Assert.True(colours.GetValueOrDefault(new SKColor(0, 92, 148)) > 300, "the curve is missing");
    }

    [Fact]
    public void Plot_Svg_IsWellFormedAndNamesTheLimits()
    {
        var id = _keeper.IdOf("n-hexane");
        _keeper.Run("forecast", id, "--plot", At("a.svg")).Done();
        var svg = XDocument.Load(At("a.svg"));
        Assert.Equal("svg", svg.Root!.Name.LocalName);
        var words = string.Join('|', svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value.Trim()));
        foreach (var word in new[] { "90 % left", "50 % left", "10 % left", "expected", "band", "weighed", "today" })
            Assert.Contains(word, words, StringComparison.Ordinal);
    }

    [Fact]
    public void Plot_WithJson_PrintsTheDocumentAlone()
    {
        var json = _keeper.Run([.. Bromine, "--plot", At("b.svg"), "--json"]).Done().Json;
        Assert.True(json.TryGetProperty("loss_g_per_year", out _));
        Assert.True(File.Exists(At("b.svg")));
    }

    [Fact]
    public void Plot_Terminal_IsSeventyColumnsOfPlainCharacters()
    {
        var lines = _keeper.Run("forecast", _keeper.IdOf("n-hexane"), "--plot", "-").Done().OutLines;
        Assert.All(lines.Skip(1).Take(18), l => Assert.True(l.Length <= 70, l));
        Assert.All(string.Concat(lines), c => Assert.InRange(c, ' ', '~'));
        Assert.Contains(lines, l => l.Contains('#'));
        Assert.Contains(lines.Skip(1).Take(17), l => l.Contains('o'));
        Assert.Contains("band", lines[^1], StringComparison.Ordinal);
        Assert.Equal(lines, _keeper.Run("forecast", _keeper.IdOf("n-hexane"), "--chart").Done().OutLines);
    }

    // The curve falls: each row further down begins no further left than the one above.
    [Fact]
    public void Plot_Terminal_FallsFromLeftToRight()
    {
        var rows = _keeper.Run([.. Bromine, "--plot", "-"]).Done().OutLines.Skip(1).Take(17).Select(l => l.IndexOf('#')).Where(i => i >= 0).ToList();
        Assert.True(rows.Count > 5);
        Assert.Equal(rows.Order(), rows);
    }

    [Fact]
    public void Explain_Json_ListsEveryWayOutWithItsEquation()
    {
        var json = _keeper.Run([.. Bromine, "--explain", "--json"]).Done().Json;
        var explain = json.GetProperty("explain").EnumerateArray().ToList();
        Assert.Equal(json.GetProperty("paths").GetArrayLength(), explain.Count);
        Assert.All(explain, e => Assert.False(string.IsNullOrEmpty(e.GetProperty("equation").GetString())));
        Assert.Contains(explain, e => e.GetProperty("joined").GetString() == "in parallel" && e.GetProperty("resistance_s_per_m3").GetDouble() > 0);
    }

    // l^2/(6 D) of 1.2 mm and 1e-12 m2/s: 2.78 days. Crank, The Mathematics of Diffusion, 2nd ed., section 4.3.3.
    [Fact]
    public void Explain_PlasticBottle_GivesTheLagOfWallAndLiner()
    {
        string[] toluene = ["forecast", "--content", "toluene", "--amount", "100 mL", "--vessel", "HDPE bottle 125 mL", "--closure", "HDPE screw cap", "--explain"];
        var json = _keeper.Run([.. toluene, "--json"]).Done().Json;
        var wall = json.GetProperty("explain").EnumerateArray().Single(e => e.GetProperty("path").GetString() == "through the wall").GetProperty("lags").EnumerateArray().Single();
        Assert.Equal(2.78, wall.GetProperty("days").GetProperty("expected").GetDouble(), 0.01);
        Assert.False(string.IsNullOrEmpty(wall.GetProperty("source").GetString()));
        Assert.Contains("eq. 4.24", json.GetProperty("network").GetProperty("lag_source").GetString(), StringComparison.Ordinal);
        Assert.Empty(json.GetProperty("explain").EnumerateArray().First().GetProperty("lags").EnumerateArray());
        var lines = _keeper.Run(toluene).Done().OutLines;
        Assert.Equal(2, lines.Count(l => l.StartsWith("  lag L of toluene", StringComparison.Ordinal)));
        Assert.Single(lines, l => l.StartsWith("lag: ", StringComparison.Ordinal));
        Assert.Single(lines, l => l.Contains("not soaked through", StringComparison.Ordinal));
    }

    [Fact]
    public void Air_Json_SaysWhichSpaceLimitOxygenAndBreakage()
    {
        var air = _keeper.Run([.. Bromine, "--place", "refrigerator", "--json"]).Done().Json.GetProperty("air");
        Assert.Equal("cabinet", air.GetProperty("space").GetString());
        Assert.True(air.GetProperty("ppm").GetDouble() > air.GetProperty("room").GetProperty("ppm").GetDouble());
        Assert.Equal(0.1, air.GetProperty("limit_ppm").GetDouble(), 1e-6); // 29 CFR 1910.1000: bromine 0.1 ppm
        Assert.InRange(air.GetProperty("oxygen_percent").GetDouble(), 20.9, 20.95);
        Assert.True(air.GetProperty("breakage").GetProperty("share_of_immediately_dangerous").GetDouble() > 1000);
        Assert.Contains("is not a kind of place", _keeper.Run([.. Bromine, "--place", "attic"]).Refused(2), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a drawing is written as .svg or .png, not 'a.pdf'", 2, "a.pdf")]
    [InlineData("a drawing is written as .svg or .png, not 'curve'", 2, "curve")]
    public void Plot_OtherEndings_AreRefusedAndWriteNothing(string words, int code, string file)
    {
        Assert.Contains(words, _keeper.Run([.. Bromine, "--plot", file]).Refused(code), StringComparison.Ordinal);
        Assert.Contains("no room for a drawing", _keeper.Run([.. Bromine, "--plot", "-", "--json"]).Refused(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Plot_FolderThatIsNotThere_IsRefusedInOneLine()
    {
        var answer = _keeper.Run([.. Bromine, "--plot", At("none/a.svg")]);
        Assert.NotEqual(0, answer.Code);
        Assert.Contains("there is no folder", answer.ErrorLine, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(_keeper.Folder, "*.part", SearchOption.AllDirectories));
    }
}
