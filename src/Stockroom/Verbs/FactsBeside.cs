using System.Text.Json;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Possession;
using Stockroom.Chemistry.Properties;
using Stockroom.Desk;

namespace Stockroom.Verbs;

/// <summary>What stands beside the facts of a content: other sources' values, isotopes, other forms, public rules of possession.</summary>
internal static class FactsBeside
{
    public static void Write(Utf8JsonWriter json, Content content)
    {
        json.WriteStartArray("others");
        foreach (var reading in Others(content))
        {
            json.WriteStartObject();
            json.WriteString("property", reading.Name);
            json.WriteString("value", reading.Value);
            json.WriteString("unit", reading.Unit);
            json.WriteString("source", reading.Provenance.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.TextOrNull("isotopes", Isotopes(content));
        json.Texts("forms", Forms(content));
        json.WriteStartArray("possession");
        foreach (var fact in PossessionFacts.Of(content))
        {
            json.WriteStartObject();
            json.WriteString("substance", fact.Substance.Name);
            json.WriteString("rule", fact.Rule);
            json.WriteString("kind", fact.Kind);
            json.NumberOrNull("limit_percent", fact.LimitPercent);
            json.TextOrNull("note", fact.Note);
            json.WriteString("source", fact.Provenance.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Print(TextWriter to, Content content)
    {
        foreach (var reading in Others(content))
            to.WriteLine($"another source: {reading.Name} {(reading.Temperature is { } t ? $"{Words.Number(t.Celsius)} C" : $"{reading.Value} {reading.Unit}")}  [{reading.Provenance}]");
        if (Isotopes(content) is { } isotopes)
            to.WriteLine($"isotopes: {isotopes}");
        if (Forms(content) is { Count: > 1 } forms)
            to.WriteLine($"forms: {string.Join(", ", forms)}");
        foreach (var fact in PossessionFacts.Of(content))
            to.WriteLine($"possession, to look up: {fact.Rule}: {fact.Substance.Name} is {fact.Kind}{(fact.LimitPercent is { } limit ? $" above {limit:0.###} %" : "")}{(fact.Note is { } note ? $"; {note}" : "")}  [{fact.Provenance}]");
    }

    private static IReadOnlyList<PropertyReading> Others(Content content) => content.Pure is { } pure ? PropertyFacts.Default.OtherReadings(pure) : [];

    private static IReadOnlyList<string> Forms(Content content) =>
        content.Pure?.Element is { } symbol ? [.. SubstanceCatalogue.Default.FormsOf(symbol).Select(s => s.Name)] : [];

    private static string? Isotopes(Content content)
    {
        if (content.Pure?.Element is not { } symbol || ElementIsotopes.Of(symbol) is not { } isotopes)
            return null;
        return isotopes.HalfLife is { } half
            ? $"none stable; longest-lived {isotopes.LongestLived}, half-life {Span(half.Seconds)}  [{isotopes.Provenance}]"
            : $"stable: {string.Join(", ", isotopes.Stable)}  [{isotopes.Provenance}]";
    }

    private static string Span(double seconds) => seconds switch
    {
        < 1 => $"{Words.Number(seconds * 1000)} ms",
        < 3600 => $"{Words.Number(seconds)} s",
        < 172_800 => $"{Words.Number(seconds / 3600)} hours",
        < 31_557_600 => $"{Words.Number(seconds / 86_400)} days",
        < 3.15576e13 => $"{Words.Number(seconds / 31_557_600)} years",
        < 3.15576e16 => $"{Words.Number(seconds / 3.15576e13)} million years",
        _ => $"{Words.Number(seconds / 3.15576e16)} thousand million years",
    };
}
