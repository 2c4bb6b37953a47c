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
}
