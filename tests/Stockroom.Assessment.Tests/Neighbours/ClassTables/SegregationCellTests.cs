using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;

namespace Stockroom.Assessment.Tests.Neighbours.ClassTables;

public sealed class SegregationCellTests
{
    // Source: 49 CFR 177.848(d), the rows read; empty is a blank cell.
    [Theory]
    [InlineData("3", "5.1", "O", Separation.OwnTray)]
    [InlineData("3", "6.1 I A liquid", "X", Separation.OwnCabinet)]
    [InlineData("4.2", "8 liquid", "X", Separation.OwnCabinet)]
    [InlineData("4.3", "8 liquid", "O", Separation.OwnTray)]
    [InlineData("5.1", "8 liquid", "O", Separation.OwnTray)]
    [InlineData("5.2", "2.3 A", "X", Separation.OwnCabinet)]
    [InlineData("2.1", "2.3 B", "O", Separation.OwnTray)]
    [InlineData("2.1", "2.2", "", Separation.SameTray)]
    [InlineData("3", "8 liquid", "", Separation.SameTray)]
    [InlineData("1.1-1.2", "3", "X", Separation.OwnCabinet)]
    [InlineData("1.4", "3", "O", Separation.OwnTray)]
    [InlineData("1.3", "1.5", "*", Separation.OwnCabinet)]
    public void Find_RoadCell_IsAsPrinted(string a, string b, string code, Separation separation) => AssertCell(ClassTable.Road, a, b, code, separation);

    // Source: IMDG Code 7.2.4, classic table, the rows read.
    [Theory]
    [InlineData("3", "5.1", "2", Separation.OwnCabinet)]
    [InlineData("3", "2.1", "2", Separation.OwnCabinet)]
    [InlineData("4.2", "8", "1", Separation.OwnTray)]
    [InlineData("5.1", "8", "2", Separation.OwnCabinet)]
    [InlineData("1.3", "4.1", "3", Separation.FarApart)]
    [InlineData("1.2", "5.2", "4", Separation.FarApart)]
    [InlineData("6.2", "3", "3", Separation.FarApart)]
    [InlineData("3", "6.1", "X", Separation.SameTray)]
    [InlineData("9", "5.1", "X", Separation.SameTray)]
    [InlineData("1.4", "1.6", "*", Separation.OwnCabinet)]
    public void Find_SeaCell_IsAsPrinted(string a, string b, string code, Separation separation) => AssertCell(ClassTable.Sea, a, b, code, separation);

    // Source: the insurers' question-and-answer text on TRGS 510 for storage class 3.
    [Theory]
    [InlineData("3", "5.1A", "-", Separation.OwnCabinet)]
    [InlineData("3", "2A", "-", Separation.OwnCabinet)]
    [InlineData("3", "4.3", "-", Separation.OwnCabinet)]
    [InlineData("1", "13", "-", Separation.OwnCabinet)]
    [InlineData("3", "6.1B", "-", Separation.OwnCabinet)]
    public void Find_StorageCellThatWasRead_IsAsPrinted(string a, string b, string code, Separation separation) => AssertCell(ClassTable.Storage, a, b, code, separation);

    [Theory]
    [InlineData("2A", "6.1C")]
    [InlineData("5.1B", "8B")]
    [InlineData("6.1A", "8A")]
    public void Find_StorageCellThatWasNotRead_IsUnknownAndNoLeave(string a, string b)
    {
        var cell = SegregationCells.Find(ClassTable.Storage, a, b)!;
        Assert.Null(cell.Code);
        Assert.Null(cell.Separation);
        Assert.StartsWith("unknown", cell.Meaning, StringComparison.Ordinal);
    }

    // Believed changed to 2: the classic code is shown, the stricter distance counts.
    [Theory]
    [InlineData("2.1", "4.3", "X")]
    [InlineData("2.3", "4.3", "X")]
    [InlineData("3", "4.3", "1")]
    public void Find_SeaCellBelievedChanged_TakesTheStricter(string a, string b, string code)
    {
        var cell = SegregationCells.Find(ClassTable.Sea, a, b)!;
        Assert.Equal(code, cell.Code);
        Assert.Equal(Separation.OwnCabinet, cell.Separation);
        Assert.Contains("later amendment", cell.Meaning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ClassTable.Road, 18)]
    [InlineData(ClassTable.Sea, 20)]
    [InlineData(ClassTable.Storage, 24)]
    public void Labels_EveryPair_HasItsCellEitherWayRound(ClassTable table, int count)
    {
        var labels = SegregationCells.Labels(table);
        Assert.Equal(count, labels.Count);
        foreach (var a in labels)
        {
            foreach (var b in labels)
                Assert.Same(SegregationCells.Find(table, a, b), SegregationCells.Find(table, b, a));
        }
    }

    [Fact]
    public void StorageFlow_EveryClassItEndsIn_HasItsRow() => 
        Assert.All(StorageClassFlow.Classes, c => Assert.Contains(c, SegregationCells.Labels(ClassTable.Storage)));

    private static void AssertCell(ClassTable table, string a, string b, string code, Separation separation)
    {
        var cell = SegregationCells.Find(table, a, b)!;
        Assert.Equal(code, cell.Code);
        Assert.Equal(separation, cell.Separation);
        Assert.True(cell.Verified);
        Assert.Same(cell, SegregationCells.Find(table, b, a));
    }
}
