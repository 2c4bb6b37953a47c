using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>
/// Reads a category as somebody else states it: "Skin Corr. 1B", "Acute Tox. 3 (oral)", "Repr. 1B H360FD", "EUH066".
/// Where the words leave the statement open, all that could be meant are taken.
/// </summary>
public sealed class CategoryWords(ElementTable elements)
{
    private static readonly Dictionary<string, string> Routes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["oral"] = "H30",
        ["dermal"] = "H31",
        ["inhalation"] = "H33",
        ["inhaled"] = "H33",
        ["vapour"] = "H33",
        ["gas"] = "H33",
        ["dust"] = "H33",
    };

    /// <summary>The categories meant, each with its statement.</summary>
    /// <param name="text">As stated.</param>
    /// <param name="source">Who states it.</param>
    /// <exception cref="FormatException">No category has these words; the message offers the nearest.</exception>
    public IReadOnlyList<AssignedCategory> Read(string text, Provenance source)
    {
        var words = text.Replace('*', ' ').Trim();
        if (words.StartsWith("Eye Irrit. 2A", StringComparison.OrdinalIgnoreCase))
            words = "Eye Irrit. 2" + words["Eye Irrit. 2A".Length..]; // CLP's category 2 is the 2A of the GHS
        if (words.StartsWith("EUH", StringComparison.Ordinal) && !elements.Rows.Any(r => r.Statement == words))
            return [new AssignedCategory("EUH", words, source, Status: EntryStatus.Given)];
        var (category, rest) = Cut(words);
        var rows = elements.Rows.Where(r => r.Category == category).ToList();
        var hint = rest.Trim('(', ')', ',', ':', ';', ' ');
        if (hint.Length > 0)
            return [new AssignedCategory(category, StatementMeant(rows, hint, text), source, Status: EntryStatus.Given)];
        return [.. rows.Select(r => new AssignedCategory(category, r.Statement, source, Status: EntryStatus.Given))];
    }

    // The longest category that the words begin with.
    private (string Category, string Behind) Cut(string words)
    {
        var found = elements.Rows.Select(r => r.Category)
            .Where(c => words.StartsWith(c, StringComparison.OrdinalIgnoreCase) && (words.Length == c.Length || !char.IsLetterOrDigit(words[c.Length])))
            .MaxBy(c => c.Length);
        if (found is not null)
            return (found, words[found.Length..]);
        var nearest = NearestNames.To(words, elements.Rows.Select(r => r.Category).Distinct());
        throw new FormatException($"'{words}' is not a category of CLP Annex VI Table 1.1, such as Skin Corr. 1B{(nearest.Count == 0 ? "" : $"; nearest: {string.Join(", ", nearest)}")}");
    }

    private static string StatementMeant(List<CategoryElements> rows, string hint, string text)
    {
        var code = hint.Split([' ', ',', ':', '(', ')'], 2)[0];
        var row = Routes.TryGetValue(code, out var beginning)
            ? rows.Find(r => r.Statement.StartsWith(beginning, StringComparison.Ordinal))
            : rows.Find(r => r.Statement.Length > 0 && ElementTable.Base(code) == r.Statement);
        if (row is null)
            throw new FormatException($"'{text}': '{hint}' does not go with {rows[0].Category}; its statements are {string.Join(", ", rows.Select(r => r.Statement))}");
        return Routes.ContainsKey(code) ? row.Statement : code;
    }
}
