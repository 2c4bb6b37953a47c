using System.Security.Cryptography;
using System.Text;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Exports;
using Stockroom.Storage;
using Stockroom.Storage.Exports;
using Stockroom.Verbs;

namespace Stockroom.Endurance.Tests.Imports;

/// <summary>Malformed files through the verbs, against a book on the disk: refused with file and line, and no byte of the book changes.</summary>
public sealed class VerbFuzzTests : IDisposable
{
    private static readonly Lock OneAtATime = new();

    private readonly string _folder = Directory.CreateTempSubdirectory("stockroom-fuzz-").FullName;

    private string Folder => Path.Combine(_folder, "a.stockbook");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Verb_MalformedFile_IsRefusedAndChangesNothing()
    {
        var (book, list, document) = Make();
        var table = Encoding.UTF8.GetBytes("name\tformula\tcas\tstate\tsynonyms\thazards\tsource\tas_of\nlab thinner\t\t\tliquid\tthinner no. 4; solvent X\tFlam. Liq. 2 H225; EUH066\tsupplier's sheet\t2026-01\n");
        (string Ending, byte[] Valid, string[] Words)[] kinds =
        [
            (".csv", list, ["import"]),
            (".json", document, ["import"]),
            (".tsv", table, ["substances", "import"]),
        ];
        var tally = new Tally("malformed files through the verbs");
        for (var trial = 0; tally["refused, nothing changed"] < Counts.Of(60, 600); trial++)
        {
            Assert.True(trial < 6_000, "hardly anything is refused");
            var random = Counts.Trial(trial);
            var (ending, valid, words) = kinds[random.Next(kinds.Length)];
            var file = Path.Combine(_folder, "spoilt" + ending);
            File.WriteAllBytes(file, Mutation.Of(valid, random));
            var (code, said) = Run([.. words, file]);
            if (code == 0)
            {
                tally.Add("still valid");
                Directory.Delete(Folder, recursive: true);
                (book, _, kinds[1].Valid) = Make();
                continue;
            }

            var trialName = $"seed {Counts.Seed}, trial {trial}, exit {code}: {said} on {Convert.ToBase64String(File.ReadAllBytes(file))}";
            Assert.True(code is 2 or 3, trialName);
            Assert.All(said.Split('\n', StringSplitOptions.RemoveEmptyEntries), l => Assert.StartsWith("stockroom: ", l, StringComparison.Ordinal));
            Assert.True(said.Contains("spoilt", StringComparison.Ordinal) || ending == ".tsv", trialName);
            Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
            Assert.True(book == Bytes(), $"{trialName}: THE BOOK CHANGED");
            tally.Add("refused, nothing changed");
        }

        tally.Print();
    }

    private (string Book, byte[] List, byte[] Document) Make()
    {
        var stock = RandomStock.Make(new Random(5), 5);
        using (var book = StockBookFolder.Create(Folder, new StillClock()))
            book.Append(new Transaction("Ada", [.. stock.Ledger.Entries.Where(e => e is Book.Entries.PlaceMade)]));
        var list = CsvExport.Containers(new Assessment.Holdings.StockAssessment(stock.Ledger.State, Assessment.Holdings.StockFacts.Default, DateOnly.FromDateTime(StillClock.Now.DateTime)));
        using var open = StockBookFolder.Open(Folder, readOnly: true);
        return (Bytes(), list, BookExport.Of(open).Document);
    }

    private string Bytes() => string.Join(' ', new[] { "book.json", "journal.txt", "book.litedb" }.Select(f => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(Path.Combine(Folder, f))))));

    private (int Code, string Said) Run(string[] words)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new Surroundings
        {
            In = TextReader.Null,
            Out = output,
            Error = error,
            Clock = new StillClock(),
            Variable = name => name == "STOCKROOM_BOOK" ? Folder : null,
            DataFolder = _folder,
            User = "Ada",
            IsTerminal = false,
        };
        lock (OneAtATime)
            return (CommandLine.Run(words, around), error.ToString());
    }
}
