using System.Text.Json;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Verbs;

/// <summary>What weighings make of a forecast, as scripts read it; every member is null where no two weighings compare.</summary>
internal static class WeighedJson
{
    public static void Write(Utf8JsonWriter json, WeighedForecast? weighed)
    {
        json.TextOrNull("weighings", weighed?.Because);
        ForecastJson.Band(json, "prior_g_per_year", weighed?.PriorRate.Select(r => r.GramsPerYear));
        json.TextOrNull("alarm", weighed is { Verdict: { IsAlarm: true } alarm } ? alarm.Because : null);
        if (weighed?.Verdict.Measured is not { } measured)
        {
            json.WriteNull("measured");
            return;
        }

        json.WriteStartObject("measured");
        ForecastJson.Band(json, "g_per_year", new Band<double>(measured.Low.GramsPerYear, measured.Rate.GramsPerYear, measured.High.GramsPerYear));
        json.WriteNumber("weighings", measured.Weighings);
        json.DateOrNull("from", measured.From);
        json.DateOrNull("to", measured.To);
        json.WriteString("verdict", weighed.Verdict.State.ToString().ToLowerInvariant());
        json.WriteString("because", weighed.Verdict.Because);
        json.WriteBoolean("followed", weighed.Follows);
        json.WriteEndObject();
    }
}
