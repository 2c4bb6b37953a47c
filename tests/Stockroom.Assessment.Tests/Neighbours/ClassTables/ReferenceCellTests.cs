using Stockroom.Assessment.Neighbours.ClassTables;

namespace Stockroom.Assessment.Tests.Neighbours.ClassTables;

/// <summary>Every cell of the class tables against the reference data kept outside the project.</summary>
public sealed class ReferenceCellTests
{
    private static readonly Dictionary<string, string> RoadRows = new(StringComparer.Ordinal)
    {
        ["2.3A"] = "2.3 A", ["2.3B"] = "2.3 B", ["6.1 PG I Zone A liq"] = "6.1 I A liquid", ["8 liq"] = "8 liquid",
    };

    [Fact]
    public void Road_EveryCell_IsReproduced() => Compare(ClassTable.Road, ReferenceTables.Read("us49cfr177_848_matrix.tsv"), "row_key", 18 * 18, s => [RoadRows.GetValueOrDefault(s, s)], c => c == "-" ? "" : c);

    [Fact]
    public void Sea_EveryCell_IsReproduced() => Compare(ClassTable.Sea, ReferenceTables.Read("vessel_176_83_imdg_7_2_4_matrix.tsv"), "class", 20 * 20, s => s.Split(','), c => c);

    [Fact]
    public void Storage_EveryCell_IsReproducedWhereItIsSureAndUnknownElsewhere()
    {
        var codes = new Dictionary<string, string?>(StringComparer.Ordinal) { ["joint"] = "+", ["separate"] = "-", ["restricted"] = "restricted" };
        var rows = ReferenceTables.Read("trgs510_joint_storage.tsv");
        var sure = 0;
        foreach (var row in rows)
        {
            var cell = SegregationCells.Find(ClassTable.Storage, row["lgk_a"], row["lgk_b"])!;
            var known = row["confidence"] == "high" && row["verdict"] != "unknown";
            sure += known ? 1 : 0;
            Assert.Equal(known ? codes[row["verdict"]] : null, cell.Code);
        }

        Assert.Equal(300, rows.Count);
        Assert.True(sure > 50);
    }

    private static void Compare(
        ClassTable table, List<Dictionary<string, string>> rows, string key, int cells, Func<string, string[]> labels, Func<string, string> code)
    {
        var compared = 0;
        foreach (var row in rows)
        {
            foreach (var (column, printed) in row.Where(c => c.Key != key && rows.Exists(r => r[key] == c.Key)))
            {
                foreach (var (a, b) in labels(row[key]).SelectMany(a => labels(column).Select(b => (a, b))))
                {
                    Assert.Equal((a, b, code(printed)), (a, b, SegregationCells.Find(table, a, b)!.Code));
                    compared++;
                }
            }
        }

        Assert.Equal(cells, compared);
    }
}
