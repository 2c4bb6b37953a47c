namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>Which rows of a transport table a content counts in, main hazard first.</summary>
internal static class TableRows
{
    public static IReadOnlyList<string> Of(ClassTable table, ContactProfile profile, bool mainOnly)
    {
        var goods = profile.Goods;
        var classes = mainOnly ? goods.Hazards.Take(1) : goods.Hazards;
        return [.. classes.Select(c => table == ClassTable.Road ? Road(c, goods, profile.IsLiquid) : Sea(c)).OfType<string>().Distinct(StringComparer.Ordinal)];
    }

    private static string? Sea(string hazard) => hazard;

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
