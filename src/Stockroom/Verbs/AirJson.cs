using System.Text.Json;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Verbs;

/// <summary>What a forecast says of the air, as scripts read it.</summary>
internal static class AirJson
{
    public static void Write(Utf8JsonWriter json, AirForecast? air)
    {
        json.WriteStartObject("air");
        Members(json, air);
        json.TextOrNull("space", air is null ? null : air.Room is null ? "room" : "cabinet");
        if (air?.Room is { } room)
        {
            json.WriteStartObject("room");
            Members(json, room);
            json.WriteEndObject();
        }

        if (air?.Breakage is { } breakage)
            Write(json, breakage);
        if (air?.Radon is { } radon)
            Write(json, "radon", radon);
        if (air?.Thoron is { } thoron)
            Write(json, "thoron", thoron);
        json.WriteEndObject();
    }

    private static void Members(Utf8JsonWriter json, AirForecast? air)
    {
        json.TextOrNull("gas", air?.Gases.Count > 0 ? air.Gases[0].Gas.Name : null);
        json.NumberOrNull("ppm", air?.Share?.Expected.PartsPerMillion);
        ForecastJson.Band(json, "ppm_band", air?.Share?.Select(s => s.PartsPerMillion));
        json.NumberOrNull("mg_m3", air?.Gases.Count > 0 ? air.Concentration.Expected.MilligramsPerCubicMetre : null);
        json.NumberOrNull("limit_ppm", air?.Limit?.Share?.PartsPerMillion);
        json.TextOrNull("limit_kind", air?.Limit is { } limit ? $"{limit.Name}, {limit.Kind}" : null);
        json.NumberOrNull("share_of_limit", air?.ShareOfLimit?.Value);
        json.NumberOrNull("share_of_lower_flammable_limit", air?.ShareOfLowerFlammableLimit?.Value);
        json.NumberOrNull("oxygen_percent", air?.Oxygen.Percent);
    }

    private static void Write(Utf8JsonWriter json, AirBreakage breakage)
    {
        json.WriteStartObject("breakage");
        json.WriteString("gas", breakage.Gas.Name);
        json.NumberOrNull("ppm", breakage.Share?.PartsPerMillion);
        json.NumberOrNull("share_of_limit", breakage.ShareOfLimit?.Value);
        json.NumberOrNull("share_of_immediately_dangerous", breakage.ShareOfDanger?.Value);
        json.NumberOrNull("share_of_lower_flammable_limit", breakage.ShareOfLowerFlammableLimit?.Value);
        json.NumberOrNull("oxygen_percent", breakage.Oxygen.Percent);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, RadonForecast radon)
    {
        json.WriteStartObject(name);
        ForecastJson.Band(json, "bq_m3", radon.Inner.Select(b => b.BecquerelsPerCubicMetre));
        ForecastJson.Band(json, "room_bq_m3", radon.Room?.Select(b => b.BecquerelsPerCubicMetre));
        json.NumberOrNull("reference_bq_m3", radon.ShareOfReference is null ? null : RadonForecast.Reference.BecquerelsPerCubicMetre);
        json.NumberOrNull("share_of_reference", radon.ShareOfReference?.Expected.Value);
        json.WriteString("because", radon.Because);
        json.WriteEndObject();
    }

    /// <summary>The same in lines.</summary>
    public static IEnumerable<string> Lines(AirForecast? air)
    {
        if (air is null)
            yield break;
        if (air.Gases.Count > 0)
        {
            yield return $"air of the {(air.Room is null ? "room" : "cabinet")}: {In(air)}";
            if (air.Room is { } room)
                yield return $"air of the room: {In(room)}";
        }

        if (air.Breakage is { } b)
            yield return $"if it breaks: {b.Gas.Name} {Share(b.Share)} in the {(air.Room is null ? "room" : "closed cabinet")}{Times(b.ShareOfLowerFlammableLimit, "the lower flammable limit")}{Times(b.ShareOfDanger, "what is immediately dangerous")}{(b.Oxygen < AirForecast.LeastOxygen ? $", oxygen {b.Oxygen.Percent:0.0} %" : "")}";
        if (air.Radon is { } radon)
            yield return $"radon: {In(radon)}, reference 300 Bq/m3; {radon.Because}";
        if (air.Thoron is { } thoron)
            yield return $"thoron: {In(thoron)}, no reference level of its own; {thoron.Because}";
    }

    private static string In(RadonForecast radon) =>
        $"{PerCubicMetre(radon.Inner.Expected)}{(radon.Room is { } room ? $", {PerCubicMetre(room.Expected)} in the room" : "")}";

    private static string PerCubicMetre(ActivityConcentration c) => $"{WaysInText.Becquerels(new Activity(c.BecquerelsPerCubicMetre))}/m3";

    private static string In(AirForecast air) =>
        $"{air.Gases[0].Gas.Name} {Share(air.Share?.Expected)} ({Share(air.Share?.Low)} to {Share(air.Share?.High)}){Times(air.ShareOfLimit, air.Limit is { } l ? $"the limit ({l.Name}, {l.Kind})" : "the limits")}{Times(air.ShareOfLowerFlammableLimit, "the lower flammable limit")}{(air.Oxygen < AirForecast.LeastOxygen ? $", oxygen {air.Oxygen.Percent:0.0} %" : "")}";

    private static string Share(Fraction? share) => share is not { } s ? "?" : s.PartsPerMillion >= 10_000 ? $"{s.Percent:0.#} %" : $"{Words.Number(s.PartsPerMillion)} ppm";

    private static string Times(Fraction? share, string of) => share is not { } s ? "" : $", {(s.Value >= 100 ? $"{s.Value:0} times" : s.Value >= 1 ? $"{s.Value:0.#} times" : $"{Words.Number(s.Percent)} % of")} {of}";
}
