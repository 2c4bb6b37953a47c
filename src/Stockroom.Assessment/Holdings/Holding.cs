using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Vessels;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Holdings;

/// <summary>One container and every judgement of it, each made when first asked for.</summary>
public sealed class Holding
{
    private readonly StockFacts _facts;
    private readonly Lazy<Classification> _classification;
    private readonly Lazy<LabelElements> _label;
    private readonly Lazy<ContactProfile> _profile;
    private readonly Lazy<Forecast?> _forecast;
    private readonly Lazy<SealVerdict?> _seal;
    private readonly Lazy<IReadOnlyList<WettedPart>> _wetted;
    private readonly Lazy<AmpouleFill?> _ampoule;

    internal Holding(Container container, BookState state, StockFacts facts, DateOnly today, RuleSet rules)
    {
        _facts = facts;
        Container = container;
        var resolution = container.ContentIn(facts.Catalogue);
        ContentProblem = resolution.Problem;
        Content = resolution.Content ?? Chemistry.Catalogue.Content.Orphan(container.ContentName, container.State ?? MatterState.Unknown);
        Path = state.PathTo(container.PlaceId);
        Stand = StandOf.Container(container, state);
        (Situation, SituationProblem) = Content.IsUnknown
            ? (null, "what it is, is not known")
            : SituationOf.Container(container, Content, state, facts.Wares);
        _classification = new(() => Classifier.Classify(Content, facts.Hazards, rules));
        _label = new(() => LabelElements.Of(Classification, facts.Hazards));
        _profile = new(() => WithCover(ContactProfile.Of(Content, Classification, facts.Contacts), rules));
        _forecast = new(() => Situation is { } s ? Losses.Forecast.Of(s, facts.Properties, today) : null);
        _seal = new(() => Situation is { } s && s.Weighings.Count > 0 ? SealVerdict.Of(s, facts.Properties) : null);
        _wetted = new(() => Situation is { } s ? VesselFit.Of(s, facts.Properties) : []);
        _ampoule = new(Fill);
    }

    private Holding(Holding basis, string placeId, BookState state)
    {
        _facts = basis._facts;
        Container = basis.Container with { PlaceId = placeId };
        (ContentProblem, Content) = (basis.ContentProblem, basis.Content);
        Path = state.PathTo(placeId);
        Stand = StandOf.Container(Container, state);
        (Situation, SituationProblem) = (basis.Situation, basis.SituationProblem);
        (_classification, _label, _profile) = (basis._classification, basis._label, basis._profile);
        (_forecast, _seal, _wetted, _ampoule) = (basis._forecast, basis._seal, basis._wetted, basis._ampoule);
    }

    public Container Container { get; }

    public ContainerId Id => Container.Id;

    /// <summary>What it holds; something unknown where the catalogue no longer knows the name.</summary>
    public Content Content { get; }

    /// <summary>Why the booked name means nothing any more; null where it does.</summary>
    public string? ContentProblem { get; }

    /// <summary>Where it stands, room first.</summary>
    public IReadOnlyList<Place> Path { get; }

    public Stand Stand { get; }

    public string PlaceWords => string.Join(" > ", Path.Select(p => p.Name));

    /// <summary>The innermost place by its name.</summary>
    public string PlaceName => Path.Count > 0 ? Path[^1].Name : "no place";

    /// <summary>Null where vessel, closure or amount is not known; the reason stands beside.</summary>
    public Situation? Situation { get; }

    public string? SituationProblem { get; }

    public Classification Classification => _classification.Value;

    public LabelElements Label => _label.Value;

    public ContactProfile Profile => _profile.Value;

    public Forecast? Forecast => _forecast.Value;

    /// <summary>What the weigh-ins say; null where there are none.</summary>
    public SealVerdict? Seal => _seal.Value;

    public IReadOnlyList<WettedPart> Wetted => _wetted.Value;

    /// <summary>Of a flame-sealed ampoule; null for any other vessel.</summary>
    public AmpouleFill? Ampoule => _ampoule.Value;

    public bool IsFlameSealed => Container.Closure is { } closure && _facts.Wares.FindClosure(closure)?.Mechanism == ClosureMechanism.Fused;

    internal ShelfItem ShelfItem => new(Id.ToString(), Content.Name, Profile, Stand, IsFlameSealed);

    /// <summary>The same container as if it stood elsewhere; only what follows from its content and its place is judged anew.</summary>
    internal Holding StandingIn(string placeId, BookState state) => new(this, placeId, state);

    // What lies over a content leaks with it, and counts among its families.
    private ContactProfile WithCover(ContactProfile profile, RuleSet rules)
    {
        if (Container.Cover is not { } cover || _facts.Wares.FindCover(cover.Name)?.Content is not { } name || _facts.Catalogue.Resolve(name).Content is not { } over)
            return profile;
        return profile.Under(ContactProfile.Of(over, Classifier.Classify(over, _facts.Hazards, rules), _facts.Contacts));
    }

    private AmpouleFill? Fill() => Situation is { Closure.Mechanism: ClosureMechanism.Fused } s
        ? AmpouleFill.Of(s.Content, s.Amount, Vessels.Ampoule.Of(s.Vessel), s.Temperature, s.Warmest ?? Temperature.FromCelsius(40), _facts.Properties)
        : null;
}
