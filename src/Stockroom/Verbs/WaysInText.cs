using System.Text.Json;
using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Ingress;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

/// <summary>What gets in and what decays, beside what gets out.</summary>
internal static class WaysInText
{
    private const double MolarVolumeMillilitres = 22_414;

    public static void Write(Utf8JsonWriter json, IReadOnlyList<IngressForecast> ingress, DecayForecast? decay)
    {
        json.WriteStartArray("ingress");
        foreach (var way in ingress)
        {
            json.WriteStartObject();
            json.WriteString("gas", way.Gas);
            json.WriteString("verdict", way.Verdict.ToString().ToLowerInvariant());
            ForecastJson.Band(json, "g_per_year", way.Rate?.Select(r => r.GramsPerYear));
            json.WriteString("because", way.Because);
            json.DateOrNull("spoiled_low", way.SpoiledLow);
            json.DateOrNull("spoiled_expected", way.SpoiledExpected);
            json.DateOrNull("spoiled_high", way.SpoiledHigh);
            json.TextOrNull("source", way.Source?.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (decay is null)
            return;
        json.WriteStartObject("decay");
        json.DateOrNull("since", decay.Since);
        json.NumberOrNull("activity_bq", decay.Total.Becquerels);
        json.WriteStartArray("nuclides");
        foreach (var (nuclide, activity) in decay.Members)
        {
            json.WriteStartObject();
            json.WriteString("nuclide", nuclide.Name);
            json.NumberOrNull("activity_bq", activity.Becquerels);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteBoolean("ore_in_equilibrium", decay.InEquilibrium);
        json.NumberOrNull("helium_ml_stp", decay.Helium.Moles * MolarVolumeMillilitres);
        json.WriteEndObject();
    }

    public static IEnumerable<string> Lines(IReadOnlyList<IngressForecast> ingress, DecayForecast? decay, bool explain)
    {
        foreach (var way in ingress.Where(w => explain || w.Verdict == PathVerdict.Applies))
        {
            var gas = way.Gas == "water" ? "moisture" : way.Gas;
            yield return way.Rate is { } rate
                ? $"{gas} in: {Words.Band(rate.Select(r => r.GramsPerYear), "g")} a year, spoiled {Words.Day(way.SpoiledExpected)} ({Words.Day(way.SpoiledLow)} to {Words.Day(way.SpoiledHigh)}); {way.Because}"
                : $"{gas} in: does not apply; {way.Because}";
        }

        if (decay is not null)
        {
            var members = string.Join(", ", decay.Members.Take(6).Select(m => $"{m.Nuclide.Name} {Becquerels(m.Activity)}"));
            yield return $"activity: {Becquerels(decay.Total)} in all {(decay.InEquilibrium ? "with every daughter of the ore in equilibrium" : $"since {decay.Since.Iso()}")}: {members}{(decay.Members.Count > 6 ? $" and {decay.Members.Count - 6} more" : "")}; helium made {Words.Number(decay.Helium.Moles * MolarVolumeMillilitres)} mL at 0 C";
        }
    }

    /// <summary>With the prefix that suits the size.</summary>
    public static string Becquerels(Activity activity)
    {
        var (scale, unit) = activity.Becquerels switch { >= 1e9 => (1e9, "GBq"), >= 1e6 => (1e6, "MBq"), >= 1e3 => (1e3, "kBq"), _ => (1.0, "Bq") };
        return $"{Words.Number(activity.Becquerels / scale)} {unit}";
    }
}
