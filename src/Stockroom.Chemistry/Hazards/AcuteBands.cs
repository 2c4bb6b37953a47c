using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The band of one acute toxicity category by one route: over the lower and up to the upper bound.</summary>
public sealed record AcuteBand(
    ExposureRoute Route,
    string Category,
    string Statement,
    decimal Over,
    decimal UpTo,
    decimal PointEstimate,
    string Unit,
    IReadOnlyList<RuleSet> Rules,
    Provenance Provenance);

/// <summary>The bands of acute toxicity and the point estimates that stand for a category, from acute-bands.tsv.</summary>
public sealed class AcuteBands
{
    private const int RuleSetCount = (int)RuleSet.Us + 1;

    private readonly IReadOnlyList<AcuteBand> _rows;
    private readonly AcuteBand[][] _byRoute;

    private AcuteBands(IReadOnlyList<AcuteBand> rows)
    {
        _rows = rows;
        _byRoute = [.. Enum.GetValues<ExposureRoute>().SelectMany(route => Enum.GetValues<RuleSet>().Select(rules => rows.Where(b => b.Route == route && b.Rules.Contains(rules)).ToArray()))];
    }

    public IReadOnlyList<AcuteBand> Rows => _rows;

    internal static AcuteBands Read() => new(
        [.. EmbeddedTables.Facts("acute-bands.tsv", "route", "category", "statement", "over", "up_to", "point_estimate", "unit", "rules").Rows.Select(r => new AcuteBand(
            r.OneOf("route", ExposureRoutes.Words), r.Text("category"), r.Text("statement"), r.Decimal("over"), r.Decimal("up_to"),
            r.Decimal("point_estimate"), r.Text("unit"), RuleSets.Read(r, "rules"), r.Provenance))]);

    /// <summary>The band in which an estimate lies, or null where it lies above all of them.</summary>
    public AcuteBand? Containing(ExposureRoute route, decimal estimate, RuleSet rules) =>
        Array.Find(Bands(route, rules), b => estimate > b.Over && estimate <= b.UpTo);

    /// <summary>The band of a category by one route.</summary>
    public AcuteBand? Of(ExposureRoute route, string category, RuleSet rules) =>
        Array.Find(Bands(route, rules), b => b.Category == category);

    /// <summary>Bands of one route, most severe first.</summary>
    public IEnumerable<AcuteBand> By(ExposureRoute route, RuleSet rules) => Bands(route, rules);

    private AcuteBand[] Bands(ExposureRoute route, RuleSet rules) => _byRoute[((int)route * RuleSetCount) + (int)rules];
}
