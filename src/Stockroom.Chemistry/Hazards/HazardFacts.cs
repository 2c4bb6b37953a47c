using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards.Reactions;

namespace Stockroom.Chemistry.Hazards;

/// <summary>All facts about hazards: the substances' profiles and the tables of rules. Immutable.</summary>
public sealed class HazardFacts
{
    private static readonly Lazy<HazardFacts> Embedded = new(() => new HazardFacts(SubstanceCatalogue.Default));

    private readonly Dictionary<string, HazardProfile> _profiles;
    private readonly Dictionary<string, Substance> _dissolved;

    private HazardFacts(SubstanceCatalogue catalogue)
    {
        Catalogue = catalogue;
        _dissolved = catalogue.Substances.Where(s => s.DissolvedFormOf is not null).ToDictionary(s => s.DissolvedFormOf!, StringComparer.Ordinal);
        _profiles = new HazardTables(catalogue).ReadProfiles();
        Limits = GenericLimits.Read();
        Bands = AcuteBands.Read();
        Elements = ElementTable.Read();
        Texts = StatementTexts.Read();
        FlashPoints = FlashPoints.Read();
        Gases = GasMixing.Read();
        Reactions = ReactingIngredients.Read();
        Ions = IonTable.Read(catalogue);
        Radioactive = RadioactiveElements.Read();
        Orphans = OrphanWords.Read();
        Precautions = PrecautionaryTable.Read();
        Precedence = PrecedenceRules.Read();
    }

    private HazardFacts(HazardFacts under, Dictionary<string, HazardProfile> profiles)
    {
        _profiles = profiles;
        _dissolved = under._dissolved;
        Catalogue = under.Catalogue;
        Limits = under.Limits;
        Bands = under.Bands;
        Elements = under.Elements;
        Texts = under.Texts;
        FlashPoints = under.FlashPoints;
        Gases = under.Gases;
        Reactions = under.Reactions;
        Ions = under.Ions;
        Radioactive = under.Radioactive;
        Orphans = under.Orphans;
        Precautions = under.Precautions;
        Precedence = under.Precedence;
    }

    /// <summary>The facts that come with the program.</summary>
    public static HazardFacts Default => Embedded.Value;

    /// <summary>The substances that the facts are about.</summary>
    public SubstanceCatalogue Catalogue { get; }

    public GenericLimits Limits { get; }

    public AcuteBands Bands { get; }

    public ElementTable Elements { get; }

    public StatementTexts Texts { get; }

    public FlashPoints FlashPoints { get; }

    public GasMixing Gases { get; }

    public ReactingIngredients Reactions { get; }

    internal IonTable Ions { get; }

    public RadioactiveElements Radioactive { get; }

    public OrphanWords Orphans { get; }

    public PrecautionaryTable Precautions { get; }

    public PrecedenceRules Precedence { get; }

    /// <summary>
    /// These facts with the keeper's own on top: a profile of the keeper's replaces the catalogue's whole profile of that
    /// substance, and every reason that rests on it says whose it is.
    /// </summary>
    /// <param name="own">Profiles by preferred name of the substance; a name of the keeper's own may be new.</param>
    public HazardFacts With(IReadOnlyDictionary<string, HazardProfile> own)
    {
        var profiles = new Dictionary<string, HazardProfile>(_profiles, StringComparer.Ordinal);
        foreach (var (name, profile) in own)
            profiles[name] = OwnProfile.Marked(name, profile, _profiles.GetValueOrDefault(name));
        return new HazardFacts(this, profiles);
    }

    /// <summary>What is known of a substance; a profile of <see cref="HazardKnowledge.Unknown"/> where nothing is.</summary>
    public HazardProfile ProfileOf(Substance substance) => _profiles.TryGetValue(substance.Name, out var profile)
        ? profile
        : new HazardProfile { Name = substance.Name, Knowledge = HazardKnowledge.Unknown };

    /// <summary>The form that a gas has in water (hydrochloric acid for hydrogen chloride), or null.</summary>
    public Substance? DissolvedForm(Substance gas) => _dissolved.GetValueOrDefault(gas.Name);

    /// <summary>Statement codes of a substance as it is named, undiluted: H314, H360FD, EUH014. Empty where none are known.</summary>
    public IReadOnlyList<string> StatementsOf(Substance substance) =>
        [.. ProfileOf(substance).At(100m).Select(c => c.Statement).Where(s => s.Length > 0).Distinct()];
}
