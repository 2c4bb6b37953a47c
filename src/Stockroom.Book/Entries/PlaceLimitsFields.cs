using Stockroom.Book.Encoding;
using Stockroom.Book.Places;

namespace Stockroom.Book.Entries;

/// <summary>How a place's limits are written in an entry.</summary>
internal static class PlaceLimitsFields
{
    public static PlaceLimits Read(EntryReader r) => new()
    {
        HeightMetres = r.NumberOrNull("height_m"),
        Position = (int?)r.IntegerOrNull("position"),
        MeanCelsius = r.NumberOrNull("mean_c"),
        MinCelsius = r.NumberOrNull("min_c"),
        MaxCelsius = r.NumberOrNull("max_c"),
        SwingKelvin = r.NumberOrNull("swing_k"),
        LeakTight = r.FlagOrNull("leak_tight"),
        MaxLoadKilograms = r.NumberOrNull("max_load_kg"),
        MaxContainers = (int?)r.IntegerOrNull("max_containers"),
        SeasonalSwingKelvin = r.NumberOrNull("seasonal_swing_k"),
        WarmestMonth = (int?)r.IntegerOrNull("warmest_month"),
        Light = r.TextOrNull("light") is { } light ? PlaceLimits.ParseLight(light) : null,
        MaxLitres = r.NumberOrNull("max_l"),
        MaxFlammableLitres = r.NumberOrNull("max_flammable_l"),
        AirChangesPerHour = r.NumberOrNull("air_changes_per_h"),
        HasDoor = r.FlagOrNull("door"),
        IsLocked = r.FlagOrNull("locked"),
        IsWooden = r.FlagOrNull("wooden"),
        IsNearHeat = r.FlagOrNull("near_heat"),
        IsForFlammables = r.FlagOrNull("for_flammables"),
    };

    public static void Write(PlaceLimits limits, EntryWriter w)
    {
        w.Number("height_m", limits.HeightMetres);
        w.Integer("position", limits.Position);
        w.Number("mean_c", limits.MeanCelsius);
        w.Number("min_c", limits.MinCelsius);
        w.Number("max_c", limits.MaxCelsius);
        w.Number("swing_k", limits.SwingKelvin);
        w.Flag("leak_tight", limits.LeakTight);
        w.Number("max_load_kg", limits.MaxLoadKilograms);
        w.Integer("max_containers", limits.MaxContainers);
        w.Number("seasonal_swing_k", limits.SeasonalSwingKelvin);
        w.Integer("warmest_month", limits.WarmestMonth);
        w.Text("light", limits.Light is { } light ? PlaceLimits.WordOf(light) : null);
        w.Number("max_l", limits.MaxLitres);
        w.Number("max_flammable_l", limits.MaxFlammableLitres);
        w.Number("air_changes_per_h", limits.AirChangesPerHour);
        w.Flag("door", limits.HasDoor);
        w.Flag("locked", limits.IsLocked);
        w.Flag("wooden", limits.IsWooden);
        w.Flag("near_heat", limits.IsNearHeat);
        w.Flag("for_flammables", limits.IsForFlammables);
    }
}
