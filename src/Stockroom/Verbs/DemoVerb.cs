using System.CommandLine;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Ledgers;
using Stockroom.Demo;
using Stockroom.Desk;
using Stockroom.Labels.Output;
using Stockroom.Storage;

namespace Stockroom.Verbs;

internal sealed class DemoVerb : IVerb
{
    internal const string LabelsFile = "labels.pdf";
    private const string Mark = "demo.txt";

    public string Name => "demo";

    public string Summary => "Make a fresh demo book from seed-demo and open it";

    public Command Build(Surroundings around)
    {
        var report = new Option<bool>("--report") { Description = "Print the report and write the labels' PDF into the book's folder, without the screens" };
        var from = new Option<string?>("--from") { Description = "A folder with places.tsv, containers.tsv and history.tsv in place of the demo's own", HelpName = "FOLDER" };
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { report, from, book, json };
        command.SetAction(p =>
        {
            var folder = Path.GetFullPath(p.GetValue(book) ?? Path.Combine(around.DataFolder, "demo.stockbook"));
            var seed = p.GetValue(from) is { } source ? Seed(source) : SeedFiles.Embedded();
            var entries = new SeedReader(around.Clock).Read(seed);
            MakeRoom(folder);
            using var made = StockBookFolder.Create(folder, around.Clock);
            OutputFile.Write(Path.Combine(folder, Mark), s => s.Write("This book was made by 'stockroom demo' and is made anew by it.\n"u8));
            made.Append(new Transaction(around.User, entries));
            if (around.IsTerminal && !p.GetValue(report) && !p.GetValue(json))
                return OpenVerb.Show(BookOnSight.Of(made), around);
            Report(made, folder, around, p.GetValue(json));
            return ExitCodes.Done;
        });
        return command;
    }

    private static SeedFiles Seed(string folder)
    {
        try
        {
            return SeedFiles.Of(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RefusedException.Input($"the collection in '{folder}' cannot be read: {e.Message}");
        }
    }

    // Only a book that this verb made, or nothing at all, gives way to a fresh one.
    private static void MakeRoom(string folder)
    {
        if (!Directory.Exists(folder) || !Directory.EnumerateFileSystemEntries(folder).Any())
            return;
        if (!File.Exists(Path.Combine(folder, Mark)) || !StockBookFolder.IsBook(folder))
            throw RefusedException.Input($"'{folder}' is not a demo book; the demo overwrites none but its own, name another folder with --book");
        try
        {
            StockBookFolder.Open(folder).Dispose();
            Directory.Delete(folder, recursive: true);
        }
        catch (BookUnavailableException e) when (e.Fault == BookFault.Damaged)
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Report(StockBook book, string folder, Surroundings around, bool json)
    {
        var stock = new StockAssessment(book.Ledger.State, StockFacts.Default, around.Today);
        var view = StockDesk.TodayOf(stock, Path.GetFileName(folder));
        var file = Path.Combine(folder, LabelsFile);
        var stocks = StocksVerb.Load(around);
        LabelVerb.Write([.. stock.Holdings.Select(Labelling.Of)], stocks.Named(LabelVerb.UsualStock), stocks, file, around);
        if (json)
        {
            JsonDocumentWriter.Write(around.Out, w =>
            {
                TodayVerb.WriteAll(w, stock, view);
                w.WriteString("folder", folder);
                w.WriteString("labels", file);
            });
            return;
        }

        TodayVerb.Print(around.Out, view, wrongToo: true);
        around.Out.WriteLine();
        Leaving(around.Out, stock);
        around.Out.WriteLine();
        around.Out.WriteLine($"labels: {stock.Holdings.Count} in {file}");
        around.Out.WriteLine($"book: {folder} (look into it with 'stockroom open --book {folder}')");
        around.Out.WriteLine("This is arithmetic and published rules, not permission: local codes and licensed practice come first.");
    }

    private static void Leaving(TextWriter to, StockAssessment stock)
    {
        to.WriteLine("Leaving fastest, in a year:");
        foreach (var holding in stock.Holdings
            .Where(h => h.Forecast is { LossRate: { Expected.GramsPerYear: > 0.001 } })
            .OrderByDescending(h => h.Forecast!.LossRate!.Value.Expected)
            .Take(10))
            to.WriteLine($"  {holding.Id} {holding.Content.Name}: {Words.Loss(holding)}, under {holding.Container.Closure}");
    }
}
