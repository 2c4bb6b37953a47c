using System.Globalization;
using ScottPlot;
using SkiaSharp;
using Stockroom.Labels.Fonts;

namespace Stockroom.Plots;

/// <summary>A curve as a drawing. Touched only when one is asked for, so that no other verb loads the graphics.</summary>
internal static class CurvePicture
{
    private const int Width = 1200;
    private const int Height = 720;
    private const float Scale = 1.5f;

    private static readonly Color Ink = new(38, 43, 51);
    private static readonly Color Faint = new(205, 210, 218);
    private static readonly Color Curve = new(0, 92, 148);
    private static readonly Color Weighed = new(196, 78, 0);

    public static byte[] Png(ForecastCurve curve)
    {
        using var surface = SKSurface.Create(new SKImageInfo(Width, Height));
        Draw(curve, surface.Canvas, Scale);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    public static byte[] Svg(ForecastCurve curve)
    {
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, Width / Scale, Height / Scale), stream))
            Draw(curve, canvas, 1);
        return stream.ToArray();
    }

    private static void Draw(ForecastCurve curve, SKCanvas canvas, float scale)
    {
        OwnFont.Use();
        canvas.Clear(SKColors.White);
        canvas.Scale(scale);
        using var plot = Plot(curve);
        plot.Render(canvas, (int)(Width / Scale), (int)(Height / Scale));
    }

    private static Plot Plot(ForecastCurve curve)
    {
        var plot = new Plot();
        plot.Font.Set(LabelFont.Family);
        var days = curve.Points.Select(p => Day(p.On)).ToArray();
        var band = plot.Add.FillY(days, [.. curve.Points.Select(p => p.Low)], [.. curve.Points.Select(p => p.High)]);
        band.FillColor = Curve.WithAlpha(0.16);
        band.LineWidth = 0;
        band.LegendText = "band";
        foreach (var (name, grams) in curve.Limits)
            Limit(plot, name, grams, days[^1]);
        var line = plot.Add.ScatterLine(days, curve.Points.Select(p => p.Expected).ToArray(), Curve);
        line.LineWidth = 2.5f;
        line.LegendText = "expected";
        if (curve.Weighed.Count > 0)
        {
            var points = plot.Add.ScatterPoints(curve.Weighed.Select(w => Day(w.On)).ToArray(), curve.Weighed.Select(w => w.Grams).ToArray(), Weighed);
            points.MarkerSize = 9;
            points.MarkerShape = MarkerShape.FilledCircle;
            points.LegendText = "weighed";
        }

        Frame(plot, curve, days);
        return plot;
    }

    private static void Limit(Plot plot, string name, double grams, double at)
    {
        var limit = plot.Add.HorizontalLine(grams);
        limit.LinePattern = LinePattern.Dashed;
        limit.LineWidth = 1;
        limit.LineColor = Ink.WithAlpha(0.45);
        var words = plot.Add.Text(name, at, grams);
        words.LabelFontSize = 12;
        words.LabelFontColor = Ink.WithAlpha(0.7);
        words.LabelFontName = LabelFont.Family;
        words.LabelAlignment = Alignment.LowerRight;
        words.OffsetX = -4;
        words.OffsetY = -2;
    }

    private static void Frame(Plot plot, ForecastCurve curve, double[] days)
    {
        var today = plot.Add.VerticalLine(Day(curve.Today));
        today.LineColor = Ink.WithAlpha(0.35);
        today.LineWidth = 1;
        today.LegendText = "today";
        plot.Axes.DateTimeTicksBottom().TickGenerator = new ScottPlot.TickGenerators.DateTimeAutomatic { LabelFormatter = Year(days) };
        plot.Axes.Bottom.TickLabelStyle.FontName = LabelFont.Family;
        plot.Axes.Title.Label.Text = curve.Title;
        plot.Axes.Title.Label.FontSize = 18;
        plot.Axes.Title.Label.ForeColor = Ink;
        plot.Axes.Title.Label.Bold = true;
        plot.Axes.Title.Label.FontName = LabelFont.Family;
        plot.YLabel("left, g", 14);
        plot.Axes.Left.Label.ForeColor = Ink;
        plot.Axes.Left.Label.Bold = false;
        plot.Grid.MajorLineColor = Faint;
        plot.FigureBackground.Color = Colors.White;
        plot.ShowLegend(Alignment.LowerLeft);
        plot.Legend.FontName = LabelFont.Family;
        plot.Legend.FontSize = 13;
        plot.Legend.OutlineColor = Faint;
        plot.Legend.ShadowColor = Colors.Transparent;
        var top = Math.Max(curve.Points.Max(p => p.High), curve.Weighed.Count > 0 ? curve.Weighed.Max(w => w.Grams) : 0);
        var first = curve.Weighed.Count > 0 ? Math.Min(days[0], curve.Weighed.Min(w => Day(w.On))) : days[0];
        var margin = (days[^1] - first) * 0.015;
        plot.Axes.SetLimits(first - margin, days[^1] + margin, 0, top * 1.1);
    }

    // Long courses by years, short ones by days.
    private static Func<DateTime, string> Year(double[] days)
    {
        var form = (days[^1] - days[0]) switch { > 14 * 365 => "yyyy", > 2 * 365 => "yyyy-MM", _ => "yyyy-MM-dd" };
        return d => d.ToString(form, CultureInfo.InvariantCulture);
    }

    private static double Day(DateOnly day) => day.ToDateTime(TimeOnly.MinValue).ToOADate();
}
