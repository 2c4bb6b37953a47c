using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Elements without a stable isotope: GHS is blind to radiation, so a word stands beside it.</summary>
public sealed class RadioactiveElements
{
    private readonly Dictionary<string, (string Word, Provenance Source)> _words;

    private RadioactiveElements(Table table) =>
        _words = table.Rows.ToDictionary(r => r.Text("element"), r => (r.Text("word"), r.Provenance), StringComparer.Ordinal);

    internal static RadioactiveElements Read() => new(EmbeddedTables.Facts("radioactive-elements.tsv", "element", "word"));

    public bool IsRadioactive(string element) => _words.ContainsKey(element);

    /// <summary>The word to print beside the label elements, with the elements it is for; null where none of them is radioactive.</summary>
    public (string Word, IReadOnlyList<string> Elements, Provenance Source)? In(Content content)
    {
        var found = content.Parts
            .SelectMany(p => p.Substance.Formula?.Atoms.Keys ?? Enumerable.Empty<string>())
            .Where(_words.ContainsKey)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ToList();
        return found.Count == 0 ? null : (_words[found[0]].Word, found, _words[found[0]].Source);
    }
}
