using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Tests.Tables;

public sealed class TableReaderTests
{
    private const string Good = "name\tvalue\tsource\tlocator\tas_of\nbromine\t3.1\tCRC\tp. 4\t2016\n";

    [Fact]
    public void ReadFacts_GoodTable_GivesRowsWithTheirSource()
    {
        var row = Assert.Single(TableReader.ReadFacts("t.tsv", Good, "name", "value").Rows);
        Assert.Equal(3.1, row.Number("value"));
        Assert.Equal(new Provenance("CRC", "p. 4", "2016"), row.Provenance);
    }

    [Theory]
    [InlineData("name\tvalue\tsource\tlocator\tas_of\nbromine\t3.1\t\tp. 4\t2016\n", 2, "source")]
    [InlineData("name\tvalue\tsource\tlocator\tas_of\n\n# note\nbromine\tx\tCRC\tp. 4\t2016\n", 4, "value")]
    [InlineData("name\tvalue\tsource\tlocator\nbromine\t3\tCRC\tp. 4\n", 1, null)]
    [InlineData("name\tsource\tlocator\tas_of\nbromine\tCRC\tp. 4\t2016\n", 1, "value")]
    [InlineData("name\tvalue\tcolour\tsource\tlocator\tas_of\n", 1, "colour")]
    [InlineData("name\tname\tvalue\tsource\tlocator\tas_of\n", 1, "name")]
    [InlineData("name\tvalue\tsource\tlocator\tas_of\nbromine\t3.1\tCRC\tp. 4\n", 2, null)]
    [InlineData("name\tvalue\tsource\tlocator\tas_of\nbro\u0007mine\t3.1\tCRC\tp\t2016\n", 2, null)]
    [InlineData("", 1, null)]
    [InlineData("name\tvalue\tsource\tlocator\tas_of\nbromine\t1e999\tCRC\tp\t2016\n", 2, "value")]
    public void ReadFacts_Broken_NamesFileLineAndColumn(string text, int line, string? column)
    {
        var error = Assert.Throws<TableException>(() =>
        {
            foreach (var row in TableReader.ReadFacts("t.tsv", text, "name", "value").Rows)
                _ = row.Number("value");
        });
        Assert.Equal("t.tsv", error.File);
        Assert.Equal(line, error.Line);
        Assert.Equal(column, error.Column);
        Assert.StartsWith($"t.tsv:{line}", error.Message, StringComparison.Ordinal);
    }
}
