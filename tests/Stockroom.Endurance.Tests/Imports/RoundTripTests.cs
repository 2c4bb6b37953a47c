using CsCheck;
using Stockroom.Assessment.Holdings;
using Stockroom.Book;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;
using Stockroom.Exports;
using Stockroom.Imports;
using Stockroom.Storage.Exports;

namespace Stockroom.Endurance.Tests.Imports;

/// <summary>Random books, out and in again: as a document equal in every byte and on every day, as a list equal in every cell.</summary>
public sealed class RoundTripTests
{
    private static readonly string Elsewhere = Path.Combine(Path.GetDirectoryName(BookInMemory.Folder)!, "elsewhere.stockbook");

    [Fact]
    public void Json_RandomBook_ComesBackEqual()
    {
        var tally = new Tally("books out as JSON and in again");
        Gen.Int[0, 1 << 20].Sample(
            seed =>
            {
                BackAndForth(new Random(seed));
                lock (tally)
                    tally.Add("equal");
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: Counts.Of(50, 500));
        tally.Print();
        Assert.True(tally["equal"] >= Counts.Of(50, 500));
    }

    [Fact]
    public void Csv_RandomBook_ComesBackAsAnEqualList()
    {
        var tally = new Tally("lists out as CSV and in again");
        Gen.Int[0, 1 << 20].Sample(
            seed =>
            {
                var book = RandomStock.Make(new Random(seed), containers: 6);
                var (places, containers) = Lists(book.Ledger.State);
                var made = Take(Take(Ledger.Empty(""), places), containers);
                Assert.Equal((Shown(places), Shown(containers)), (Shown(Lists(made.State).Places), Shown(Lists(made.State).Containers)));

                // Without the list of places too, whose limits are then unknown.
                var alone = Lists(Take(Ledger.Empty(""), containers).State);
                Assert.Equal(Shown(containers), Shown(alone.Containers));
                lock (tally)
                    tally.Add("equal");
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: Counts.Of(50, 500));
        tally.Print();
        Assert.True(tally["equal"] >= Counts.Of(50, 500));
    }

    private static void BackAndForth(Random random)
    {
        var disk = new MemoryDisk();
        byte[] document;
        using (var book = BookInMemory.Make(disk))
        {
            Steps.Begin(book);
            for (var i = random.Next(12); i > 0; i--)
                Steps.Next(book, random);
            foreach (var container in book.Ledger.State.Present.Take(2).ToList())
                book.Attach("Ada", new() { Container = container.Id, HappenedAt = StillClock.Now, Name = "a.bin", Sha256 = "", Bytes = 0, MediaType = "" }, Bytes(random));
            document = BookExport.Of(book).Document;
        }

        var exported = BookImport.Read(document);
        Assert.Equal(ImportEnd.Made, BookImport.Into(disk, Elsewhere, exported, new StillClock()));
        Assert.Equal(disk[BookInMemory.Journal], disk[Path.Combine(Elsewhere, "journal.txt")]);
        using var from = BookInMemory.Open(disk);
        using var again = Storage.StockBookFolder.Open(disk, Elsewhere, readOnly: false, new StillClock());
        Assert.Equal(document, BookExport.Of(again).Document);
        Assert.True(again.Verify().Holds);
        for (var ago = 0; ago < 4; ago++)
        {
            var day = DateOnly.FromDateTime(StillClock.Now.AddDays(-ago).DateTime);
            Assert.Equal(Book.States.StateCodec.Encode(from.Ledger.StateOn(day)), Book.States.StateCodec.Encode(again.Ledger.StateOn(day)));
        }
    }

    private static byte[] Bytes(Random random)
    {
        var bytes = new byte[random.Next(1, 9_000)];
        random.NextBytes(bytes);
        return bytes;
    }

    private static (byte[] Places, byte[] Containers) Lists(BookState state) =>
        (CsvExport.Places(state), CsvExport.Containers(new StockAssessment(state, StockFacts.Default, DateOnly.FromDateTime(StillClock.Now.DateTime))));

    private static Ledger Take(Ledger ledger, byte[] list)
    {
        var outcome = new CsvImport(ledger, "Ada", new StillClock()).Try(list, []);
        Assert.True(outcome.Refused.Count == 0, string.Join("; ", outcome.Refused));
        return outcome.Entries.Count == 0 ? ledger : ledger.Append(new Transaction("Ada", outcome.Entries), StillClock.Now).After;
    }

    private static string Shown(byte[] list) => System.Text.Encoding.UTF8.GetString(list);
}
