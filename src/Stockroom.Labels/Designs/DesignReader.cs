using Stockroom.Labels.Files;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Designs;

/// <summary>Reads one design file strictly: every member once, none unknown, every part placed and ranked once.</summary>
public static class DesignReader
{
    private const double LongestMm = 2000;

    private static readonly Dictionary<string, DesignLayout> Layouts = new(StringComparer.Ordinal)
    {
        ["full"] = DesignLayout.Full,
        ["mark"] = DesignLayout.Mark,
    };

    private static readonly Dictionary<string, CodePlace> CodePlaces = new(StringComparer.Ordinal)
    {
        ["top right"] = CodePlace.TopRight,
        ["right"] = CodePlace.Right,
        ["bottom"] = CodePlace.Bottom,
    };

    private static readonly string[] Members =
    [
        "name", "description", "layout", "shapes", "usual", "least_width_mm", "least_height_mm", "smaller", "code_at", "head", "hazards", "foot",
        "always", "priority", "name_room_of_height", "name_room_alone_of_height", "sizes",
    ];

    private static readonly string[] SizeMembers =
        ["name", "name_alone", "formula", "warnings", "signal_word", "statements", "details", "details_alone", "pictograms", "code"];

    /// <summary>The design that the text describes.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="file">Its name, for messages; without folder and extension it is the design's name.</param>
    /// <exception cref="LabelException">One line naming file, member, value and what would be right.</exception>
    public static Design Read(string json, string file)
    {
        using var document = LabelFiles.Json(json, file);
        var m = new StrictMembers(document.RootElement, file, "a design", Members);
        var design = new Design
        {
            Name = m.Name("name"),
            Description = m.Text("description"),
            Layout = m.Word("layout", Layouts),
            Shapes = m.Words("shapes", LabelStockReader.Shapes),
            IsUsual = m.Flag("usual"),
            LeastWidthMm = m.Length("least_width_mm", 0, LongestMm),
            LeastHeightMm = m.Length("least_height_mm", 0, LongestMm),
            Smaller = m.TextOrNull("smaller"),
            CodeAt = m.Words("code_at", CodePlaces),
            Head = m.Words("head", LabelParts.Words),
            Hazards = m.Words("hazards", LabelParts.Words),
            Foot = m.Words("foot", LabelParts.Words),
            Always = m.Words("always", LabelParts.Words),
            Priority = m.Words("priority", LabelParts.Words),
            NameRoom = m.Share("name_room_of_height"),
            NameRoomAlone = m.Share("name_room_alone_of_height"),
            Sizes = Sizes(m, file),
        };
        DesignCheck.Check(design, m);
        return design;
    }

    private static DesignSizes Sizes(StrictMembers members, string file)
    {
        var sizes = new StrictMembers(members.Element("sizes"), file, "the sizes", SizeMembers, path: "sizes.");
        return new DesignSizes
        {
            Name = Size(sizes, "name", file),
            NameAlone = Size(sizes, "name_alone", file),
            Formula = Size(sizes, "formula", file),
            Warnings = Size(sizes, "warnings", file),
            SignalWord = Size(sizes, "signal_word", file),
            Statements = Size(sizes, "statements", file),
            Details = Size(sizes, "details", file),
            DetailsAlone = Size(sizes, "details_alone", file),
            Pictograms = Size(sizes, "pictograms", file),
            Code = Size(sizes, "code", file),
        };
    }

    private static DesignSize Size(StrictMembers sizes, string member, string file)
    {
        var m = new StrictMembers(sizes.Element(member), file, "a size", ["of_height", "of_width", "least_mm", "most_mm"], path: $"sizes.{member}.");
        var size = new DesignSize(m.Share("of_height"), m.Share("of_width"), m.Length("least_mm", 0.1, LongestMm), m.Length("most_mm", 0.1, LongestMm));
        return size.LeastMm <= size.MostMm
            ? size
            : throw m.Wrong("least_mm", $"{size.LeastMm} is more than most_mm {size.MostMm}");
    }
}
