using System.Globalization;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>
/// A page that shows where a printer puts things: the outline of every label, to be held against the sheet, and in the first label
/// rulers along both edges, on which the true edge of the label shows how far the print is off.
/// </summary>
public static class CalibrationPage
{
    private const double FineMm = 0.1;
    private const double TypeMm = 2;
    private const int MostTicks = 10;

    public static Drawing Of(LabelStock stock)
    {
        var items = new List<DrawingItem>();
        for (var i = 0; i < stock.PerSheet; i++)
        {
            var box = stock.LabelBox(i);
            items.Add(new StrokedPath(new PathBuilder().RoundedRectangle(box, stock.CornerMm).Build(), Ink.Black, FineMm));
            foreach (var area in stock.PrintAreas.Where(a => a.Width < stock.LabelWidthMm - 0.001))
            {
                items.Add(new StrokedPath(new PathBuilder().Rectangle(area.Offset(box.Left, box.Top)).Build(), Ink.Black, FineMm / 2));
            }
        }

        var first = stock.LabelBox(0);
        Ruler(items, first, across: true);
        Ruler(items, first, across: false);
        Words(items, stock, first);
        return new Drawing(stock.PageWidthMm, stock.PageHeightMm, items);
    }

    /// <summary>Marks every millimetre inwards from the first label's edge, the fifth longer.</summary>
    private static void Ruler(List<DrawingItem> items, Box label, bool across)
    {
        var (length, depth) = across ? (label.Width, label.Height) : (label.Height, label.Width);
        var ticks = (int)Math.Min(MostTicks, length / 2);
        for (var mm = 1; mm <= ticks; mm++)
        {
            var tick = Math.Min(mm % 5 == 0 ? 3 : 1.5, depth / 4);
            var middle = depth / 2;
            var path = across
                ? new PathBuilder().Move(label.Left + mm, label.Top + middle).Line(label.Left + mm, label.Top + middle + tick)
                : new PathBuilder().Move(label.Left + middle, label.Top + mm).Line(label.Left + middle + tick, label.Top + mm);
            items.Add(new StrokedPath(path.Build(), Ink.Black, FineMm));
        }
    }

    /// <summary>How to read it, where there is room.</summary>
    private static void Words(List<DrawingItem> items, LabelStock stock, Box first)
    {
        string[] lines =
        [
            string.Create(CultureInfo.InvariantCulture, $"{stock.Name}: labels of {stock.LabelWidthMm} x {stock.LabelHeightMm} mm, printed at 100 %."),
            "The ticks are 1 mm apart, from the outline inwards. Where the label's true edge lies 2 mm",
            "inside the outline at the left, print with --offset 2,0; 2 mm outside, with --offset -2,0.",
        ];
        var paragraph = new Paragraph(string.Join(' ', lines), Face.Regular);
        var box = first.Inset(Math.Max(stock.PaddingMm, 1));
        var flow = new FlowArea(box with { Height = Math.Max(0, (first.Height / 2) - Math.Max(stock.PaddingMm, 1) - 1) });
        flow.KeepClearAtRight(new Box(first.Left + (first.Width / 2) - 1, first.Top, first.Width, Math.Min(first.Height, MostTicks + 1)));
        if (flow.Set(paragraph, TypeMm))
        {
            items.AddRange(flow.Drawn());
        }
    }
}
