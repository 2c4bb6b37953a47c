using System.Text.Json;
using Stockroom.Assessment;
using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Verbs;

/// <summary>Whether vessel, closure and cover stand what they are to hold; said with every forecast.</summary>
internal sealed record FitText(IReadOnlyList<WettedPart> Wetted, CoverFit? Cover, CoverWorth? Worth)
{
    public static FitText Of(Situation situation) => new(
        VesselFit.Of(situation, PropertyFacts.Default),
        CoverFit.Of(situation, StockFacts.Default, situation.Coldest),
        CoverWorth.Of(situation, PropertyFacts.Default));

    /// <summary>What must be known before pouring, worst first.</summary>
    public IEnumerable<string> Warnings(Situation situation)
    {
        foreach (var part in Wetted.Where(w => w.Finding.Rating == ResistanceRating.Poor))
        {
            var content = part.By == "content" ? situation.Content : PropertyFacts.Default.Catalogue.Resolve(part.Finding.Content).Content ?? situation.Content;
            yield return $"not this vessel: the {part.Part} does not stand it ({part.Finding.Because}); would do: {string.Join(", ", VesselFit.WouldDo(content, PropertyFacts.Default))}";
        }

        foreach (var point in Cover?.Points.Where(p => p.Good == false) ?? [])
            yield return $"not this cover: {point.Because}";
        foreach (var part in Wetted.Where(w => w.Finding.Rating == ResistanceRating.Limited))
            yield return $"the {part.Part} stands it only for a while: {part.Finding.Because}";
        foreach (var point in Cover?.Points.Where(p => p.Good is null) ?? [])
            yield return $"cover, not known: {point.Because}";
        if (Worth is { } worth)
            yield return $"cover: {worth.Because}";
    }

    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("wetted");
        foreach (var part in Wetted)
        {
            json.WriteStartObject();
            json.WriteString("part", part.Part);
            json.WriteString("by", part.By);
            json.WriteString("material", part.Finding.Material);
            json.TextOrNull("rating", part.Finding.Rating is { } rating ? VesselFit.Word(rating) : null);
            json.WriteString("because", part.Finding.Because);
            json.TextOrNull("source", part.Finding.Source?.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("cover_fit");
        foreach (var point in Cover?.Points ?? [])
        {
            json.WriteStartObject();
            json.WriteString("question", point.Question);
            if (point.Good is { } good)
                json.WriteBoolean("holds", good);
            else
                json.WriteNull("holds");
            json.WriteString("because", point.Because);
            json.TextOrNull("source", point.Source?.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
