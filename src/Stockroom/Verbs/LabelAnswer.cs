using System.Text.Json;
using Stockroom.Chemistry.Hazards;
using Stockroom.Desk;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Stocks;

namespace Stockroom.Verbs;

/// <summary>What the verb label tells of its labels: what fits, what was left off by which clause, what would do.</summary>
internal sealed record LabelAnswer(IReadOnlyList<string> Files, string? Printed, LabelStock Stock, LabelStocks Stocks, LabelWishes Wishes, IReadOnlyList<(LabelText Text, LabelFit Fit)> Labels)
{
    public void Print(TextWriter to)
    {
        var where = Printed is null ? $"in {string.Join(", ", Files)}" : $"sent to the printer{(Printed.Length > 0 ? $": {Printed}" : "")}";
        to.WriteLine($"{Labels.Count} label{(Labels.Count == 1 ? "" : "s")} on {Stock.Name} {where}");
        foreach (var (text, fit) in Labels)
        {
            var who = $"{text.Id ?? "SAMPLE"} {text.Title}";
            if (fit.Relief is { } relief)
                to.WriteLine($"{who}: {relief}");
            foreach (var off in fit.LeftOff.Where(o => o.Required))
                to.WriteLine($"{who}: {(off.ForRoom ? "no room for" : "without")} {off.What}{(off.ForRoom && fit.StocksThatWouldDo.Count > 0 ? $"; it fits on {string.Join(", ", fit.StocksThatWouldDo.Take(3))}" : "")}");
            foreach (var note in fit.Notes)
                to.WriteLine($"{who}: {note}");
        }

        foreach (var remark in Remarks)
            to.WriteLine(remark);
    }

    public void Write(Utf8JsonWriter json)
    {
        json.TextOrNull("file", Files.Count > 0 ? Files[0] : null);
        json.Texts("files", Files);
        json.TextOrNull("printed", Printed);
        json.WriteString("stock", Stock.Name);
        json.WriteString("rules", RuleSets.Words.First(w => w.Value == Wishes.Rules).Key);
        json.WriteStartArray("labels");
        foreach (var (text, fit) in Labels)
        {
            json.WriteStartObject();
            json.TextOrNull("id", text.Id);
            json.WriteString("title", text.Title);
            json.WriteString("design", fit.Design);
            json.WriteBoolean("complete", fit.IsComplete);
            json.TextOrNull("relief", fit.Relief);
            json.NumberOrNull("pictogram_mm", fit.PictogramSideMm, 1);
            json.NumberOrNull("x_height_mm", fit.StatementXHeightMm, 2);
            json.Texts("left_off", fit.LeftOff.Select(o => o.What));
            json.Texts("stocks_that_would_do", fit.StocksThatWouldDo);
            json.Texts("notes", fit.Notes);
            json.TextOrNull("code", fit.Code?.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Texts("notes", Remarks);
    }

    /// <summary>What holds for all of them.</summary>
    private IEnumerable<string> Remarks
    {
        get
        {
            if (Wishes.Formatting2024)
                yield return "sizes and looks as Regulation (EU) 2024/2865 asks; its date of application was put off, check the date it applies";
            if (Wishes.Black && Stock.Frames.Count == 0)
            {
                var framed = Stocks.All.Where(s => s.Frames.Count > 0).Select(s => $"{s.Name} ({s.Frames.Count})").ToList();
                yield return (Wishes.Inside
                    ? "black frames are for use inside only, as your authority allows; nothing so labelled is handed on"
                    : "the frames must be red: the labels say so")
                    + $"; stock with red frames printed on it, all of which must be filled: {string.Join(", ", framed)}";
            }
        }
    }
}
