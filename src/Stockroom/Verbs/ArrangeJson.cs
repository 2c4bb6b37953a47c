using System.Text.Json;
using Stockroom.Assessment.Arrangement;

namespace Stockroom.Verbs;

/// <summary>A plan, and the places for one container, as JSON.</summary>
internal static class ArrangeJson
{
    public static void WritePlan(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("moves");
        foreach (var move in plan.Moves)
        {
            json.WriteStartObject();
            json.WriteString("id", move.Key);
            json.TextOrNull("from", move.From);
            json.WriteString("to", move.To);
            json.WriteString("because", move.Because);
            json.WriteBoolean("parked", move.IsParked);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Reasons(json, "left", plan.Left.Select(l => (l.Key, l.Because)));
        Reasons(json, "hands_off", plan.HandsOff.Select(h => (h.Key, h.Because)));
        json.WriteStartArray("extra_places");
        foreach (var extra in plan.ExtraPlaces)
        {
            json.WriteStartObject();
            json.WriteString("kind", extra.Kind);
            json.WriteString("inside", extra.Inside);
            json.Texts("for", extra.For);
            json.WriteString("because", extra.Because);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteBoolean("proven_fewest", plan.IsProven);
        json.Texts("notes", plan.Notes);
    }

    public static void WritePlaces(Utf8JsonWriter json, Thing thing, IReadOnlyList<PlaceFor> places)
    {
        json.TextOrNull("id", thing.Key.Length == 0 ? null : thing.Key);
        json.WriteString("content", thing.Label);
        Reasons(json, "places", places.Where(p => p.IsSafe).Select(p => (p.Spot.Id, p.Because)));
        Reasons(json, "unsafe", places.Where(p => !p.IsSafe).Select(p => (p.Spot.Id, p.Because)));
        json.TextOrNull("hands_off", thing.HandsOff);
        json.TextOrNull("pinned", thing.Pinned);
    }

    private static void Reasons(Utf8JsonWriter json, string name, IEnumerable<(string Id, string Because)> items)
    {
        json.WriteStartArray(name);
        foreach (var (id, because) in items)
        {
            json.WriteStartObject();
            json.WriteString("id", id);
            json.WriteString("because", because);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
