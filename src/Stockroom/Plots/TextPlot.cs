using Stockroom.Desk;

namespace Stockroom.Plots;

/// <summary>A curve in plain characters, seventy columns wide: for a terminal, a screen reader's eye, a mail.</summary>
internal static class TextPlot
{
    private const int Width = 70;
    private const int Height = 17;
    private const int Gutter = 9;

    public static IReadOnlyList<string> Lines(ForecastCurve curve)
    {
        var top = Math.Max(curve.Points.Max(p => p.High), curve.Weighed.Count > 0 ? curve.Weighed.Max(w => w.Grams) : 0);
        var from = curve.Points[0].On.DayNumber;
        if (curve.Weighed.Count > 0)
            from = Math.Min(from, curve.Weighed.Min(w => w.On.DayNumber));
        var to = Math.Max(curve.Points[^1].On.DayNumber, from + 1);
        var grid = Grid();
        int Column(DateOnly day) => (int)Math.Round((double)(day.DayNumber - from) / (to - from) * (Width - Gutter - 1));
        int Row(double grams) => Height - 1 - (int)Math.Round(Math.Clamp(grams / top, 0, 1) * (Height - 1));
        foreach (var (_, grams) in curve.Limits.Where(l => l.Grams <= top))
            Fill(grid[Row(grams)], '-');
        for (var column = 0; column < Width - Gutter; column++)
        {
            var day = DateOnly.FromDayNumber(from + (int)Math.Round((double)column / (Width - Gutter - 1) * (to - from)));
            if (At(curve.Points, day) is not { } p)
                continue;
            for (var row = Row(p.High); row <= Row(p.Low); row++)
                grid[row][column] = ':';
            grid[Row(p.Expected)][column] = '#';
        }

        if (curve.Today.DayNumber >= from && curve.Today.DayNumber <= to)
            grid[Height - 1][Column(curve.Today)] = '^';
        foreach (var (on, grams) in curve.Weighed)
            grid[Row(grams)][Column(on)] = 'o';
        var lines = new List<string> { curve.Title };
        for (var row = 0; row < Height; row++)
        {
            var label = row % 4 == 0 ? $"{Words.Number(top * (Height - 1 - row) / (Height - 1))} g" : "";
            lines.Add($"{label,Gutter - 1} {new string(grid[row]).TrimEnd()}");
        }

        var (first, last) = ($"{DateOnly.FromDayNumber(from):yyyy-MM-dd}", $"{DateOnly.FromDayNumber(to):yyyy-MM-dd}");
        lines.Add(new string(' ', Gutter) + first + last.PadLeft(Width - Gutter - first.Length));
        lines.Add("# expected left  : band  o weighed  - limits (90, 50, 10 % left)  ^ today");
        return lines;
    }

    private static char[][] Grid()
    {
        var grid = new char[Height][];
        for (var row = 0; row < Height; row++)
        {
            grid[row] = new char[Width - Gutter];
            Fill(grid[row], ' ');
        }

        return grid;
    }

    private static void Fill(char[] row, char with) => Array.Fill(row, with);

    // Between two days of the curve by a straight line; nothing before it begins.
    private static CurvePoint? At(IReadOnlyList<CurvePoint> points, DateOnly day)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (day < a.On || day > b.On)
                continue;
            var x = (double)(day.DayNumber - a.On.DayNumber) / Math.Max(1, b.On.DayNumber - a.On.DayNumber);
            return new CurvePoint(day, a.Low + (x * (b.Low - a.Low)), a.Expected + (x * (b.Expected - a.Expected)), a.High + (x * (b.High - a.High)));
        }

        return null;
    }
}
