namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>Judges two contents by a class table. Where subsidiary hazards ask for more, they count: 49 CFR 177.848(e)(6), IMDG Code 7.2.3.</summary>
internal static class ClassLayer
{
    /// <summary>What the table says.</summary>
    /// <param name="table">Not <see cref="ClassTable.None"/>.</param>
    /// <param name="a">The one content.</param>
    /// <param name="b">The other.</param>
    /// <param name="reactDangerously">True where contact rules keep them in cabinets of their own: contents of one class then lose the waiver of their subsidiary hazards.</param>
    public static ClassJudgement Judge(ClassTable table, ContactProfile a, ContactProfile b, bool reactDangerously) =>
        table == ClassTable.Storage ? ByStorageClass(a, b) : ByTransportClass(table, a, b, reactDangerously);

    private static ClassJudgement ByStorageClass(ContactProfile a, ContactProfile b)
    {
        var (x, y) = (a.Storage, b.Storage);
        if (x.Class is null || y.Class is null)
            return NotKnown(ClassTable.Storage, x.Class, y.Class, x.Because, y.Because, x.Class is null ? x.Because : y.Because);
        var cell = SegregationCells.Find(ClassTable.Storage, x.Class, y.Class)!;
        return Of(ClassTable.Storage, x.Class, y.Class, x.Because, y.Because, cell, x.Class, y.Class) with { Would = ClassConsequences.Of(x.Class, y.Class) };
    }

    private static ClassJudgement ByTransportClass(ClassTable table, ContactProfile a, ContactProfile b, bool reactDangerously)
    {
        var (x, y) = (a.Goods, b.Goods);
        if (!x.IsKnown || !y.IsKnown)
            return NotKnown(table, x.Class, y.Class, a.RowsIn(table).Because, b.RowsIn(table).Because, x.IsKnown ? y.Because : x.Because);
        var sameClass = x.Class == y.Class && !reactDangerously;
        var rowsA = RowsOf(table, a, sameClass);
        var rowsB = RowsOf(table, b, sameClass);
        ClassJudgement? worst = null;
        foreach (var rowA in rowsA)
        {
            foreach (var rowB in rowsB)
            {
                if (SegregationCells.Find(table, rowA, rowB) is not { } cell)
                    continue;
                if (worst is null || cell.Separation > worst.Separation)
                    worst = Of(table, x.Class, y.Class, a.RowsIn(table).Because, b.RowsIn(table).Because, cell, rowA, rowB) with { Would = ClassConsequences.Of(rowA, rowB) };
            }
        }

        if (table == ClassTable.Road && (CyanideWithAcid(a, b) || CyanideWithAcid(b, a)) && worst?.Separation is null or < Separation.OwnCabinet)
            return Of(table, x.Class, y.Class, a.RowsIn(table).Because, b.RowsIn(table).Because, SegregationCells.OfCode(table, "(c)"), null, null) with { Would = ["toxic gas"] };
        return worst ?? Silent(table, a, b);
    }

    private static bool CyanideWithAcid(ContactProfile cyanide, ContactProfile acid) =>
        cyanide.Carries("cyanide") && (acid.Carries("acid") || acid.Carries("mineral-acid") || acid.Carries("organic-acid") || acid.Carries("oxidising-acid"));

    private static ClassJudgement Of(ClassTable table, string? a, string? b, string becauseA, string becauseB, SegregationCell cell, string? rowA, string? rowB) => new()
    {
        Table = table, ClassA = a, ClassB = b, BecauseA = becauseA, BecauseB = becauseB, RowA = rowA, RowB = rowB,
        Code = cell.Code, Meaning = cell.Meaning, Clause = cell.Clause, Separation = cell.Separation, Verified = cell.Verified, Source = cell.Provenance.ToString(),
    };

    // A table without a row for one of the two says nothing of them: silence, not leave.
    private static ClassJudgement Silent(ClassTable table, ContactProfile a, ContactProfile b)
    {
        var blank = SegregationCells.OfCode(table, table == ClassTable.Sea ? "X" : "");
        var without = new[] { a, b }.Where(p => p.RowsIn(table).Labels.Count == 0).Select(p => p.Name).Distinct(StringComparer.Ordinal);
        return Of(table, a.Goods.Class, b.Goods.Class, a.RowsIn(table).Because, b.RowsIn(table).Because, blank, null, null) with
        {
            Code = "",
            Meaning = $"the table has no row for {string.Join(" and ", without)}; its silence is not leave to stand together",
        };
    }

    private static ClassJudgement NotKnown(ClassTable table, string? a, string? b, string becauseA, string becauseB, string why) => new()
    {
        Table = table, ClassA = a, ClassB = b, BecauseA = becauseA, BecauseB = becauseB,
        Code = null, Meaning = $"unknown: {why}; never take it as leave to stand together", Clause = ClassTableWords.Title(table), Separation = null,
    };

    // Contents of one class are judged by that class alone as long as they do not react.
    private static IEnumerable<string> RowsOf(ClassTable table, ContactProfile profile, bool mainOnly) =>
        mainOnly ? profile.RowsIn(table).Labels.Where(l => TableRows.Of(table, profile.Goods with { Subsidiary = [] }, profile.IsLiquid).Contains(l)) : profile.RowsIn(table).Labels;
}
