namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>
/// Where a content counts in a class table: its rows, main hazard first, and as bits the rows against which these ask for anything, or for standing far
/// apart. For asking quickly whether the table can speak of two contents at all.
/// </summary>
internal sealed class ClassRows
{
    private ClassRows(IReadOnlyList<string> labels, string because, ulong rows, ulong partners, ulong farPartners)
    {
        Labels = labels;
        Because = because;
        Rows = rows;
        Partners = partners;
        FarPartners = farPartners;
    }

    public IReadOnlyList<string> Labels { get; }

    /// <summary>How the class was found, a sentence.</summary>
    public string Because { get; }

    private ulong Rows { get; }

    private ulong Partners { get; }

    private ulong FarPartners { get; }

    public static ClassRows Of(ClassTable table, ContactProfile profile)
    {
        IReadOnlyList<string> labels = table == ClassTable.Storage ? [.. new[] { profile.Storage.Class }.OfType<string>()] : TableRows.Of(table, profile.Goods, profile.IsLiquid);
        var because = table == ClassTable.Storage ? profile.Storage.Because : profile.Goods.IsKnown ? $"{profile.Goods}: {profile.Goods.Because}" : profile.Goods.Because;
        var all = SegregationCells.Labels(table);
        ulong rows = 0, partners = 0, far = 0;
        for (var i = 0; i < all.Count; i++)
        {
            if (labels.Contains(all[i]))
                rows |= 1UL << i;
            foreach (var label in labels)
            {
                if (SegregationCells.Find(table, label, all[i])?.Separation is not { } separation)
                    continue;
                partners |= separation > Separation.SameTray ? 1UL << i : 0;
                far |= separation == Separation.FarApart ? 1UL << i : 0;
            }
        }

        return new ClassRows(labels, because, rows, partners, far);
    }

    /// <summary>True where some cell of the two asks for more than nothing.</summary>
    public bool MayConflictWith(ClassRows other) => (Partners & other.Rows) != 0;

    public bool MustStandFarFrom(ClassRows other) => (FarPartners & other.Rows) != 0;
}
