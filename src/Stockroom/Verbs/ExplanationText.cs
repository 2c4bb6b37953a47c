using System.Globalization;
using System.Text.Json;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

/// <summary>The network behind a forecast, in lines and as scripts read it.</summary>
internal static class ExplanationText
{
    public static void Write(Utf8JsonWriter json, LossExplanation explanation)
    {
        json.WriteStartArray("explain");
        foreach (var path in explanation.Paths)
        {
            json.WriteStartObject();
            json.WriteString("path", path.Path);
            json.WriteString("joined", path.Joined);
            json.TextOrNull("equation", path.Equation);
            json.NumberOrNull("resistance_s_per_m3", path.Resistance?.SecondsPerCubicMetre);
            json.NumberOrNull("g_per_year", path.Rate?.Expected.GramsPerYear);
            json.WriteString("because", path.Because);
            json.TextOrNull("source", path.Source?.ToString());
            WriteLags(json, path.Lags);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("network");
        json.NumberOrNull("vapour_g_per_m3", explanation.Vapour?.KilogramsPerCubicMetre * 1000);
        json.WriteString("combined", LossExplanation.Combined);
        json.WriteString("lag", LossEquations.Lag);
        json.WriteString("lag_source", LossEquations.LagSource.ToString());
        json.WriteString("lag_because", explanation.Lagging);
        ForecastJson.Band(json, "g_per_year", explanation.Total.Select(r => r.GramsPerYear));
        json.WriteEndObject();
    }

    public static void Print(TextWriter to, LossExplanation explanation)
    {
        to.WriteLine($"network: {LossExplanation.Combined}");
        if (explanation.Vapour is { } vapour)
            to.WriteLine($"vapour: {Figure(vapour.KilogramsPerCubicMetre * 1000)} g/m3 at saturation");
        foreach (var path in explanation.Paths.Where(p => p.Joined != "none"))
        {
            to.WriteLine($"{path.Path}, {path.Joined}: {path.Equation}");
            var rate = path is { Rate: { } r, Joined: not ("in series" or "in series with all" or "strength") } ? $"; in the network {Words.Band(r.Select(x => x.GramsPerYear), "g")} a year" : "";
            to.WriteLine($"  {(path.Resistance is { } x ? $"R = {Figure(x.SecondsPerCubicMetre)} s/m3{rate}" : rate.TrimStart(';', ' '))}{(path.Source is { } source ? $" [{source}]" : "")}".TrimEnd());
            foreach (var lag in path.Lags)
                to.WriteLine(LagLine(lag));
        }

        if (explanation.Paths.Any(p => p.Lags.Count > 0))
            to.WriteLine($"lag: {LossEquations.Lag}; {explanation.Lagging} [{LossEquations.LagSource}]");
    }

    private static void WriteLags(Utf8JsonWriter json, IReadOnlyList<SheetLag> lags)
    {
        json.WriteStartArray("lags");
        foreach (var lag in lags)
        {
            json.WriteStartObject();
            json.WriteString("part", lag.Part.Name);
            ForecastJson.Band(json, "days", lag.Lag?.Select(l => l.Days));
            json.WriteString("because", lag.Because);
            json.TextOrNull("source", lag.Source?.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string LagLine(SheetLag lag) => lag.Lag is { } l
        ? $"  lag L of {lag.Part.Name} {Figure(l.Expected.Days)} days ({Figure(l.Low.Days)} to {Figure(l.High.Days)}): {lag.Because} [{lag.Source}]"
        : $"  lag of {lag.Part.Name}: {lag.Because}";

    private static string Figure(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
