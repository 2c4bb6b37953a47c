namespace Stockroom.Storage.Tests;

/// <summary>Books kept from each version of the format open as what they were.</summary>
public sealed class KeptBookTests
{
    private static string Kept(int version) => Path.Combine(AppContext.BaseDirectory, "Books", $"version-{version}");

    [Fact]
    public void Kept_EachVersionUpToTheCurrent_IsThere()
    {
        for (var version = 1; version <= BookIdentity.CurrentFormat; version++)
            Assert.True(Directory.Exists(Kept(version)), $"no book of version {version} is kept");
    }

    [Theory]
    [InlineData(1, 33, 23, 9, "1764.000", "d44d1cd7fdf70a6a3f26a15f2b7032d8daaa5e158732bb976bf85dd53c1ee19c")]
    public void Open_ABookOfThatVersion_HoldsWhatItHeldAndGoesOn(int version, int entries, int transactions, int containers, string grams, string head)
    {
        using var disk = new BookOnDisk();
        Directory.CreateDirectory(disk.Folder);
        foreach (var file in Directory.GetFiles(Kept(version)))
            File.Copy(file, Path.Combine(disk.Folder, Path.GetFileName(file)));
        var journal = File.ReadAllBytes(disk.Journal);
        using (var reader = disk.Open(readOnly: true))
        {
            Assert.Empty(reader.Damage);
            Assert.Equal(head, reader.Ledger.HeadHash);
        }

        using (var book = disk.Open())
        {
            Assert.Empty(book.Messages);
            Assert.Equal((version, entries, transactions), (book.Identity.Format, book.Ledger.Entries.Count, (int)book.Ledger.LastTransaction));
            Assert.Empty(book.Ledger.Problems);
            Assert.Equal(containers, book.Ledger.State.Containers.Count);
            Assert.Equal(decimal.Parse(grams), book.Ledger.State.Present.Sum(c => c.NetGrams));
            Assert.Equal(head, book.Ledger.HeadHash);
            Assert.True(book.Verify().Holds);
            BookOnDisk.Receive(book);
        }

        Assert.Equal(journal, File.ReadAllBytes(disk.Journal)[..journal.Length]);
        using var again = disk.Open();
        Assert.Empty(again.Messages);
        Assert.Equal(entries + 2, again.Ledger.Entries.Count);
    }

    [Fact]
    public void Open_ABookOfThatVersionFromItsJournalAlone_IsTheSame()
    {
        using var disk = new BookOnDisk();
        Directory.CreateDirectory(disk.Folder);
        foreach (var file in new[] { "book.json", "journal.txt" })
            File.Copy(Path.Combine(Kept(1), file), Path.Combine(disk.Folder, file));
        using var book = disk.Open();
        Assert.Contains("built anew from the journal (33 entries)", Assert.Single(book.Messages), StringComparison.Ordinal);
        Assert.True(book.Verify().Holds);
    }
}
