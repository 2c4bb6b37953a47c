using System.CommandLine;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Desk;

namespace Stockroom.Verbs;

internal sealed class ListVerb : IVerb
{
    public string Name => "list";

    public string Summary => "What there is, and where";

    public Command Build(Surroundings around)
    {
        var place = new Option<string?>("--place") { Description = "Only what stands in a place", HelpName = "PLACE" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { place, book, asOf, json };
        command.SetAction(p =>
        {
            using var open = OpenedStock.Open(p.GetValue(book), p.GetValue(asOf), around);
            var inside = p.GetValue(place) is { } words ? open.State.FindPlace(words).Id : null;
            var holdings = open.Stock.Holdings.Where(h => inside is null || h.Path.Any(x => x.Id == inside));
            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open.Book);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    WriteAll(w, holdings);
                    w.Damage(open.Book);
                });
            else
                Print(around.Out, holdings);
            return ExitCodes.Done;
        });
        return command;
    }

    /// <summary>The members of one container, as "list" and "show" give them.</summary>
    internal static void WriteMembers(Utf8JsonWriter json, Holding holding)
    {
        var container = holding.Container;
        json.WriteString("id", holding.Id.ToString());
        json.WriteString("content", holding.Content.Name);
        json.WriteBoolean("orphan", holding.Content.IsUnknown);
        json.NumberOrNull("net_g", container.NetGrams);
        json.TextOrNull("quantity", container.Quantity);
        json.WriteString("place", container.PlaceId);
        json.WriteString("place_path", holding.PlaceWords);
        json.TextOrNull("vessel", container.Vessel);
        json.TextOrNull("closure", container.Closure);
        json.TextOrNull("cover", container.Cover?.Name);
        json.NumberOrNull("cover_mm", container.Cover?.DepthMillimetres);
        json.TextOrNull("packing", container.Packing);
        json.DateOrNull("received", container.ReceivedOn);
        json.DateOrNull("opened", container.OpenedOn);
        json.DateOrNull("sealed", container.SealedOn);
        json.NumberOrNull("sealed_at_c", container.SealedAtCelsius);
        json.NumberOrNull("sealed_pressure_bar", container.SealedAtBar);
        json.TextOrNull("hands_off", container.HandsOff);
        json.TextOrNull("pinned", container.Pinned);
        json.NumberOrNull("least_strength_percent", container.LeastPercent);
        json.TextOrNull("signal_word", holding.Label.SignalWord);
        json.Texts("pictograms", holding.Label.Pictograms);
        json.Texts("hazard_statements", holding.Label.HazardStatements.Concat(holding.Label.Supplemental).Select(s => $"{s.Code} {s.Text}"));
    }

    private static void WriteAll(Utf8JsonWriter json, IEnumerable<Holding> holdings)
    {
        json.WriteStartArray("containers");
        foreach (var holding in holdings)
        {
            json.WriteStartObject();
            WriteMembers(json, holding);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Print(TextWriter to, IEnumerable<Holding> holdings)
    {
        foreach (var holding in holdings)
        {
            var unknown = holding.Content.IsUnknown ? "contents unknown: " : "";
            to.WriteLine($"{holding.Id}  {unknown}{holding.Content.Name}, {Words.Grams(holding.Container.NetGrams)}, {holding.PlaceWords}");
        }
    }
}
