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
    private readonly JudgedContent _judged;
    private readonly Lazy<PlaceLimits> _limits;
    private readonly Lazy<Forecast?> _forecast;
    private readonly Lazy<SealVerdict?> _seal;
    private readonly Lazy<IReadOnlyList<WettedPart>> _wetted;
    private readonly Lazy<AmpouleFill?> _ampoule;

    internal Holding(Container container, BookState state, StockFacts facts, DateOnly today, JudgedContents contents)
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
        _judged = contents.Of(Content, container.Cover?.Name);
        _limits = new(() => state.LimitsAt(container.PlaceId));
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
        (_judged, _limits) = (basis._judged, new(() => state.LimitsAt(placeId)));
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

    public Classification Classification => _judged.Classification;

    public LabelElements Label => _judged.Label;

    public ContactProfile Profile => _judged.Profile;

    /// <summary>What is known of its place, and of what that stands in.</summary>
    public PlaceLimits Limits => _limits.Value;

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

    private AmpouleFill? Fill() => Situation is { } s ? AmpouleFill.Of(s, _facts.Properties) : null;
}
