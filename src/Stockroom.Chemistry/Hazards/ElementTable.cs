using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Label elements of one category.</summary>
public sealed record CategoryElements(
    string HazardClass,
    string Category,
    string Statement,
    IReadOnlyList<string> Pictograms,
    string? SignalWord,
    IReadOnlyList<RuleSet> Rules,
    Provenance Provenance);

/// <summary>Which pictogram, signal word and statement each category has, from label-elements.tsv.</summary>
public sealed class ElementTable
{
    private readonly Dictionary<(string Category, string Statement), CategoryElements> _byCategory = [];

    private readonly Dictionary<string, string> _statements = new(StringComparer.Ordinal);

    private ElementTable(IReadOnlyList<CategoryElements> rows)
    {
        Rows = rows;
        foreach (var row in rows)
        {
            _byCategory.TryAdd((row.Category, row.Statement), row);
            _statements.TryAdd(row.Category, row.Statement);
        }
    }

    /// <summary>In the order of the classes, most severe first within a class.</summary>
    public IReadOnlyList<CategoryElements> Rows { get; }

    internal static ElementTable Read() => new(
        [.. EmbeddedTables.Facts("label-elements.tsv", "hazard_class", "category", "statement", "pictograms", "signal_word", "rules").Rows.Select(r => new CategoryElements(
            r.Text("hazard_class"), r.Text("category"), r.TextOrNull("statement") ?? "", r.List("pictograms"), r.TextOrNull("signal_word"), RuleSets.Read(r, "rules"), r.Provenance))]);

    /// <summary>A code without the letters that name an effect or a route: H360 for H360FD, H350 for H350i.</summary>
    public static string Base(string statement) => statement.Length > 4 && statement[0] == 'H' && !statement.Contains('+', StringComparison.Ordinal) ? statement[..4] : statement;

    public CategoryElements? Of(string category, string statement) => _byCategory.GetValueOrDefault((category, Base(statement)));

    public bool Has(string category, string statement, RuleSet rules) => Of(category, statement)?.Rules.Contains(rules) == true;

    /// <summary>The statement that belongs to a category; empty where it has none.</summary>
    public string StatementOf(string category) => _statements[category];
}
