using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Hazards;
using Stockroom.Desk;
using Stockroom.Labels.Drawings;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Verbs;

internal sealed class LabelVerb : IVerb
{
    internal const string UsualStock = "a4-2x4";

    private readonly Argument<string[]> _ids = new("ID") { Arity = ArgumentArity.ZeroOrMore, Description = "Container ids" };
    private readonly Option<string?> _content = new("--content") { Description = "A sample label for a content, with no book", HelpName = "NAME" };
    private readonly Option<bool> _due = new("--all-due") { Description = "Every container whose label was never printed" };
    private readonly Option<string?> _stock = new("--stock") { Description = $"Label stock; else {UsualStock}", HelpName = "STOCK" };
    private readonly Option<string?> _out = new("--out") { Description = "The PDF file to write", HelpName = "FILE.pdf" };
    private readonly Option<string?> _skip = new("--skip") { Description = "Labels already used on the first sheet", HelpName = "N" };
    private readonly Option<string?> _offset = new("--offset") { Description = "Moves the print right and down, in mm (see --calibrate)", HelpName = "X,Y" };
    private readonly Option<bool> _calibrate = new("--calibrate") { Description = "A page that shows where the printer puts the labels of the stock" };
    private readonly Option<string?> _rules = new("--rules") { Description = "Edition of the statements: eu (the rule), un or us", HelpName = "RULES" };
    private readonly Option<string?> _language = new("--language") { Description = "en", HelpName = "LANGUAGE" };

    public string Name => "label";

    public string Summary => "Print labels to a PDF file";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var by = new WritingOptions().By;
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _ids, _content, _due, _stock, _out, _skip, _offset, _calibrate, _rules, _language, by, book, json };
        command.SetAction(p =>
        {
            var file = p.GetValue(_out) ?? throw RefusedException.Words("a file is needed: --out FILE.pdf");
            if (!file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
                throw RefusedException.Words($"'{file}': labels are written as .pdf");
            if (p.GetValue(_language) is { } language and not "en")
                throw RefusedException.Words($"statements in '{language}' are not in the tables; only en is");
            var rules = p.GetValue(_rules) is { } words ? Rules(words) : RuleSet.Eu;
            var stocks = StocksVerb.Load(around);
            var stock = stocks.Named(p.GetValue(_stock) ?? UsualStock);
            if (p.GetValue(_calibrate))
                return Calibrate(stock, file, around, p.GetValue(json));
            var run = new Run(stock, stocks, Skip(p.GetValue(_skip)), Offset(p.GetValue(_offset)), file);
            var fits = p.GetValue(_content) is { } content
                ? Print([Labelling.Sample(ContentWords.Find(content), StockFacts.Default, rules)], run, around)
                : PrintFromBook(p, book, p.GetValue(by), rules, run, around);
            Tell(around, p.GetValue(json), file, stock, fits);
            return fits.All(f => f.Fit.IsComplete) ? ExitCodes.Done : ExitCodes.Attention;
        });
        return command;
    }

    /// <summary>Lays the labels out and writes the file, whole or not at all.</summary>
    internal static IReadOnlyList<(LabelText Text, LabelFit Fit)> Print(
        IReadOnlyList<LabelText> texts, LabelStock stock, LabelStocks stocks, int skip, string file, Surroundings around) =>
        Print(texts, new Run(stock, stocks, skip, default, file), around);

    private static IReadOnlyList<(LabelText Text, LabelFit Fit)> Print(IReadOnlyList<LabelText> texts, Run run, Surroundings around)
    {
        var pages = LabelSheet.Render(texts, run.Stock, run.Skip, run.Stocks.All, run.Offset);
        PdfFile.Write(run.File, pages.Pages, "Stockroom labels", around.Clock.GetLocalNow());
        return [.. texts.Zip(pages.Fits)];
    }

    private List<(LabelText Text, LabelFit Fit)> PrintFromBook(
        ParseResult p, Option<string?> book, string? by, RuleSet rules, Run run, Surroundings around)
    {
        using var open = BookAccess.Write(p.GetValue(book), around);
        var assessment = new StockAssessment(open.Ledger.State, StockFacts.Default, around.Today, rules);
        var ids = p.GetValue(_due)
            ? [.. assessment.Holdings.Where(h => h.Container.LabelPrintedOn is null).Select(h => h.Id)]
            : (p.GetValue(_ids) ?? []).Select(BookAccess.Id).Distinct().ToList();
        if (ids.Count == 0)
            throw RefusedException.Words(p.GetValue(_due) ? "no label is due" : "name at least one container, or --content NAME, or --all-due");
        var fits = Print([.. ids.Select(id => Labelling.Of(assessment.Of(id)))], run, around);
        open.Append(new Transaction(by ?? around.User, [.. ids.Select(id => new LabelPrinted { Container = id, Stock = run.Stock.Name, HappenedAt = around.Clock.GetLocalNow() })]));
        return [.. fits];
    }

    private static RuleSet Rules(string words) => RuleSets.Words.TryGetValue(words.Trim().ToLowerInvariant(), out var rules)
        ? rules
        : throw RefusedException.Words($"'{words}' is not an edition; it is one of {string.Join(", ", RuleSets.Words.Keys)}");

    private static int Skip(string? text) => text is null ? 0
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var skip) ? skip
        : throw RefusedException.Words($"'{text}' is not a number of labels to skip");

    private static Position Offset(string? text)
    {
        if (text is null)
            return default;
        var parts = text.Split(',');
        return parts.Length == 2 && Millimetres(parts[0]) is { } x && Millimetres(parts[1]) is { } y
            ? new Position(x, y)
            : throw RefusedException.Words($"'{text}' is not an offset; give millimetres to the right and down, such as 1.5,-0.5");
    }

    private static double? Millimetres(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var mm) && double.IsFinite(mm) ? mm : null;

    private static int Calibrate(LabelStock stock, string file, Surroundings around, bool json)
    {
        PdfFile.Write(file, [CalibrationPage.Of(stock)], $"Calibration of {stock.Name}", around.Clock.GetLocalNow());
        if (json)
            JsonDocumentWriter.Write(around.Out, w => WriteAll(w, file, stock, []));
        else
            around.Out.WriteLine($"calibration page of {stock.Name} in {file}: print it at 100 %, hold it against the stock, give what is off as --offset X,Y");
        return ExitCodes.Done;
    }

    /// <summary>What is printed on, and where it goes.</summary>
    private sealed record Run(LabelStock Stock, LabelStocks Stocks, int Skip, Position Offset, string File);

    private static void Tell(Surroundings around, bool json, string file, LabelStock stock, IReadOnlyList<(LabelText Text, LabelFit Fit)> fits)
    {
        if (json)
        {
            JsonDocumentWriter.Write(around.Out, w => WriteAll(w, file, stock, fits));
            return;
        }

        around.Out.WriteLine($"{fits.Count} label{(fits.Count == 1 ? "" : "s")} on {stock.Name} in {file}");
        foreach (var (text, fit) in fits)
        {
            foreach (var off in fit.LeftOff.Where(o => o.Required))
                around.Out.WriteLine($"{text.Id ?? "SAMPLE"} {text.Title}: no room for {off.What}{(fit.StocksThatWouldDo.Count > 0 ? $"; it fits on {string.Join(", ", fit.StocksThatWouldDo.Take(3))}" : "")}");
            foreach (var note in fit.Notes)
                around.Out.WriteLine($"{text.Id ?? "SAMPLE"} {text.Title}: {note}");
        }
    }

    private static void WriteAll(Utf8JsonWriter json, string file, LabelStock stock, IReadOnlyList<(LabelText Text, LabelFit Fit)> fits)
    {
        json.WriteString("file", file);
        json.WriteString("stock", stock.Name);
        json.WriteStartArray("labels");
        foreach (var (text, fit) in fits)
        {
            json.WriteStartObject();
            json.TextOrNull("id", text.Id);
            json.WriteString("title", text.Title);
            json.WriteBoolean("complete", fit.IsComplete);
            json.Texts("left_off", fit.LeftOff.Select(o => o.What));
            json.Texts("stocks_that_would_do", fit.StocksThatWouldDo);
            json.TextOrNull("code", fit.Code?.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
