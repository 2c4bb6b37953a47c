namespace Stockroom.Labels.Sheets;

/// <summary>A size of paper and the margin that stays white.</summary>
public sealed record SheetPaper(string Name, double WidthMm, double HeightMm, double MarginMm)
{
    public static SheetPaper A4 { get; } = new("a4", 210, 297, 13);

    public static SheetPaper Letter { get; } = new("letter", 215.9, 279.4, 13);

    public static IReadOnlyList<SheetPaper> All { get; } = [A4, Letter];
}
