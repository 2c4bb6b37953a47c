using System.Text.Json;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Verbs;

/// <summary>A classification as the JSON that scripts rely on.</summary>
internal static class ClassificationJson
{
    private static readonly (string Name, ExposureRoute Route)[] Estimates =
    [
        ("oral_mg_kg", ExposureRoute.Oral),
        ("dermal_mg_kg", ExposureRoute.Dermal),
        ("inhalation_vapour_mg_l", ExposureRoute.Vapour),
        ("inhalation_gas_ppm", ExposureRoute.Gas),
        ("inhalation_dust_mg_l", ExposureRoute.Dust),
    ];

    private static readonly (string Name, ExposureRoute Route)[] Shares =
        [("oral", ExposureRoute.Oral), ("dermal", ExposureRoute.Dermal), ("inhalation", ExposureRoute.Vapour)];

    public static void Write(Utf8JsonWriter json, ClassifyAnswer answer)
    {
        var (found, label) = (answer.Found, answer.Label);
        json.WriteString("name", answer.Name);
        json.WriteString("rules", RuleSets.Words.First(w => w.Value == found.Rules).Key);
        json.Texts("categories", found.Categories.Select(c => c.Category).Distinct());
        json.TextOrNull("signal_word", label.SignalWord);
        json.Texts("pictograms", label.Pictograms);
        json.Texts("optional_pictograms", label.OptionalPictograms);
        Statements(json, "hazard_statements", label.HazardStatements.Concat(label.Supplemental.Where(s => s.Code.Length > 0)));
        Statements(json, "precautionary_statements", label.Precautionary);
        json.WriteStartObject("ate_mix");
        foreach (var (name, route) in Estimates)
            json.NumberOrNull(name, found.AcuteEstimates.TryGetValue(route, out var ate) ? (double)ate : null);
        json.WriteEndObject();
        json.WriteStartArray("reasons");
        foreach (var reason in found.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("category", reason.Category);
            json.WriteString("because", reason.Because);
            json.WriteString("source", reason.Source.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("unknown_share_percent");
        foreach (var (name, route) in Shares)
            json.WriteNumber(name, Math.Round(found.UnknownShares.GetValueOrDefault(route), 4));
        json.WriteEndObject();
        json.Texts("unclassified", found.Unclassified);
        json.Texts("words_beside", label.WordsBeside);
        json.Texts("notes", Notes(answer));
    }

    /// <summary>The notes, with what stands beside the label elements.</summary>
    public static IEnumerable<string> Notes(ClassifyAnswer answer) =>
        [.. answer.Found.Notes, .. answer.Label.Supplemental.Where(s => s.Code.Length == 0).Select(s => s.Text)];

    private static void Statements(Utf8JsonWriter json, string name, IEnumerable<LabelStatement> statements)
    {
        json.WriteStartArray(name);
        foreach (var statement in statements)
        {
            json.WriteStartObject();
            json.WriteString("code", statement.Code);
            json.WriteString("text", statement.Text);
            json.WriteString("because", statement.Because);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
