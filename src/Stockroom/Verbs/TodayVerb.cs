using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Views;

namespace Stockroom.Verbs;

internal sealed class TodayVerb(string name, string summary, bool wrongToo) : IVerb
{
    public string Name => name;

    public string Summary => summary;

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { book, asOf, json };
        command.SetAction(p =>
        {
            using var open = OpenedStock.Open(p.GetValue(book), p.GetValue(asOf), around);
            var report = open.Report();
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open.Book);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    WriteAll(w, report.Stock, report.View);
                    w.Damage(open.Book);
                });
            else
            {
                Print(around.Out, report.View, wrongToo);
                Labels(around.Out, report.Stock);
            }

            return ExitCodes.Done;
        });
        return command;
    }

    /// <summary>The plain lines: label before value, no boxes.</summary>
    internal static void Print(TextWriter to, TodayView view, bool wrongToo)
    {
        to.WriteLine($"{view.BookName}, {view.Date.Iso()}: {view.Containers} containers, {view.Wrong.Count} wrong, {view.Due.Count} due");
        if (wrongToo)
        {
            foreach (var wrong in view.Wrong)
            {
                to.WriteLine();
                to.WriteLine($"{(wrong.Weight == Attention.Danger ? "DANGER" : "Warning")}: {wrong.Title}");
                to.WriteLine($"  because: {wrong.Because}");
                to.WriteLine($"  source: {wrong.Source}");
                to.WriteLine($"  containers: {Listed(wrong.Containers)}");
            }
        }

        foreach (var due in view.Due)
        {
            to.WriteLine();
            to.WriteLine($"Due since {due.Since.Iso()}: {due.What}: {due.Container} {due.Content}, {due.Place}");
            to.WriteLine($"  because: {due.Because}");
            to.WriteLine($"  source: {due.Source}");
        }
    }

    /// <summary>What was never labelled is one line and not due: a new book would be nothing else.</summary>
    private static void Labels(TextWriter to, StockAssessment stock)
    {
        var never = stock.Holdings.Count(NeverLabelled);
        if (never == 0)
            return;
        to.WriteLine();
        to.WriteLine($"No label printed yet for {never} of {stock.Holdings.Count}: 'stockroom label --all-due' prints them.");
    }

    private static bool NeverLabelled(Holding holding) => holding.Container is { LabelPrintedOn: null };

    private static string Listed(IReadOnlyList<string> ids) =>
        ids.Count <= 12 ? string.Join(", ", ids) : $"{string.Join(", ", ids.Take(12))} and {ids.Count - 12} more";

    /// <summary>The same as scripts read it.</summary>
    internal static void WriteAll(Utf8JsonWriter json, StockAssessment stock, TodayView view)
    {
        json.WriteString("book", view.BookName);
        json.WriteString("date", view.Date.Iso());
        json.WriteNumber("containers", view.Containers);
        json.WriteNumber("labels_never_printed", stock.Holdings.Count(NeverLabelled));
        json.WriteStartArray("due");
        foreach (var due in view.Due)
        {
            json.WriteStartObject();
            json.WriteString("id", due.Container);
            json.WriteString("what", due.What);
            json.WriteString("since", due.Since.Iso());
            json.WriteString("because", due.Because);
            json.WriteString("source", due.Source);
            json.WriteString("content", due.Content);
            json.WriteString("place", due.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("wrong");
        foreach (var wrong in stock.Wrong)
        {
            json.WriteStartObject();
            json.TextOrNull("id", wrong.Containers.Count > 0 ? wrong.Containers[0].ToString() : null);
            json.WriteString("what", wrong.What);
            json.DateOrNull("since", wrong.Since);
            json.WriteString("because", wrong.Because);
            json.WriteString("source", wrong.Source);
            json.WriteString("kind", wrong.Kind);
            json.WriteString("severity", wrong.Severity.ToString().ToLowerInvariant());
            json.Texts("ids", wrong.Containers.Select(c => c.ToString()));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
