using System.Text.Json;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Verbs;

/// <summary>A forecast as scripts read it.</summary>
internal static class ForecastJson
{
    public static void WriteBody(Utf8JsonWriter json, Forecast forecast)
    {
        json.WriteString("on", forecast.On.Iso());
        Band(json, "loss_g_per_year", forecast.LossRate?.Select(r => r.GramsPerYear));
        json.WriteBoolean("complete", forecast.IsComplete);
        json.WriteStartArray("paths");
        foreach (var path in forecast.Paths)
        {
            json.WriteStartObject();
            json.WriteString("path", path.Path);
            json.WriteString("verdict", path.Verdict.ToString().ToLowerInvariant());
            json.NumberOrNull("share", path.Share.Value);
            var known = path.Verdict != PathVerdict.Unknown;
            json.NumberOrNull("g_per_year", known ? path.Rate.Expected.GramsPerYear : null);
            Band(json, "g_per_year_band", known ? path.Rate.Select(r => r.GramsPerYear) : null);
            json.WriteString("because", path.Because);
            json.TextOrNull("source", path.Source?.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Band(json, "remaining_g", forecast.Remaining?.Select(m => m.Grams));
        json.WriteStartArray("reaches");
        foreach (var reach in forecast.Reaches)
            WriteReach(json, reach.Limit, reach.Low, reach.Expected, reach.High);
        if (forecast.Strength is { } strength)
            WriteReach(json, $"half of the strength of {strength.Part} left", strength.HalfLow, strength.HalfExpected, strength.HalfHigh);
        if (forecast.Strength?.BelowUse is { } below)
            WriteReach(json, below.Limit, below.Low, below.Expected, below.High);
        if (forecast.Cover is { } cover)
            WriteReach(json, $"{cover.Cover} cover at its least", cover.FailsLow, cover.FailsExpected, cover.FailsHigh);
        foreach (var way in forecast.Ingress.Where(w => w.Verdict == PathVerdict.Applies))
            WriteReach(json, $"spoiled by {(way.Gas == "water" ? "moisture" : way.Gas)}", way.SpoiledLow, way.SpoiledExpected, way.SpoiledHigh);
        json.WriteEndArray();
        AirJson.Write(json, forecast.Air);
        WeighedJson.Write(json, forecast.Weighed);
        json.Texts("warnings", forecast.Warnings);
    }

    internal static void Band(Utf8JsonWriter json, string name, Band<double>? band)
    {
        if (band is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.NumberOrNull("low", known.Low);
        json.NumberOrNull("expected", known.Expected);
        json.NumberOrNull("high", known.High);
        json.WriteEndObject();
    }

    private static void WriteReach(Utf8JsonWriter json, string limit, DateOnly? low, DateOnly? expected, DateOnly? high)
    {
        json.WriteStartObject();
        json.WriteString("limit", limit);
        json.DateOrNull("low", low);
        json.DateOrNull("expected", expected);
        json.DateOrNull("high", high);
        json.WriteEndObject();
    }
}
