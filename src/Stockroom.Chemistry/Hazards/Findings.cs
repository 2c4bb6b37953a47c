using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>What the hazard classes find while they judge one mixture.</summary>
public sealed class Findings(HazardFacts facts, RuleSet rules)
{
    private readonly List<ClassifiedCategory> _categories = [];
    private readonly List<Reason> _reasons = [];
    private readonly List<string> _notes = [];
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _supplemental = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _sensitisers = new(StringComparer.Ordinal);
    private readonly Dictionary<ExposureRoute, decimal> _estimates = [];
    private readonly Dictionary<ExposureRoute, decimal> _unknown = [];

    public HazardFacts Facts { get; } = facts;

    public RuleSet Rules { get; } = rules;

    public IReadOnlyList<ClassifiedCategory> Categories => _categories;

    public IReadOnlyList<Reason> Reasons => _reasons;

    public IReadOnlyList<string> Notes => _notes;

    public IReadOnlyCollection<string> Supplemental => _supplemental;

    public IReadOnlyCollection<string> Sensitisers => _sensitisers;

    public IReadOnlyDictionary<ExposureRoute, decimal> Estimates => _estimates;

    public IReadOnlyDictionary<ExposureRoute, decimal> Unknown => _unknown;

    /// <summary>Adds a category, unless these rules do not have it; a second finding of the same adds its reason only.</summary>
    public void Add(string category, string statement, string? organs, Func<string> because, Provenance source)
    {
        if (!Facts.Elements.Has(category, statement, Rules))
        {
            Note($"{category} is not a category of these rules and is left out");
            return;
        }

        if (!_categories.Exists(c => c.Category == category && c.Statement == statement))
            _categories.Add(new ClassifiedCategory(category, statement, organs));
        _reasons.Add(new Reason(category, because, source));
    }

    /// <summary>Adds a supplemental statement; only CLP has them.</summary>
    public void AddSupplemental(string code, Func<string> because, Provenance source)
    {
        if (Rules != RuleSet.Eu)
            return;
        _supplemental.Add(code);
        _reasons.Add(new Reason(code, because, source));
    }

    /// <summary>Takes away categories that a more severe finding of the same class replaces, with their reasons.</summary>
    public void Supersede(Func<string, bool> lesser)
    {
        _categories.RemoveAll(c => lesser(c.Category));
        _reasons.RemoveAll(r => lesser(r.Category));
    }

    public void AddSensitiser(string name) => _sensitisers.Add(name);

    public void Note(string note)
    {
        if (_said.Add(note))
            _notes.Add(note);
    }

    public void Estimate(ExposureRoute route, decimal value) => _estimates[route] = value;

    public void UnknownShare(ExposureRoute route, decimal percent) => _unknown[route] = percent;

    public bool Any(Func<ClassifiedCategory, bool> predicate) => _categories.Exists(c => predicate(c));
}
