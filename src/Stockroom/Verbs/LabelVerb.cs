using System.CommandLine;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Labels;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Hazards;
using Stockroom.Desk;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Verbs;

internal sealed class LabelVerb : IVerb
{
    internal const string UsualStock = "a4-2x4";
    private const string Title = "Stockroom labels";

    private readonly Argument<string[]> _ids = new("ID") { Arity = ArgumentArity.ZeroOrMore, Description = "Container ids" };
    private readonly Option<string?> _content = new("--content") { Description = "A sample label for a content, with no book", HelpName = "NAME" };
    private readonly Option<bool> _due = new("--all-due") { Description = "Every container whose label was never printed or no longer says what is true" };
    private readonly Option<string?> _stock = new("--stock") { Description = $"Label stock; else {UsualStock}", HelpName = "STOCK" };
    private readonly Option<bool> _preprinted = new("--preprinted") { Description = "The stock has red frames printed on it; every one of them is filled" };
    private readonly Option<string?> _design = new("--design") { Description = "Label design; else the usual one for the stock", HelpName = "DESIGN" };
    private readonly Option<string?> _out = new("--out") { Description = "The file to write; several pages of SVG or PNG are numbered files", HelpName = "FILE.pdf|.svg|.png" };
    private readonly Option<string?> _print = new("--print") { Arity = ArgumentArity.ZeroOrOne, Description = "Send the labels to a printer; the usual one if none is named", HelpName = "PRINTER" };
    private readonly Option<bool> _calibrate = new("--calibrate") { Description = "A page that shows where the printer puts the labels of the stock" };
    private readonly LabelOptions _options = new();

    public string Name => "label";

    public string Summary => "Print labels to a file or a printer";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var by = new WritingOptions().By;
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _ids, _content, _due, _stock, _preprinted, _design, _out, _print, _calibrate };
        foreach (var option in _options.All)
            command.Add(option);
        command.Add(by);
        command.Add(book);
        command.Add(json);
        command.SetAction(p =>
        {
            var run = Prepared(p, around);
            if (p.GetValue(_calibrate))
                return Calibrate(run, around, p.GetValue(json));
            var wishes = _options.Wishes(p, around);
            var (files, printed, labels) = p.GetValue(_content) is { } content
                ? Print([Labelling.Sample(ContentWords.Find(content), StockFacts.Default, wishes)], run, around)
                : PrintFromBook(p, p.GetValue(book), p.GetValue(by), wishes, run, around);
            var answer = new LabelAnswer(files, printed, run.Stock, run.Stocks, wishes, labels);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, answer.Write);
            else
                answer.Print(around.Out);
            return labels.All(f => f.Fit.IsComplete) ? ExitCodes.Done : ExitCodes.Attention;
        });
        return command;
    }

    /// <summary>Lays labels out on a stock and writes a PDF, whole or not at all.</summary>
    internal static void Write(IReadOnlyList<LabelText> texts, LabelStock stock, LabelStocks stocks, string file, Surroundings around) =>
        Print(texts, new Run(stock, stocks, DesignsOf(around), null, 0, default, file, null, null, PageFiles.UsualDpi), around);

    /// <summary>Checks the words before anything is opened or written.</summary>
    private Run Prepared(ParseResult p, Surroundings around)
    {
        var toPrinter = p.GetResult(_print) is not null;
        var file = p.GetValue(_out);
        if (file is null && !toPrinter)
            throw RefusedException.Words("a file is needed: --out FILE.pdf, .svg or .png; or --print");
        if (file is not null && !PageFiles.CanWrite(file))
            throw RefusedException.Words($"'{file}': labels are written as .pdf, .svg or .png");
        if (file is not null && toPrinter && !file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            throw RefusedException.Words($"'{file}': what goes to the printer is a .pdf");
        var stocks = StocksVerb.Load(around);
        var stock = stocks.Named(p.GetValue(_stock) ?? UsualStock);
        if (p.GetValue(_preprinted) && stock.Frames.Count == 0)
            throw RefusedException.Words($"stock '{stock.Name}' has no red frames printed on it; these have: {string.Join(", ", stocks.All.Where(s => s.Frames.Count > 0).Select(s => s.Name))}");
        var designs = DesignsOf(around);
        var design = p.GetValue(_design) is { } named ? designs.Named(named) : null;
        if (design is not null && !design.IsFor(stock))
            throw RefusedException.Words($"design '{design.Name}' is not for stock '{stock.Name}', of shape {stock.Shape.ToString().ToLowerInvariant()} and {stock.PrintWidthMm:0.#} x {stock.PrintHeightMm:0.#} mm");
        return new Run(
            stock, stocks, designs, design, _options.Skip(p), _options.Offset(p), file,
            toPrinter ? LinePrinter.Find(around.Variable("PATH")) : null, p.GetValue(_print), _options.Dpi(p));
    }

    private static LabelDesigns DesignsOf(Surroundings around)
    {
        var own = Path.Combine(around.DataFolder, "labels", "designs");
        return Directory.Exists(own) ? LabelDesigns.Load(own) : LabelDesigns.Default;
    }

    private static (IReadOnlyList<string> Files, string? Printed, IReadOnlyList<(LabelText Text, LabelFit Fit)> Labels) Print(IReadOnlyList<LabelText> texts, Run run, Surroundings around)
    {
        var pages = LabelSheet.Render(texts, run.Stock, run.Skip, run.Stocks.All, run.Offset, run.Designs, run.Design);
        var (files, printed) = Put(run, pages.Pages, Title, around);
        return (files, printed, [.. texts.Zip(pages.Fits)]);
    }

    /// <summary>Writes the file, sends it to the printer, or both; without --out a file of its own that is gone afterwards.</summary>
    private static (IReadOnlyList<string> Files, string? Printed) Put(Run run, IReadOnlyList<Drawing> pages, string title, Surroundings around)
    {
        var now = around.Clock.GetLocalNow();
        if (run.Lp is not { } lp)
            return (PageFiles.Write(run.File!, pages, title, now, run.Dpi), null);
        if (run.File is { } file)
            return (PageFiles.Write(file, pages, title, now, run.Dpi), LinePrinter.Print(lp, run.Printer ?? "", file, run.Stock));
        var folder = Directory.CreateTempSubdirectory("stockroom-print-").FullName;
        try
        {
            var temporary = Path.Combine(folder, "labels.pdf");
            PageFiles.Write(temporary, pages, title, now, run.Dpi);
            return ([], LinePrinter.Print(lp, run.Printer ?? "", temporary, run.Stock));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private (IReadOnlyList<string> Files, string? Printed, IReadOnlyList<(LabelText Text, LabelFit Fit)> Labels) PrintFromBook(
        ParseResult p, string? book, string? by, LabelWishes wishes, Run run, Surroundings around)
    {
        using var open = BookAccess.Write(book, around);
        var assessment = new StockAssessment(open.Ledger.State, StockFacts.Default, around.Today, wishes.Rules);
        var ids = p.GetValue(_due)
            ? [.. assessment.Holdings.Where(h => LabelDue.NeedsOne(h, assessment.Facts)).Select(h => h.Id)]
            : (p.GetValue(_ids) ?? []).Select(BookAccess.Id).Distinct().ToList();
        if (ids.Count == 0)
            throw RefusedException.Words(p.GetValue(_due) ? "no label is due" : "name at least one container, or --content NAME, or --all-due");
        var made = Print([.. ids.Select(id => Labelling.Of(assessment.Of(id), assessment.Facts, wishes))], run, around);
        open.Append(new Transaction(by ?? around.User, [.. ids.Select(id => Entry(assessment.Of(id), wishes, assessment.Facts, run, around))]));
        return made;
    }

    private static LabelPrinted Entry(Holding holding, LabelWishes wishes, StockFacts facts, Run run, Surroundings around) => new()
    {
        Container = holding.Id,
        Stock = run.Stock.Name,
        Rules = RuleSets.Words.First(w => w.Value == wishes.Rules).Key,
        Says = LabelSayings.Of(holding, facts, wishes.Rules),
        HappenedAt = around.Clock.GetLocalNow(),
    };

    private static int Calibrate(Run run, Surroundings around, bool json)
    {
        var (files, printed) = Put(run, [CalibrationPage.Of(run.Stock)], $"Calibration of {run.Stock.Name}", around);
        if (json)
            JsonDocumentWriter.Write(around.Out, new LabelAnswer(files, printed, run.Stock, run.Stocks, LabelWishes.Usual, []).Write);
        else
            around.Out.WriteLine($"calibration page of {run.Stock.Name} {(printed is null ? $"in {files[0]}: print it" : "printed: it must come out")} at 100 %, hold it against the stock, give what is off as --offset X,Y");
        return ExitCodes.Done;
    }

    /// <summary>What is printed on and by which design, and where it goes.</summary>
    private sealed record Run(
        LabelStock Stock, LabelStocks Stocks, LabelDesigns Designs, Design? Design, int Skip, Position Offset, string? File, string? Lp, string? Printer, int Dpi);
}
