using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>What words in an orphan's description suggest, and what its label says, from orphan-words.tsv and label-words.tsv.</summary>
public sealed class OrphanWords
{
    private readonly List<(string Word, ClassifiedCategory Category)> _words;
    private readonly Dictionary<string, string> _label;

    private OrphanWords(Table words, Table label)
    {
        _words = [.. words.Rows.Select(r => (r.Text("word"), new ClassifiedCategory(r.Text("category"), r.Text("statement"))))];
        _label = label.Rows.ToDictionary(r => r.Text("code"), r => r.Text("text"), StringComparer.Ordinal);
    }

    internal static OrphanWords Read() => new(
        EmbeddedTables.Facts("orphan-words.tsv", "word", "category", "statement"),
        EmbeddedTables.Facts("label-words.tsv", "code", "text"));

    /// <summary>Categories that a description suggests. They are suspicions, not findings.</summary>
    public IReadOnlyList<ClassifiedCategory> SuspectedFrom(string description) =>
        [.. _words.Where(w => description.Contains(w.Word, StringComparison.OrdinalIgnoreCase)).Select(w => w.Category).Distinct()];

    /// <summary>Words that a label prints where nothing, or not everything, is known of its content.</summary>
    public string LabelText(string code) => _label[code];
}
