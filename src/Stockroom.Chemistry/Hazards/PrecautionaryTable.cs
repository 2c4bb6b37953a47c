using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Precautionary statements of one category and the order in which they matter, from their tables.</summary>
public sealed class PrecautionaryTable
{
    private readonly Dictionary<(string Category, string Statement, RuleSet Rules), IReadOnlyList<string>> _codes = [];
    private readonly Dictionary<string, (int Rank, IReadOnlyList<string> MakesRedundant)> _order;

    private PrecautionaryTable(Table selection, Table order)
    {
        foreach (var row in selection.Rows)
        {
            string[] codes = [.. row.List("prevention"), .. row.List("response"), .. row.List("storage"), .. row.List("disposal")];
            foreach (var rules in RuleSets.Read(row, "rules"))
                _codes[(row.Text("category"), row.TextOrNull("statement") ?? "", rules)] = codes;
        }

        _order = order.Rows.ToDictionary(r => r.Text("code"), r => (r.Integer("rank"), r.List("makes_redundant")), StringComparer.Ordinal);
        foreach (var code in _codes.Values.SelectMany(c => c))
        {
            if (!_order.ContainsKey(code))
                throw new TableException(order.Name, 1, "code", $"'{code}' is used in {selection.Name} and has no rank");
        }
    }

    internal static PrecautionaryTable Read() => new(
        EmbeddedTables.Facts("precautionary-selection.tsv", "category", "statement", "rules", "prevention", "response", "storage", "disposal"),
        EmbeddedTables.Facts("precautionary-order.tsv", "code", "rank", "makes_redundant"));

    /// <summary>All codes that the label tables give a category.</summary>
    public IReadOnlyList<string> Of(ClassifiedCategory category, RuleSet rules)
    {
        var statement = ElementTable.Base(category.Statement);
        return _codes.GetValueOrDefault((category.Category, statement, rules))
            ?? _codes.GetValueOrDefault((category.Category, "", rules))
            ?? [];
    }

    /// <summary>1 matters most.</summary>
    public int RankOf(string code) => _order[code].Rank;

    /// <summary>Codes that a chosen one makes redundant.</summary>
    public IReadOnlyList<string> MadeRedundantBy(string code) => _order[code].MakesRedundant;
}
