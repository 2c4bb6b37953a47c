using System.Diagnostics.CodeAnalysis;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>
/// Leads from what a keeper writes to preferred names: exact first (name, synonym, formula, CAS number), then by the rules
/// of naming, then to the one hydrate or oxidation number that the catalogue has. Several are never chosen between.
/// </summary>
internal sealed class NameIndex
{
    private readonly Dictionary<string, string> _names = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _formulas = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _anyCase = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _withoutHydrate = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _anhydrous = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _withoutNumber = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<string>> _bare = new(StringComparer.Ordinal);

    public NameIndex(IEnumerable<string> preferred, IEnumerable<(string Synonym, string Target)> synonyms, IReadOnlyList<Substance> substances)
    {
        foreach (var name in preferred)
            AddName(name, name);
        foreach (var (synonym, target) in synonyms)
            AddName(synonym, target);
        AddNumbers(substances);
        AddFormulas(substances);
    }

    /// <summary>Names and synonyms as keys; for offering the nearest.</summary>
    public IEnumerable<string> Targets => _names.Values.Distinct();

    /// <summary>The preferred name that the words mean; or, where they mean several, those.</summary>
    public bool TryFind(string words, [NotNullWhen(true)] out string? name, out IReadOnlyList<string> several)
    {
        several = [];
        if (_formulas.TryGetValue(FormulaKey(words), out var exact) && (exact.Count == 1 || !_names.ContainsKey(NameKey.Of(words))))
            return One(exact, out name, ref several);
        foreach (var reading in NameRules.Readings(words))
        {
            if (_names.TryGetValue(NameKey.Of(reading), out name))
                return true;
        }

        if (_anyCase.TryGetValue(NameKey.Of(words), out var anyCase))
            return One(anyCase, out name, ref several);
        foreach (var reading in NameRules.Readings(words))
        {
            if (Loosely(reading) is { } found)
                return One(found, out name, ref several);
        }

        name = null;
        return false;
    }

    private static bool One(SortedSet<string> found, [NotNullWhen(true)] out string? name, ref IReadOnlyList<string> several)
    {
        name = found.Count == 1 ? found.Min : null;
        several = name is null ? [.. found] : [];
        return name is not null;
    }

    private SortedSet<string>? Loosely(string words)
    {
        if (NameRules.SaysHydrate(words))
            return _withoutNumber.GetValueOrDefault(NameKey.Of(words));
        if (_withoutHydrate.TryGetValue(NameKey.Of(words), out var hydrates) || _anhydrous.TryGetValue(NameKey.Of(words), out hydrates))
            return hydrates;
        if (!NameRules.SaysOxidationNumber(words))
            return _bare.GetValueOrDefault(NameKey.Of(words));

        // zinc(II) sulfate: the number says nothing where the catalogue's name has none.
        var key = NameKey.Of(NameRules.WithoutOxidationNumber(words));
        return _names.TryGetValue(key, out var plain) && !NameRules.SaysOxidationNumber(plain) ? [plain] : null;
    }

    private void AddName(string name, string target)
    {
        _names.TryAdd(NameKey.Of(name), target);
        var anhydrous = name.Contains("anhydrous", StringComparison.Ordinal);
        if (NameRules.SaysHydrate(name))
            Add(anhydrous ? _anhydrous : _withoutHydrate, NameKey.Of(NameRules.WithoutHydrate(name)), target);
        if (!NameRules.SaysOxidationNumber(name))
            return;
        Add(_withoutNumber, NameKey.Of(NameRules.WithoutOxidationNumber(name)), target);
        if (!anhydrous)
            Add(_bare, NameKey.Of(NameRules.WithoutHydrate(NameRules.WithoutOxidationNumber(name))), target);
    }

    private void AddNumbers(IReadOnlyList<Substance> substances)
    {
        foreach (var group in substances.Where(s => s.Cas is not null).GroupBy(s => s.Cas!.Value.Text, StringComparer.Ordinal))
            _names.TryAdd(NameKey.Of(group.Key), (Plain(group) ?? group.First()).Name);
    }

    // A formula leads to a substance where only one has it, or to the element in its plain form; isomers must be named.
    private void AddFormulas(IReadOnlyList<Substance> substances)
    {
        foreach (var group in substances.Where(s => s.Formula is not null && s.DissolvedFormOf is null).GroupBy(s => s.Formula!.Text, StringComparer.Ordinal))
        {
            var plain = Plain(group);
            foreach (var substance in group.Where(s => plain is null || s == plain))
            {
                Add(_formulas, FormulaKey(group.Key), substance.Name);
                Add(_anyCase, NameKey.Of(group.Key), substance.Name);
            }
        }
    }

    private static Substance? Plain(IEnumerable<Substance> group)
    {
        var plain = group.Where(s => s.Element is not null && s.Name.All(char.IsAsciiLetter)).Take(2).ToList();
        return plain.Count == 1 ? plain[0] : null;
    }

    // Case tells carbon monoxide from cobalt.
    private static string FormulaKey(string text) =>
        string.Concat(text.Where(c => !char.IsWhiteSpace(c)).Select(c => c is >= '₀' and <= '₉' ? (char)('0' + (c - '₀')) : c is '·' or '•' ? '.' : c));

    private static void Add(Dictionary<string, SortedSet<string>> index, string key, string target)
    {
        if (!index.TryGetValue(key, out var set))
            index[key] = set = new SortedSet<string>(StringComparer.Ordinal);
        set.Add(target);
    }
}
