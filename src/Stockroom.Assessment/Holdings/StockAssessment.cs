using Stockroom.Assessment.Concerns;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Assessment.Neighbours.Standing;
using Stockroom.Assessment.Rounds;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Holdings;

/// <summary>The whole stock judged on a day: what stands wrong, what leaves, what is due. Pure: the same book, facts and day give the same.</summary>
public sealed class StockAssessment
{
    private readonly JudgedContents _contents;
    private readonly Dictionary<ContainerId, Holding> _byId;
    private readonly Lazy<IReadOnlyList<Finding>> _findings;
    private readonly Lazy<IReadOnlyList<PlaceFinding>> _placeFindings;
    private readonly Lazy<IReadOnlyList<WrongItem>> _wrong;
    private readonly Lazy<IReadOnlyList<DueItem>> _due;

    public StockAssessment(BookState state, StockFacts facts, DateOnly today, RuleSet rules = RuleSet.Eu, ClassTable? table = null)
    {
        ClassTable = table ?? (ClassTableWords.TryParse(state.ClassTable, out var chosen) ? chosen.Value : ClassTable.None);
        State = state;
        Facts = facts = WithOwn(facts, state);
        Today = today;
        _contents = new JudgedContents(facts, rules);
        Holdings = [.. state.Present.Select(c => new Holding(c, state, facts, today, _contents))];
        _byId = Holdings.ToDictionary(h => h.Id);
        _findings = new(() => new NeighbourFinder(new PairJudge(ClassTable)).Find(Holdings.Select(h => h.ShelfItem)));
        _placeFindings = new(() => PlaceRuleList.Find(this));
        _wrong = new(() => [.. ConcernList.All.SelectMany(c => c.Find(this)).OrderByDescending(w => w.Severity)]);
        _due = new(() => [.. DueList.Of(this).OrderBy(d => d.Since).ThenBy(d => d.Container).ThenBy(d => d.What, StringComparer.Ordinal)]);
    }

    private StockAssessment(StockAssessment basis, IReadOnlyList<Holding> holdings)
    {
        _contents = basis._contents;
        (State, Facts, Today, ClassTable, Holdings) = (basis.State, basis.Facts, basis.Today, basis.ClassTable, holdings);
        _byId = holdings.ToDictionary(h => h.Id);
        _findings = new(() => new NeighbourFinder(new PairJudge(ClassTable)).Find(Holdings.Select(h => h.ShelfItem)));
        _placeFindings = new(() => PlaceRuleList.Find(this));
        _wrong = new(() => []);
        _due = new(() => []);
    }

    public BookState State { get; }

    /// <summary>The class table that lies over the contact rules: the one asked for, else the one the keeper chose for the book.</summary>
    public ClassTable ClassTable { get; }

    public StockFacts Facts { get; }

    public DateOnly Today { get; }

    /// <summary>Containers still there, by id.</summary>
    public IReadOnlyList<Holding> Holdings { get; }

    /// <summary>What stands nearer than it may, worst first.</summary>
    public IReadOnlyList<Finding> Findings => _findings.Value;

    /// <summary>What stands where it should not, whatever its neighbours are; worst first.</summary>
    public IReadOnlyList<PlaceFinding> PlaceFindings => _placeFindings.Value;

    /// <summary>Everything that is wrong, worst first.</summary>
    public IReadOnlyList<WrongItem> Wrong => _wrong.Value;

    /// <summary>Everything that is due, oldest first.</summary>
    public IReadOnlyList<DueItem> Due => _due.Value;

    /// <summary>One container judged.</summary>
    /// <exception cref="BookRefusal">It is not in the book, or no longer there.</exception>
    public Holding Of(ContainerId id)
    {
        if (_byId.TryGetValue(id, out var holding))
            return holding;
        return Judge(State.ContainerCalled(id));
    }

    /// <summary>A container judged as if it were one of the book's.</summary>
    internal Holding Judge(Container container) => new(container, State, Facts, Today, _contents);

    /// <summary>The same stock as if other holdings were all that there is; for asking what neighbour and place rules would say of them.</summary>
    internal StockAssessment With(IReadOnlyList<Holding> holdings) => new(this, holdings);

    // The keeper's own substances and classifications lie on top of the catalogue's and win.
    private static StockFacts WithOwn(StockFacts facts, BookState state) => state.OwnSubstances.Count == 0
        ? facts
        : facts with { Catalogue = state.Catalogue(), Hazards = state.Hazards() };
}
