using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Families, the substances that bring them, and the rules between them, ready for judging. Immutable.</summary>
public sealed class ContactFacts
{
    internal const string Harmless = "harmless";

    private static readonly Lazy<ContactFacts> Embedded = new(() => ContactTables.ReadEmbedded());

    private readonly Dictionary<string, ContactFamily> _families;
    private readonly Dictionary<string, int> _familyIndex = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<SubstanceFamily>> _bySubstance;
    private readonly Dictionary<string, List<(decimal FromPercent, int Term)>> _substanceTerms;
    private readonly List<ContactRule>?[] _rules;
    private readonly TermSet[] _partners;
    private readonly TermSet[] _farPartners;
    private readonly int _terms;

    internal ContactFacts(
        IReadOnlyList<ContactFamily> families,
        Dictionary<string, List<SubstanceFamily>> bySubstance,
        Dictionary<string, List<(decimal FromPercent, int Term)>> substanceTerms,
        IReadOnlyList<ContactRule> rules,
        int terms)
    {
        Families = families;
        _families = families.ToDictionary(f => f.Key, StringComparer.Ordinal);
        for (var i = 0; i < families.Count; i++)
            _familyIndex[families[i].Key] = i;
        _bySubstance = bySubstance;
        _substanceTerms = substanceTerms;
        Rules = rules;
        _terms = terms;
        _rules = new List<ContactRule>?[terms * terms];
        _partners = [.. Enumerable.Range(0, terms).Select(_ => new TermSet(terms))];
        _farPartners = [.. Enumerable.Range(0, terms).Select(_ => new TermSet(terms))];
        foreach (var rule in rules)
        {
            Enter(rule, rule.A.Index, rule.B.Index);
            if (rule.A.Index != rule.B.Index)
                Enter(rule, rule.B.Index, rule.A.Index);
        }
    }

    /// <summary>The facts that come with the program.</summary>
    public static ContactFacts Default => Embedded.Value;

    public IReadOnlyList<ContactFamily> Families { get; }

    /// <summary>Names of all substances that the tables say something about.</summary>
    public IEnumerable<string> Substances => _bySubstance.Keys;

    /// <summary>Every rule, in the order of the tables.</summary>
    public IReadOnlyList<ContactRule> Rules { get; }

    /// <summary>Index of the term that every content carries unless it is inert.</summary>
    internal int Anything => Families.Count;

    internal ContactFamily Family(string key) => _families[key];

    internal int IndexOf(string family) => _familyIndex[family];

    /// <summary>Null where nothing is written of the substance.</summary>
    internal IReadOnlyList<SubstanceFamily>? FamiliesOf(string substance) => _bySubstance.GetValueOrDefault(substance);

    internal IReadOnlyList<(decimal FromPercent, int Term)> TermsOf(string substance) =>
        _substanceTerms.TryGetValue(substance, out var terms) ? terms : [];

    /// <summary>All terms of substances in one state of matter: what an unknown content could be by name.</summary>
    internal IEnumerable<int> TermsOfSubstances(MatterState state) => _substanceTerms
        .Where(t => state == MatterState.Unknown || SubstanceCatalogue.Default.Find(t.Key)?.State == state)
        .Where(t => FamiliesOf(t.Key) is not { } families || families.All(f => !f.Carries || f.Family.OrphanStates.Count > 0 || f.Family.Key == Harmless))
        .SelectMany(t => t.Value.Select(v => v.Term));

    internal IReadOnlyList<ContactRule> Between(int termA, int termB) => _rules[(termA * _terms) + termB] ?? (IReadOnlyList<ContactRule>)[];

    /// <summary>The terms as a set.</summary>
    internal TermSet SetOf(int[] terms)
    {
        var set = new TermSet(_terms);
        foreach (var term in terms)
            set.Add(term);
        return set;
    }

    /// <summary>All terms that some rule sets against one of these.</summary>
    internal TermSet PartnersOf(int[] terms)
    {
        var set = new TermSet(_terms);
        foreach (var term in terms)
            set.AddAll(_partners[term]);
        return set;
    }

    /// <summary>All terms that must stand far apart from one of these.</summary>
    internal TermSet FarPartnersOf(int[] terms)
    {
        var set = new TermSet(_terms);
        foreach (var term in terms)
            set.AddAll(_farPartners[term]);
        return set;
    }

    private void Enter(ContactRule rule, int a, int b)
    {
        if (rule.Separation == Separation.FarApart)
            _farPartners[a].Add(b);
        (_rules[(a * _terms) + b] ??= []).Add(rule);
        _partners[a].Add(b);
    }
}
