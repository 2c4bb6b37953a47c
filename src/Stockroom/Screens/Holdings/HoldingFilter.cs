using Stockroom.Views;

namespace Stockroom.Screens.Holdings;

/// <summary>Finds the rows in whose search text every word of the filter occurs; upper and lower case are the same.</summary>
internal static class HoldingFilter
{
    /// <param name="rows">All rows; their search text is in lower case.</param>
    /// <param name="filter">What was typed; words are parted by blanks. Nothing but blanks lets every row through.</param>
    public static IReadOnlyList<HoldingRow> Apply(IReadOnlyList<HoldingRow> rows, string filter)
    {
        string[] words = Words(filter);
        if (words.Length == 0) return rows;
        var found = new List<HoldingRow>();
        foreach (HoldingRow row in rows)
            if (HasAll(row.SearchText, words)) found.Add(row);
        return found;
    }

    private static string[] Words(string filter)
    {
        string text = ScannedCode.TryId(filter, out string id) ? id : filter;
        return text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    private static bool HasAll(string text, string[] words)
    {
        foreach (string word in words)
            if (!text.Contains(word, StringComparison.Ordinal)) return false;
        return true;
    }
}
