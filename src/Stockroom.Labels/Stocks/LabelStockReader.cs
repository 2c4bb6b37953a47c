using System.Text.Json;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Files;

namespace Stockroom.Labels.Stocks;

/// <summary>Reads one stock file strictly: every member once, none unknown, and labels that lie on the page.</summary>
public static class LabelStockReader
{
    /// <summary>Longest page edge taken for real.</summary>
    private const double LongestPageMm = 2000;

    private const int MostLabelsInARow = 200;

    /// <summary>Rounding allowed where printed dimensions add up to the page.</summary>
    private const double Tolerance = 0.05;

    private const double SmallestVesselMm = 2;

    /// <summary>A wrap covers its own beginning by this much, so that it does not open.</summary>
    private const double LeastOverlapMm = 2;

    private const double ShortestFlagMm = 8;

    private static readonly Dictionary<string, StockMedium> Media = new(StringComparer.Ordinal)
    {
        ["sheet"] = StockMedium.Sheet,
        ["die-cut roll"] = StockMedium.DieCutRoll,
        ["continuous roll"] = StockMedium.ContinuousRoll,
    };

    internal static readonly Dictionary<string, StockShape> Shapes = new(StringComparer.Ordinal)
    {
        ["rectangle"] = StockShape.Rectangle,
        ["disc"] = StockShape.Disc,
        ["wrap"] = StockShape.Wrap,
        ["flag"] = StockShape.Flag,
        ["card"] = StockShape.Card,
    };

    /// <summary>Optional: red frames that are printed on the stock already.</summary>
    private const string Frames = "frames";

    private static readonly string[] Members =
    [
        "name", "description", "page_width_mm", "page_height_mm", "columns", "rows", "label_width_mm", "label_height_mm",
        "left_mm", "top_mm", "pitch_x_mm", "pitch_y_mm", "corner_mm", "padding_mm", "medium", "shape", "diameter_mm",
    ];

    /// <summary>The stock that the text describes.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="file">Its name, for messages; without folder and extension it is the stock's name.</param>
    /// <exception cref="LabelException">One line naming file and member.</exception>
    public static LabelStock Read(string json, string file)
    {
        using var document = LabelFiles.Json(json, file);
        var members = new StrictMembers(document.RootElement, file, "a stock", Members, [Frames]);
        var stock = Stock(members) with { Frames = members.Has(Frames) ? FramesOf(members, file) : [] };
        Check(stock, file);
        return stock;
    }

    private static List<StockFrame> FramesOf(StrictMembers members, string file)
    {
        var list = members.Element(Frames);
        if (list.ValueKind != JsonValueKind.Array)
        {
            throw members.Wrong(Frames, $"{list.GetRawText()} is not a list of frames");
        }

        var frames = new List<StockFrame>();
        foreach (var element in list.EnumerateArray())
        {
            var frame = new StrictMembers(element, file, "a frame", ["side_mm", "left_mm", "top_mm"], path: $"{Frames}[{frames.Count}].");
            frames.Add(new StockFrame(frame.Length("side_mm", 1, LongestPageMm), frame.Length("left_mm", 0, LongestPageMm), frame.Length("top_mm", 0, LongestPageMm)));
        }

        return frames;
    }

    private static LabelStock Stock(StrictMembers m) => new()
    {
        Name = m.Name("name"),
        Description = m.Text("description"),
        PageWidthMm = m.Length("page_width_mm", 1, LongestPageMm),
        PageHeightMm = m.Length("page_height_mm", 1, LongestPageMm),
        Columns = m.Count("columns", MostLabelsInARow),
        Rows = m.Count("rows", MostLabelsInARow),
        LabelWidthMm = m.Length("label_width_mm", 1, LongestPageMm),
        LabelHeightMm = m.Length("label_height_mm", 1, LongestPageMm),
        LeftMm = m.Length("left_mm", 0, LongestPageMm),
        TopMm = m.Length("top_mm", 0, LongestPageMm),
        PitchXMm = m.Length("pitch_x_mm", 1, LongestPageMm),
        PitchYMm = m.Length("pitch_y_mm", 1, LongestPageMm),
        CornerMm = m.Length("corner_mm", 0, LongestPageMm),
        PaddingMm = m.Length("padding_mm", 0, LongestPageMm),
        Medium = m.Word("medium", Media),
        Shape = m.Word("shape", Shapes),
        DiameterMm = m.LengthOrNull("diameter_mm", SmallestVesselMm, LongestPageMm),
    };

    private static void CheckShape(LabelStock s, Action<string, bool, string> fits)
    {
        var round = s.Shape is StockShape.Wrap or StockShape.Flag;
        fits("diameter_mm", s.DiameterMm is null != round,
            round ? "null, but a wrap or flag goes round a vessel: give its diameter" : $"{s.DiameterMm} is for wrap and flag only; null for this shape");
        fits("label_height_mm", s.Shape != StockShape.Disc || Math.Abs(s.LabelHeightMm - s.LabelWidthMm) <= Tolerance,
            $"{s.LabelHeightMm} differs from label_width_mm {s.LabelWidthMm}: a disc is round");
        var wrap = s.CircumferenceMm + LeastOverlapMm;
        fits("label_width_mm", s.Shape != StockShape.Wrap || s.LabelWidthMm >= wrap,
            $"{s.LabelWidthMm} does not go round {s.DiameterMm} mm; at least {wrap:0.#} with {LeastOverlapMm} mm of overlap");
        var flag = s.CircumferenceMm + (2 * ShortestFlagMm);
        fits("label_width_mm", s.Shape != StockShape.Flag || s.LabelWidthMm >= flag,
            $"{s.LabelWidthMm} leaves no flag round {s.DiameterMm} mm; at least {flag:0.#} for flags of {ShortestFlagMm} mm");
        fits("rows", s.Medium == StockMedium.Sheet || s.PerSheet == 1, "a roll is printed label by label: columns and rows are 1");
        var inner = Math.Min(s.PrintWidthMm, s.PrintHeightMm);
        fits("padding_mm", s.PaddingMm < inner / 2, $"{s.PaddingMm} leaves nothing of the printed part's shorter side, {inner:0.##}");
    }

    private static void CheckFrames(LabelStock s, Action<string, bool, string> fits)
    {
        var area = new Box(0, 0, s.PrintWidthMm, s.PrintHeightMm);
        for (var i = 0; i < s.Frames.Count; i++)
        {
            var frame = s.Frames[i];
            fits($"{Frames}[{i}]", area.Contains(frame.Box, Tolerance),
                $"a frame of side {frame.SideMm} is {frame.Box.Width:0.#} mm across its points and does not lie on the label");
            fits($"{Frames}[{i}]", !s.Frames.Take(i).Any(f => f.Box.Overlaps(frame.Box)), "lies over another frame");
        }
    }

    private static void Check(LabelStock s, string file)
    {
        Fits("pitch_x_mm", s.Columns == 1 || s.PitchXMm >= s.LabelWidthMm - Tolerance,
            $"{s.PitchXMm} is less than label_width_mm {s.LabelWidthMm}: neighbouring labels overlap");
        Fits("pitch_y_mm", s.Rows == 1 || s.PitchYMm >= s.LabelHeightMm - Tolerance,
            $"{s.PitchYMm} is less than label_height_mm {s.LabelHeightMm}: neighbouring labels overlap");
        var right = s.LeftMm + ((s.Columns - 1) * s.PitchXMm) + s.LabelWidthMm;
        Fits("columns", right <= s.PageWidthMm + Tolerance,
            $"the last of {s.Columns} columns ends at {right:0.##} mm, beyond the page's right edge at {s.PageWidthMm}");
        var bottom = s.TopMm + ((s.Rows - 1) * s.PitchYMm) + s.LabelHeightMm;
        Fits("rows", bottom <= s.PageHeightMm + Tolerance,
            $"the last of {s.Rows} rows ends at {bottom:0.##} mm, beyond the page's bottom edge at {s.PageHeightMm}");
        var shorter = Math.Min(s.LabelWidthMm, s.LabelHeightMm);
        Fits("corner_mm", s.CornerMm <= shorter / 2, $"{s.CornerMm} is more than half of the label's shorter side, {shorter}");
        Fits("padding_mm", s.PaddingMm < shorter / 2, $"{s.PaddingMm} leaves nothing of the label's shorter side, {shorter}");
        CheckShape(s, Fits);
        CheckFrames(s, Fits);

        void Fits(string member, bool good, string otherwise)
        {
            if (!good)
            {
                throw new LabelException($"{file}: member '{member}': {otherwise}");
            }
        }
    }
}
