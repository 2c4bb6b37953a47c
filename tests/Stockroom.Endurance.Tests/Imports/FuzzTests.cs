using System.Text;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Recipes;
using Stockroom.Book;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;
using Stockroom.Demo;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Exports;
using Stockroom.Imports;
using Stockroom.Labels;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Stocks;
using Stockroom.Storage.Exports;

namespace Stockroom.Endurance.Tests.Imports;

/// <summary>
/// Valid files spoilt at random, until so many of each kind were malformed: each is refused with a message that says where,
/// and none ends in anything else. What is still valid after all is counted beside.
/// </summary>
public sealed class FuzzTests
{
    private static readonly string Labels = Path.Combine(Root(), "labels");

    [Fact]
    public void List_OfContainersMalformed_IsRefusedByLine()
    {
        var ledger = RandomStock.Make(Counts.Trial(1), containers: 5).Ledger;
        var places = Ledger.Empty("").Append(new Transaction("Ada", new CsvImport(Ledger.Empty(""), "Ada", new StillClock()).Try(CsvExport.Places(ledger.State), []).Entries), StillClock.Now).After;
        var list = CsvExport.Containers(new StockAssessment(ledger.State, StockFacts.Default, DateOnly.FromDateTime(StillClock.Now.DateTime)));
        var typed = Encoding.UTF8.GetBytes("Chemical;Volume (mL);Location;Date received;Remarks\r\nacetone;250;acids;2024-02-29;\"half; full\"\r\nNaCl;1.5 kg;acids-1;;\r\norphan: green crystals;;prep;2020-01-01;\r\n");
        Try("malformed lists of containers", 300, [list, typed], bytes => Csv(places, bytes));
    }

    [Fact]
    public void List_OfPlacesMalformed_IsRefusedByLine() =>
        Try("malformed lists of places", 100, [CsvExport.Places(RandomStock.Make(Counts.Trial(2), 0).Ledger.State)], bytes => Csv(Ledger.Empty(""), bytes));

    [Fact]
    public void Document_Malformed_IsRefusedByLine()
    {
        var disk = new Disks.MemoryDisk();
        using var book = BookInMemory.Make(disk);
        BookInMemory.Fill(book, Counts.Trial(3), 8);
        book.Attach("Ada", new() { Container = book.Ledger.State.Present.First().Id, HappenedAt = StillClock.Now, Name = "a.bin", Sha256 = "", Bytes = 0, MediaType = "" }, [1, 2, 3]);
        Try("malformed JSON documents", 250, [BookExport.Of(book).Document], bytes =>
        {
            try
            {
                return BookImport.Read(bytes).Ledger.HeadHash == book.Ledger.HeadHash ? null : "A SILENT WRONG ANSWER";
            }
            catch (DocumentException e)
            {
                Named(e.Faults, bytes);
                return "refused by line";
            }
        });
    }

    [Fact]
    public void LabelFile_Malformed_IsRefusedByFile()
    {
        var (stocks, designs) = (Files("stocks"), Files("designs"));
        Try("malformed label stocks", 120, [.. stocks.Select(s => s.Content)], (bytes, i) => Label(stocks[i].Name, () => LabelStockReader.Read(Encoding.UTF8.GetString(bytes), stocks[i].Name)));
        Try("malformed label designs", 60, [.. designs.Select(s => s.Content)], (bytes, i) => Label(designs[i].Name, () => DesignReader.Read(Encoding.UTF8.GetString(bytes), designs[i].Name)));
    }

    [Fact]
    public void Table_Malformed_IsRefusedByFileLineAndColumn()
    {
        var seed = SeedFiles.Embedded();
        var history = new SeedFiles(seed.Places, seed.Containers, null);
        Try("malformed tables of a collection", 70, [Encoding.UTF8.GetBytes(seed.Containers)], bytes => Table(() => new SeedReader(new StillClock()).Read(history with { Containers = Encoding.UTF8.GetString(bytes) })));
        Try("malformed tables of places", 30, [Encoding.UTF8.GetBytes(seed.Places)], bytes => Table(() => new SeedReader(new StillClock()).Read(history with { Places = Encoding.UTF8.GetString(bytes) })));
    }

    [Fact]
    public void MixFile_Malformed_IsRefusedByMember()
    {
        var mix = """
            {"rules": "un", "state": "liquid", "ph": null, "flash_point_c": null, "ingredients": [
              {"name": "A", "percent": 16, "categories": ["Skin Irrit. 2"], "ate": {"oral_mg_kg": 1600, "inhalation_vapour_mg_l": null}, "m_acute": 10, "m_chronic": 10, "ph": 1.8},
              {"name": "B", "percent": 20.5, "categories": ["Acute Tox. 3"], "limits": [{"category": "Skin Corr. 1B", "from_percent": 5, "below_percent": 15}], "toxicity_unknown": ["oral"]}]}
            """;
        Try("malformed mix files", 70, [Encoding.UTF8.GetBytes(mix)], bytes =>
        {
            try
            {
                MixFile.Read(Encoding.UTF8.GetString(bytes), HazardFacts.Default, SubstanceCatalogue.Default);
                return null;
            }
            catch (BookRefusal e)
            {
                Assert.NotEqual("", e.Message);
                return "refused by member";
            }
        });
    }

    private static void Try(string what, int small, IReadOnlyList<byte[]> valid, Func<byte[], string?> judge) => Try(what, small, valid, (bytes, _) => judge(bytes));

    private static void Try(string what, int small, IReadOnlyList<byte[]> valid, Func<byte[], int, string?> judge)
    {
        Assert.All(valid, (v, i) => Assert.Null(judge(v, i)));
        var tally = new Tally(what);
        var malformed = 0;
        for (var trial = 0; malformed < Counts.Of(small, small * 10); trial++)
        {
            Assert.True(trial < small * 200, "hardly anything is refused");
            var random = Counts.Trial(trial);
            var which = random.Next(valid.Count);
            var spoilt = Mutation.Of(valid[which], random);
            string? end;
            try
            {
                end = judge(spoilt, which);
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                throw new InvalidOperationException($"seed {Counts.Seed}, {what}, trial {trial}: a crash on '{Convert.ToBase64String(spoilt)}'", e);
            }

            Assert.True(end != "A SILENT WRONG ANSWER", $"seed {Counts.Seed}, {what}, trial {trial}: {end}");
            malformed += end is null ? 0 : 1;
            tally.Add(end ?? "still valid");
        }

        tally.Print();
    }

    private static string? Csv(Ledger ledger, byte[] bytes)
    {
        try
        {
            var outcome = new CsvImport(ledger, "Ada", new StillClock()).Try(bytes, []);
            if (outcome.Refused.Count == 0)
                return null;
            Named(outcome.Refused, bytes);
            Assert.Empty(outcome.Entries);
            return "refused by line";
        }
        catch (DocumentException e)
        {
            Named(e.Faults, bytes);
            return "refused by line";
        }
    }

    private static void Named(IReadOnlyList<DocumentFault> faults, byte[] bytes)
    {
        Assert.NotEmpty(faults);
        var lines = bytes.Count(b => b is (byte)'\n' or (byte)'\r') + 1;
        Assert.All(faults, f =>
        {
            Assert.InRange(f.Line, 1, lines);
            Assert.False(string.IsNullOrWhiteSpace(f.Because));
        });
    }

    private static string? Label(string name, Action read)
    {
        try
        {
            read();
            return null;
        }
        catch (LabelException e)
        {
            Assert.StartsWith(name, e.Message, StringComparison.Ordinal);
            Assert.True(e.Message.Contains("line ", StringComparison.Ordinal) || e.Message.Contains("member ", StringComparison.Ordinal) || e.Message.Contains("a text in it", StringComparison.Ordinal) || e.Message.Contains("one JSON object", StringComparison.Ordinal), e.Message);
            return "refused by file";
        }
    }

    private static string? Table(Action read)
    {
        try
        {
            read();
            return null;
        }
        catch (TableException e)
        {
            Assert.Matches(@"^[a-z]+\.tsv:\d+(, column .*)?: .", e.Message);
            return "refused by file and line";
        }
    }

    private static List<(string Name, byte[] Content)> Files(string folder) => [.. Directory.GetFiles(Path.Combine(Labels, folder), "*.json").Order(StringComparer.Ordinal).Select(f => (Path.GetFileName(f), File.ReadAllBytes(f)))];

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Stockroom.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Stockroom.sln was not found above the tests.");
    }
}
