using System.CommandLine;
using System.Text.Json;
using Stockroom.Labels.Stocks;

namespace Stockroom.Verbs;

internal sealed class StocksVerb : IVerb
{
    public string Name => "stocks";

    public string Summary => "Label stocks that can be printed on";

    /// <summary>The program's stocks, with those of the keeper's own folder on top.</summary>
    internal static LabelStocks Load(Surroundings around)
    {
        var own = Path.Combine(around.DataFolder, "labels", "stocks");
        return LabelStocks.Load(Directory.Exists(own) ? own : null);
    }

    public Command Build(Surroundings around)
    {
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { json };
        command.SetAction(p =>
        {
            var stocks = Load(around).All;
            if (p.GetValue(json))
            {
                JsonDocumentWriter.Write(around.Out, w => WriteAll(w, stocks));
                return ExitCodes.Done;
            }

            foreach (var stock in stocks)
                around.Out.WriteLine($"{stock.Name}: {stock.LabelWidthMm} x {stock.LabelHeightMm} mm, {(stock.Medium == StockMedium.Sheet ? $"{stock.PerSheet} on a sheet" : "on a roll")}; {stock.Description}");
            around.Out.WriteLine($"your own: a file a stock in {Path.Combine(around.DataFolder, "labels", "stocks")}");
            return ExitCodes.Done;
        });
        return command;
    }

    private static void WriteAll(Utf8JsonWriter json, IReadOnlyCollection<LabelStock> stocks)
    {
        json.WriteStartArray("stocks");
        foreach (var stock in stocks)
        {
            json.WriteStartObject();
            json.WriteString("name", stock.Name);
            json.WriteNumber("width_mm", stock.LabelWidthMm);
            json.WriteNumber("height_mm", stock.LabelHeightMm);
            json.WriteNumber("per_sheet", stock.PerSheet);
            json.WriteString("medium", stock.Medium switch { StockMedium.Sheet => "sheet", StockMedium.DieCutRoll => "die-cut roll", _ => "continuous roll" });
            json.WriteString("shape", stock.Shape.ToString().ToLowerInvariant());
            json.WritePropertyName("diameter_mm");
            if (stock.DiameterMm is { } diameter)
                json.WriteNumberValue(diameter);
            else
                json.WriteNullValue();
            json.WriteString("description", stock.Description);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
