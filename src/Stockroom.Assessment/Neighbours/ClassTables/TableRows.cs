namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>Which rows of a transport table a class counts in, main hazard first.</summary>
internal static class TableRows
{
    public static IReadOnlyList<string> Of(ClassTable table, GoodsClass goods, bool isLiquid) =>
        [.. goods.Hazards.Select(c => table == ClassTable.Road ? Road(c, goods, isLiquid) : c).OfType<string>().Distinct(StringComparer.Ordinal)];

    // The road table has rows for some of the poisons and for liquid corrosives alone.
    private static string? Road(string hazard, GoodsClass goods, bool isLiquid) => hazard switch
    {
        "1.1" or "1.2" => "1.1-1.2",
        "2.3" => goods.Zone switch { "B" => "2.3 B", "C" or "D" => null, _ => "2.3 A" },
        "6.1" => isLiquid && goods.Zone == "A" ? "6.1 I A liquid" : null,
        "8" => isLiquid ? "8 liquid" : null,
        "6.2" or "9" => null,
        _ => hazard,
    };
}
