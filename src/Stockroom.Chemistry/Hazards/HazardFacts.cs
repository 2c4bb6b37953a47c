using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards;

/// <summary>All facts about hazards: the substances' profiles and the tables of rules. Immutable.</summary>
public sealed class HazardFacts
{
    private static readonly Lazy<HazardFacts> Embedded = new(() => new HazardFacts(SubstanceCatalogue.Default));

    private readonly Dictionary<string, HazardProfile> _profiles;
    private readonly Dictionary<string, Substance> _dissolved;

    private HazardFacts(SubstanceCatalogue catalogue)
    {
        _dissolved = catalogue.Substances.Where(s => s.DissolvedFormOf is not null).ToDictionary(s => s.DissolvedFormOf!, StringComparer.Ordinal);
        _profiles = new HazardTables(catalogue).ReadProfiles();
        Limits = GenericLimits.Read();
        Bands = AcuteBands.Read();
        Elements = ElementTable.Read();
        Texts = StatementTexts.Read();
        FlashPoints = FlashPoints.Read();
        Gases = GasMixing.Read();
        Reactions = ReactingIngredients.Read();
        Radioactive = RadioactiveElements.Read();
        Orphans = OrphanWords.Read();
        Precautions = PrecautionaryTable.Read();
        Precedence = PrecedenceRules.Read();
    }

    /// <summary>The facts that come with the program.</summary>
    public static HazardFacts Default => Embedded.Value;

    public GenericLimits Limits { get; }

    public AcuteBands Bands { get; }

    public ElementTable Elements { get; }

    public StatementTexts Texts { get; }

    public FlashPoints FlashPoints { get; }

    public GasMixing Gases { get; }

    public ReactingIngredients Reactions { get; }

    public RadioactiveElements Radioactive { get; }

    public OrphanWords Orphans { get; }

    public PrecautionaryTable Precautions { get; }

    public PrecedenceRules Precedence { get; }

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
