using Stockroom.Endurance.Tests.Books;

namespace Stockroom.Endurance.Tests;

/// <summary>One bit of one file of a book is another than it was written.</summary>
public sealed class BitFlipTests
{
    [Theory]
    [InlineData("book.json")]
    [InlineData("journal.txt")]
    [InlineData("book.litedb")]
    [InlineData("book.litedb-log")]
    [InlineData("snapshot.txt")]
    public void Book_OneBitFlipped_IsRefusedRepairedAndToldOrHarmless(string file)
    {
        var path = Path.Combine(BookInMemory.Folder, file);
        var (disk, _) = BookInMemory.Filled(Counts.Trial(file.Length), transactions: 14, killed: file is not ("book.litedb" or "snapshot.txt"));
        var judgement = Judgement.Of(disk);
        var whole = disk[path];
        Assert.True(whole.Length > 100, $"{file} has {whole.Length} bytes");
        var tally = new Tally($"bit flips in {file}");
        for (var trial = 0; trial < Counts.Of(150, 600); trial++)
        {
            var bit = Counts.Trial(trial).Next(whole.Length * 8);
            var flipped = (byte[])whole.Clone();
            flipped[bit / 8] ^= (byte)(1 << (bit % 8));
            var damaged = disk.Copy();
            damaged[path] = flipped;
            tally.Add(judgement.On(damaged, $"seed {Counts.Seed}, {file}, bit {bit % 8} of byte {bit / 8}"));
        }

        tally.Print();
        Assert.True(tally["refused"] + tally["repaired from the journal and told"] > 0, "no flip was noticed");
    }

    // Where LiteDB's collection says which page its index ends in: read past on opening, and the next entry loses its way from there.
    [Fact]
    public void Book_TheEndOfTheIndexFlipped_IsToldAtTheNextEntryAtTheLatest()
    {
        const int page = 8192;
        const byte collection = 2;
        var (disk, _) = BookInMemory.Filled(new Random(5), transactions: 14, killed: true);
        var judgement = Judgement.Of(disk);
        var whole = disk[BookInMemory.LiteLog];
        var last = Enumerable.Range(0, whole.Length / page).Last(n => whole[(n * page) + 4] == collection) * page;
        var tally = new Tally("bit flips where the index ends");
        for (var bit = 0; bit < 64; bit++)
        {
            var damaged = disk.Copy();
            var flipped = (byte[])whole.Clone();
            flipped[last + 100 + (bit / 8)] ^= (byte)(1 << (bit % 8));
            damaged[BookInMemory.LiteLog] = flipped;
            tally.Add(judgement.On(damaged, $"bit {bit % 8} of byte {100 + (bit / 8)} of the collection's page"));
        }

        tally.Print();
        Assert.True(tally["repaired from the journal and told"] > 10, "hardly a flip was noticed");
    }
}
