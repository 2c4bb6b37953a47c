using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Desk;

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
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { id, book, asOf, json };
        command.SetAction(p =>
        {
            using var open = OpenedStock.Open(p.GetValue(book), p.GetValue(asOf), around);
            var holding = open.Stock.Of(BookAccess.Id(p.GetRequiredValue(id)));
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open.Book);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w => WriteOne(w, holding, open));
            else
                Print(around.Out, CardWriter.Write(holding, open.Stock, open.Book.Ledger));
            return ExitCodes.Done;
        });
        return command;
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
        json.Texts("wrong", open.Stock.Wrong.Where(w => w.Containers.Contains(holding.Id)).Select(w => w.What));
        json.Texts("due", open.Stock.Due.Where(d => d.Container == holding.Id).Select(d => d.What));
        json.WriteStartArray("history");
        foreach (var number in container.History)
            json.WriteNumberValue(number);
        json.WriteEndArray();
        json.Damage(open.Book);
    }
}
