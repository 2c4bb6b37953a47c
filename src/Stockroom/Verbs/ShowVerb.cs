using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Desk;
using Stockroom.Labels.Output;

namespace Stockroom.Verbs;

internal sealed class ShowVerb : IVerb
{
    public string Name => "show";

    public string Summary => "Everything known of one container";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string>("ID") { Description = "Container id, as printed, spoken or scanned" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var attachment = new Option<int?>("--attachment") { Description = "Get the file out again that stands under this number among its attachments", HelpName = "N" };
        var output = new Option<string?>("--out") { Description = "Where the attachment is written", HelpName = "FILE" };
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { id, attachment, output, book, asOf, json };
        command.SetAction(p =>
        {
            using var open = OpenedStock.Open(p.GetValue(book), p.GetValue(asOf), around);
            var holding = open.Stock.Of(BookAccess.Id(p.GetRequiredValue(id)));
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open.Book);
            if (p.GetValue(attachment) is { } number)
                GetOut(holding, number, p.GetValue(output), open, around, p.GetValue(json));
            else if (p.GetValue(output) is not null)
                throw RefusedException.Words("--out needs the number of an attachment: --attachment N");
            else if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w => WriteOne(w, holding, open));
            else
                Print(around.Out, CardWriter.Write(holding, open.Stock, open.Book.Ledger));
            return ExitCodes.Done;
        });
        return command;
    }

    private static void GetOut(Holding holding, int number, string? to, OpenedStock open, Surroundings around, bool json)
    {
        var attachments = holding.Container.Attachments;
        if (number < 1 || number > attachments.Count)
            throw RefusedException.Words($"{holding.Id} has no attachment {number}; it has {(attachments.IsEmpty ? "none" : $"1 to {attachments.Count}")}");
        var kept = attachments[number - 1];
        var path = to ?? throw RefusedException.Words($"a file to write '{kept.Name}' to is needed: --out FILE");
        var content = open.ReadAttachment(kept.Sha256);
        OutputFile.Write(path, s => s.Write(content));
        if (json)
        {
            JsonDocumentWriter.Write(around.Out, w =>
            {
                w.WriteString("file", path);
                w.WriteString("name", kept.Name);
                w.WriteString("sha256", kept.Sha256);
                w.WriteNumber("bytes", kept.Bytes);
            });
            return;
        }

        around.Out.WriteLine($"'{kept.Name}' ({kept.MediaType}, {kept.Bytes} bytes) in {path}");
    }

    private static void Print(TextWriter to, Views.Card card)
    {
        to.WriteLine(card.Title);
        foreach (var section in card.Sections)
        {
            to.WriteLine();
            to.WriteLine(section.Heading);
            foreach (var line in section.Lines)
                to.WriteLine($"  {(line.Label.Length == 0 ? "" : line.Label + ": ")}{line.Value}");
        }
    }

    private static void WriteAttachments(Utf8JsonWriter json, Book.Containers.Container container)
    {
        json.WriteStartArray("attachments");
        foreach (var (kept, index) in container.Attachments.Select((a, i) => (a, i)))
        {
            json.WriteStartObject();
            json.WriteNumber("number", index + 1);
            json.WriteString("name", kept.Name);
            json.WriteString("media_type", kept.MediaType);
            json.WriteNumber("bytes", kept.Bytes);
            json.WriteString("sha256", kept.Sha256);
            json.WriteString("on", kept.On.Iso());
            json.TextOrNull("note", kept.Note);
            json.WriteNumber("entry", kept.Entry);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteOne(Utf8JsonWriter json, Holding holding, OpenedStock open)
    {
        var container = holding.Container;
        ListVerb.WriteMembers(json, holding);
        json.TextOrNull("seen", container.Seen);
        json.TextOrNull("found_by", container.FoundBy);
        json.NumberOrNull("tare_g", container.TareGrams);
        json.NumberOrNull("last_gross_g", container.LastGrossGrams);
        json.NumberOrNull("density_g_ml", container.Density?.GramsPerMillilitre);
        json.TextOrNull("density_source", container.Density?.Source);
        json.WriteStartArray("composition");
        foreach (var part in holding.Content.Parts)
        {
            json.WriteStartObject();
            json.WriteString("substance", part.Substance.Name);
            json.WriteNumber("percent", part.Percent);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("lot");
        json.WriteString("how", Book.Containers.Lot.WordOf(container.Lot.How));
        json.TextOrNull("origin", container.Lot.Origin);
        json.WriteEndObject();
        json.Texts("categories", holding.Classification.Categories.Select(c => c.Category));
        if (holding.Forecast is { } forecast)
            ForecastJson.WriteBody(json, forecast);
        json.WriteStartArray("weigh_ins");
        foreach (var weighing in container.Weighings)
        {
            json.WriteStartObject();
            json.WriteString("on", weighing.On.Iso());
            json.WriteNumber("gross_g", weighing.GrossGrams);
            json.NumberOrNull("readability_g", weighing.ReadabilityGrams);
            json.NumberOrNull("temperature_c", weighing.TemperatureCelsius);
            json.NumberOrNull("pressure_hpa", weighing.PressureHectopascals);
            json.NumberOrNull("calibration_g", weighing.CalibrationGrams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteAttachments(json, container);
        json.Texts("wrong", open.Stock.Wrong.Where(w => w.Containers.Contains(holding.Id)).Select(w => w.What));
        json.Texts("due", open.Stock.Due.Where(d => d.Container == holding.Id).Select(d => d.What));
        json.WriteStartArray("history");
        foreach (var number in container.History)
            json.WriteNumberValue(number);
        json.WriteEndArray();
        json.Damage(open.Book);
    }
}
