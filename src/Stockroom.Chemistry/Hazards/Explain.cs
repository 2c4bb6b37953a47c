using System.Globalization;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The sentences that say why.</summary>
internal static class Explain
{
    public static string Entry(string name, AssignedCategory category)
    {
        var by = category.Status switch
        {
            EntryStatus.Harmonised => "by its harmonised entry",
            EntryStatus.Group => "by a group entry",
            EntryStatus.Self => "self-classified, no harmonised entry",
            EntryStatus.Own => "by the keeper's own classification",
            _ => "as given",
        };
        return $"{name}: {by}{(category.Minimum ? ", a minimum classification" : "")}";
    }

    public static string Limit(Ingredient ingredient, ConcentrationLimit limit)
    {
        var range = limit.ToPercent is { } to
            ? $"{(limit.Above ? "above" : "from")} {Percent(limit.FromPercent)} {(limit.ToIncluded ? "up to" : "to below")} {Percent(to)}"
            : $"{(limit.Above ? "above" : "from")} {Percent(limit.FromPercent)} on";
        return $"{Share(ingredient)}: specific limit {range}";
    }

    public static string Share(Ingredient ingredient) => ingredient.Profile.CountedShare == 1m
        ? $"{ingredient.Name} {Percent(ingredient.Percent)}"
        : $"{ingredient.Name} {Percent(ingredient.Percent)}, counted as {Percent(ingredient.Counted)} ({ingredient.Profile.CountedNote})";

    public static string Percent(decimal value) => Number(value) + " %";

    /// <summary>A figure to at most four places, without closing noughts.</summary>
    public static string Number(decimal value) => Math.Round(value, 4).ToString("0.####", CultureInfo.InvariantCulture);
}
