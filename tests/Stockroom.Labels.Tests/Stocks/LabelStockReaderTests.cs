using System.Text.Json.Nodes;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Stocks;

public sealed class LabelStockReaderTests
{
    private const string Good = """
        {
          "name": "a4-2x4", "description": "sheet for the tests", "page_width_mm": 210, "page_height_mm": 297,
          "columns": 2, "rows": 4, "label_width_mm": 99.1, "label_height_mm": 67.7, "left_mm": 4.65, "top_mm": 13.1,
          "pitch_x_mm": 101.6, "pitch_y_mm": 67.7, "corner_mm": 3, "padding_mm": 3.5,
          "medium": "sheet", "shape": "rectangle", "diameter_mm": null
        }
        """;

    public static TheoryData<string> Members() => [.. JsonNode.Parse(Good)!.AsObject().Select(m => m.Key)];

    [Fact]
    public void GoodFile_IsRead()
    {
        var stock = LabelStockReader.Read(Good, "a4-2x4.json");

        Assert.Equal(8, stock.PerSheet);
        Assert.Equal(99.1, stock.LabelWidthMm);
        Assert.Equal(3.5, stock.PaddingMm);
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void MissingMember_IsRefused(string member)
    {
        var json = JsonNode.Parse(Good)!.AsObject();
        json.Remove(member);

        Assert.Equal($"a4-2x4.json: member '{member}': missing", Error(json.ToJsonString()));
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void MemberOfTheWrongKind_IsRefused(string member)
    {
        var json = JsonNode.Parse(Good)!.AsObject();
        json[member] = new JsonArray();

        Assert.StartsWith($"a4-2x4.json: member '{member}': [] is not a", Error(json.ToJsonString()), StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownMember_IsRefused() =>
        Assert.StartsWith("a4-2x4.json: member 'colour': unknown; the members are name, description", Error(With("colour", "red")), StringComparison.Ordinal);

    [Fact]
    public void RepeatedMember_IsRefused() =>
        Assert.Equal("a4-2x4.json: member 'rows': stands there twice", Error(Good.Replace("\"rows\": 4,", "\"rows\": 4, \"rows\": 4,")));

    [Fact]
    public void NoJson_IsRefusedWithItsLine()
    {
        var error = Error("{\n \"name\": a4 }");

        Assert.StartsWith("a4-2x4.json: not JSON, line 2: ", error, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error);
    }

    [Fact]
    public void ListInPlaceOfAnObject_IsRefused() => Assert.Equal("a4-2x4.json: a stock is one JSON object, not array", Error("[]"));

    [Theory]
    [InlineData("columns", 3, "the last of 3 columns ends at 306.95 mm, beyond the page's right edge at 210")]
    [InlineData("rows", 5, "the last of 5 rows ends at 351.6 mm, beyond the page's bottom edge at 297")]
    [InlineData("columns", 0, "0 is not a whole number from 1 to 200")]
    [InlineData("rows", 1.5, "1.5 is not a whole number from 1 to 200")]
    [InlineData("left_mm", -1, "-1 is outside 0 to 2000 mm")]
    [InlineData("label_width_mm", 0, "0 is outside 1 to 2000 mm")]
    [InlineData("page_height_mm", 5000, "5000 is outside 1 to 2000 mm")]
    [InlineData("pitch_x_mm", 90, "90 is less than label_width_mm 99.1: neighbouring labels overlap")]
    [InlineData("pitch_y_mm", 60, "60 is less than label_height_mm 67.7: neighbouring labels overlap")]
    [InlineData("corner_mm", 40, "40 is more than half of the label's shorter side, 67.7")]
    [InlineData("padding_mm", 34, "34 leaves nothing of the label's shorter side, 67.7")]
    public void ImpossibleGeometry_IsRefused(string member, double value, string why) =>
        Assert.Equal($"a4-2x4.json: member '{member}': {why}", Error(With(member, value)));

    [Theory]
    [InlineData("medium", "fanfold", "member 'medium': 'fanfold' is not one of sheet, die-cut roll, continuous roll")]
    [InlineData("shape", "oval", "member 'shape': 'oval' is not one of rectangle, disc, wrap, flag, card")]
    [InlineData("shape", "disc", "member 'label_height_mm': 67.7 differs from label_width_mm 99.1: a disc is round")]
    [InlineData("shape", "wrap", "member 'diameter_mm': null, but a wrap or flag goes round a vessel: give its diameter")]
    [InlineData("medium", "die-cut roll", "member 'rows': a roll is printed label by label: columns and rows are 1")]
    public void ImpossibleKind_IsRefused(string member, string value, string why) => Assert.Equal("a4-2x4.json: " + why, Error(With(member, value)));

    [Theory]
    [InlineData("wrap", 31, "member 'label_width_mm': 99.1 does not go round 31 mm; at least 99.4 with 2 mm of overlap")]
    [InlineData("flag", 27, "member 'label_width_mm': 99.1 leaves no flag round 27 mm; at least 100.8 for flags of 8 mm")]
    [InlineData("rectangle", 20, "member 'diameter_mm': 20 is for wrap and flag only; null for this shape")]
    [InlineData("flag", 1, "member 'diameter_mm': 1 is outside 2 to 2000 mm")]
    public void VesselThatTheLabelDoesNotGoRound_IsRefused(string shape, double diameter, string why)
    {
        var json = JsonNode.Parse(With("shape", shape))!.AsObject();
        json["diameter_mm"] = diameter;

        Assert.Equal("a4-2x4.json: " + why, Error(json.ToJsonString()));
    }

    [Fact]
    public void PrintAreas_FollowTheShape()
    {
        // Geometry: pi d round a vessel, d / sqrt 2 the square in a circle.
        LabelStock Of(string shape, double? diameter, double width, double height)
        {
            var json = JsonNode.Parse(With("shape", shape))!.AsObject();
            (json["diameter_mm"], json["label_width_mm"], json["label_height_mm"]) = (diameter, width, height);
            return LabelStockReader.Read(json.ToJsonString(), "a4-2x4.json");
        }

        var flag = Of("flag", 10, 99.1, 20).PrintAreas;
        Assert.Equal(2, flag.Count);
        Assert.All(flag, f => Assert.Equal((99.1 - 31.41593) / 2, f.Width, 4));
        Assert.Equal(31.41593, flag[1].Left - flag[0].Right, 4);
        Assert.Equal(62.831853, Assert.Single(Of("wrap", 20, 70, 20).PrintAreas).Width, 4);
        var disc = Assert.Single(Of("disc", null, 40, 40).PrintAreas);
        Assert.Equal(28.28427, disc.Width, 4);
        Assert.Equal(20, disc.Left + (disc.Width / 2), 4);
    }

    [Fact]
    public void NameWithOtherCharacters_IsRefused() =>
        Assert.Equal("a4-2x4.json: member 'name': 'A4 2x4' may hold lower-case letters, digits and hyphens only", Error(With("name", "A4 2x4")));

    [Fact]
    public void NameThatDiffersFromTheFile_IsRefused() =>
        Assert.Equal("a4-2x4.json: member 'name': 'a4-1x1' differs from the file's name 'a4-2x4'", Error(With("name", "a4-1x1")));

    private static string With(string member, JsonNode value)
    {
        var json = JsonNode.Parse(Good)!.AsObject();
        json[member] = value;
        return json.ToJsonString();
    }

    private static string Error(string json) => Assert.Throws<LabelException>(() => LabelStockReader.Read(json, "a4-2x4.json")).Message;
}
