using System.Globalization;
using System.Text;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Neighbours;

/// <summary>What a content is as far as its neighbours care: the contact families it carries, each with its reason.</summary>
public sealed class ContactProfile
{
    // A leak of a corrosive liquid must not fall on these: 49 CFR 177.848(e)(3), by analogy from vehicles to shelves.
    private static readonly HashSet<string> NotUnderCorrosives = new(StringComparer.Ordinal)
    {
        "flammable-solid", "self-heating", "pyrophoric", "strong-oxidiser", "oxidiser", "inorganic-peroxide", "chlorate", "perchlorate",
        "permanganate", "chromium-vi", "nitrate", "nitrite", "organic-peroxide", "metal-powder",
    };

    private readonly ContactProfile? _cover;
    private readonly Lazy<Classification> _classification;
    private readonly Lazy<GoodsClass> _goods;
    private readonly Lazy<StorageClass> _storage;
    private readonly ClassRows?[] _rows = new ClassRows?[ClassTableWords.All.Count];

    private ContactProfile(
        ContactFacts facts, Content content, IReadOnlyList<CarriedFamily> families, int[] terms, IReadOnlyList<string> notes, Lazy<Classification> classification,
        ContactProfile? cover = null)
    {
        _cover = cover;
        _classification = classification;
        _goods = new(() => UnNumbers.Default.Find(content) ?? GoodsDerivation.Derive(content, classification.Value, Carries("radioactive")));
        _storage = new(() => StorageClassFlow.Of(content, classification.Value.StatementCodes, Goods, Burning.Is(this)));
        Facts = facts;
        Content = content;
        Families = families;
        Terms = terms;
        Notes = notes;
        Composition = CompositionOf(content);
        TermSet = facts.SetOf(terms);
        Partners = facts.PartnersOf(terms);
        FarPartners = facts.FarPartnersOf(terms);
        IsCorrosiveLiquid = IsLiquid && Carries("corrosive-liquid");
        MustNotStandUnderCorrosives = families.Any(f => NotUnderCorrosives.Contains(f.Family.Key));
        Identity = $"{content.Name}|{Composition}|{content.State}|{string.Join(',', terms)}|{cover?.Identity}";
    }

    public Content Content { get; }

    public string Name => Content.Name;

    /// <summary>True for an orphan: it carries every family that it could, in its state of matter.</summary>
    public bool IsUnknown => Content.IsUnknown;

    /// <summary>True for what runs when its vessel breaks; an orphan of unknown state is taken as a liquid.</summary>
    public bool IsLiquid => Content.State == MatterState.Liquid || _cover is { IsLiquid: true } || (IsUnknown && Content.State == MatterState.Unknown);

    public IReadOnlyList<CarriedFamily> Families { get; }

    /// <summary>What the families do not tell, each a sentence.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>The rows of a class table in which it counts, and those against which these have something.</summary>
    internal ClassRows RowsIn(ClassTable table) => _rows[(int)table] ??= ClassRows.Of(table, this);

    /// <summary>How it counts in transport.</summary>
    public GoodsClass Goods => _goods.Value;

    /// <summary>Its storage class by TRGS 510.</summary>
    public StorageClass Storage => _storage.Value;

    /// <summary>Equal for two profiles that every judgement treats alike, names included.</summary>
    internal string Identity { get; }

    internal ContactFacts Facts { get; }

    internal int[] Terms { get; }

    internal bool IsCorrosiveLiquid { get; }

    internal bool MustNotStandUnderCorrosives { get; }

    private string Composition { get; }

    private TermSet TermSet { get; }

    private TermSet Partners { get; }

    private TermSet FarPartners { get; }

    /// <summary>The profile of a content.</summary>
    /// <param name="content">A substance, a preparation or an orphan.</param>
    /// <param name="statementCodes">Its GHS statements, such as "H225" or "EUH014"; empty where they are not known.</param>
    /// <param name="facts">The facts to judge by; those that come with the program if not given.</param>
    public static ContactProfile Of(Content content, IReadOnlyCollection<string> statementCodes, ContactFacts? facts = null) =>
        Of(content, statementCodes, new Lazy<Classification>(() => Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu)), facts);

    /// <summary>The profile of a content with its hazards, from which its class follows where the dangerous goods list does not name it.</summary>
    public static ContactProfile Of(Content content, Classification classification, ContactFacts? facts = null) =>
        Of(content, classification.StatementCodes, new Lazy<Classification>(classification), facts);

    public bool Carries(string family) => Families.Any(f => f.Family.Key == family);

    /// <summary>The same profile with one family more; for asking what a further hazard would change.</summary>
    public ContactProfile With(string family, string because)
    {
        if (Carries(family))
            return this;
        var carried = new CarriedFamily(Facts.Family(family), because);
        return new ContactProfile(Facts, Content, [.. Families, carried], [.. Terms.Append(Facts.IndexOf(family)).Distinct().Order()], Notes, _classification, _cover);
    }

    /// <summary>The same content under a cover, whose families count with its own: what lies over it leaks with it.</summary>
    public ContactProfile Under(ContactProfile cover)
    {
        var added = cover.Families.Where(f => f.Family.Key != ContactFacts.Harmless && !Carries(f.Family.Key)).Select(f => f with { Because = $"its cover, {cover.Name}, {f.Because}" });
        return new ContactProfile(
            Facts, Content, [.. Families, .. added], [.. Terms.Union(cover.Terms).Order()], [.. Notes.Concat(cover.Notes).Distinct(StringComparer.Ordinal)], _classification, cover);
    }

    /// <summary>False where no rule can stand between the two; true where one may.</summary>
    internal bool MayConflictWith(ContactProfile other) =>
        Partners.Overlaps(other.TermSet)
        || (IsCorrosiveLiquid && other.MustNotStandUnderCorrosives)
        || (other.IsCorrosiveLiquid && MustNotStandUnderCorrosives);

    /// <summary>True where some contact rule asks the two to stand far apart.</summary>
    internal bool MustStandFarFrom(ContactProfile other) => FarPartners.Overlaps(other.TermSet);

    /// <summary>True where both hold the same known content, so that they cannot be each other's enemy by composition.</summary>
    internal bool IsSameKnownContentAs(ContactProfile other) => !IsUnknown && !other.IsUnknown && Composition == other.Composition;

    private static ContactProfile Of(Content content, IReadOnlyCollection<string> codes, Lazy<Classification> classification, ContactFacts? facts)
    {
        var known = facts ?? ContactFacts.Default;
        return content.IsUnknown ? Unknown(known, content, classification) : Known(known, content, codes, classification);
    }

    private static ContactProfile Unknown(ContactFacts facts, Content content, Lazy<Classification> classification)
    {
        var carried = facts.Families
            .Where(f => content.State == MatterState.Unknown ? f.OrphanStates.Count > 0 : f.OrphanStates.Contains(content.State))
            .Select(f => new CarriedFamily(f, "what it is is not known; it could be this"))
            .ToList();
        return new ContactProfile(
            facts, content, carried, [.. carried.Select(c => facts.IndexOf(c.Family.Key)), facts.Anything, .. facts.TermsOfSubstances(content.State)],
            [$"what {content.Name} is, is not known; it is judged as the worst it could be"], classification);
    }

    private static ContactProfile Known(ContactFacts facts, Content content, IReadOnlyCollection<string> statementCodes, Lazy<Classification> classification)
    {
        var assignment = new FamilyAssignment(facts, content);
        assignment.ByComposition();
        assignment.ByStatements(statementCodes);
        return new ContactProfile(facts, content, assignment.Carried, assignment.Terms(), assignment.Notes(statementCodes), classification);
    }

    private static string CompositionOf(Content content)
    {
        var text = new StringBuilder();
        foreach (var part in content.Parts.OrderBy(p => p.Substance.Name, StringComparer.Ordinal))
            text.Append(part.Substance.Name).Append('=').Append((part.Percent / 1.0000000000m).ToString(CultureInfo.InvariantCulture)).Append(';');
        return text.ToString();
    }

    public override string ToString() => $"{Name}: {string.Join(", ", Families.Select(f => f.Family.PlainName))}";
}
