using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Book;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

internal sealed class NeighboursVerb : IVerb
{
    private const int PairsShown = 8;

    public string Name => "neighbours";

    public string Summary => "What stands nearer than it may, worst first";

    public Command Build(Surroundings around)
    {
        var place = new Option<string?>("--place") { Description = "Only what touches a place", HelpName = "PLACE" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var table = ClassTableOption.Make();
        var command = new Command(Name, Summary) { place, table, book, asOf, json };
        command.SetAction(p =>
        {
            using var open = OpenedStock.Open(p.GetValue(book), p.GetValue(asOf), around, ClassTableOption.Read(p.GetValue(table)));
            var findings = open.Stock.Findings;
            var places = open.Stock.PlaceFindings;
            if (p.GetValue(place) is { } words)
            {
                var inside = open.State.FindPlace(words).Id;
                var there = open.State.ContainersIn(inside, deep: true).Select(c => c.Id.ToString()).ToHashSet(StringComparer.Ordinal);
                findings = [.. findings.Where(f => f.Pairs.Any(x => there.Contains(x.A) || there.Contains(x.B)))];
                places = [.. places.Where(f => f.PlaceId == inside || f.Containers.Any(c => there.Contains(c.ToString())))];
            }

            if (!p.GetValue(json))
                DamageWords.Mark(around.Out, open.Book);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    WriteAll(w, open.Stock, findings, places);
                    w.Damage(open.Book);
                });
            else
                Print(around.Out, open.Stock, findings, places);
            return findings.Count + places.Count > 0 ? ExitCodes.Attention : ExitCodes.Done;
        });
        return command;
    }

    private static void WriteAll(Utf8JsonWriter json, StockAssessment stock, IReadOnlyList<Finding> findings, IReadOnlyList<PlaceFinding> places)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("cause", finding.Cause);
            json.Texts("would", finding.Would);
            json.TextOrNull("product", finding.Product);
            json.WriteString("because", finding.Rule);
            json.WriteString("source", finding.Source.ToString());
            json.WriteBoolean("verified", finding.Verified);
            json.WriteString("separation", SeparationWords.Of(finding.Separation));
            json.WriteBoolean("vapour", finding.ByAir);
            json.WriteStartArray("pairs");
            foreach (var pair in finding.Pairs)
            {
                json.WriteStartObject();
                json.WriteString("a", pair.A);
                json.WriteString("b", pair.B);
                json.WriteString("stand", SeparationWords.Of(pair.Stand));
                json.WriteString("a_content", pair.ALabel);
                json.WriteString("b_content", pair.BLabel);
                if (Breather(pair, stock) is var (id, loss))
                {
                    json.WriteString("breathes", id.ToString());
                    ForecastJson.Band(json, "breathes_g_per_year", loss?.Select(r => r.GramsPerYear));
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        foreach (var place in places)
            Write(json, place);
        json.WriteEndArray();
    }

    // A thing that stands wrong by itself has no pair and needs no separation, but another place.
    private static void Write(Utf8JsonWriter json, PlaceFinding finding)
    {
        json.WriteStartObject();
        json.WriteString("cause", finding.Cause);
        json.Texts("would", finding.Would);
        json.WriteString("because", finding.Rule);
        json.WriteString("source", finding.Source);
        json.WriteNull("separation");
        json.WriteString("place", finding.PlaceId);
        json.Texts("containers", finding.Containers.Select(c => c.ToString()));
        json.WriteStartArray("pairs");
        json.WriteEndArray();
        json.WriteEndObject();
    }

    // What does the harm through the air, and how much of it gets out by its forecast; null where that is not known.
    private static (ContainerId Id, Band<MassRate>? Loss)? Breather(FoundPair pair, StockAssessment stock)
    {
        if (pair.ABreathes is not { } first)
            return null;
        var id = ContainerId.Parse(first ? pair.A : pair.B);
        return (id, stock.Of(id).Forecast?.LossRate);
    }

    private static string Breath(FoundPair pair, StockAssessment stock) => Breather(pair, stock) is var (id, loss)
        ? $"; {id} breathes out {(loss is { } known ? $"about {Words.Number(known.Expected.GramsPerYear)} g a year ({Words.Number(known.Low.GramsPerYear)} to {Words.Number(known.High.GramsPerYear)})" : "nobody knows how much")}"
        : "";

    private static void Print(TextWriter to, StockAssessment stock, IReadOnlyList<Finding> findings, IReadOnlyList<PlaceFinding> places)
    {
        if (findings.Count + places.Count == 0)
            to.WriteLine("nothing stands nearer than it may");
        foreach (var finding in findings)
        {
            to.WriteLine(finding.Cause);
            to.WriteLine($"  source: {finding.Source}{(finding.Verified ? "" : " (not read again for this rule)")}");
            foreach (var pair in finding.Pairs.Take(PairsShown))
                to.WriteLine($"  {pair.A} {pair.ALabel} and {pair.B} {pair.BLabel}: stand {SeparationWords.Of(pair.Stand)}, need {SeparationWords.Of(finding.Separation)}{Breath(pair, stock)}");
            if (finding.Pairs.Count > PairsShown)
                to.WriteLine($"  and {finding.Pairs.Count - PairsShown} pairs more");
        }

        foreach (var place in places)
        {
            to.WriteLine(place.Cause);
            to.WriteLine($"  source: {place.Source}");
            to.WriteLine($"  containers: {string.Join(", ", place.Containers)}");
        }
    }
}
