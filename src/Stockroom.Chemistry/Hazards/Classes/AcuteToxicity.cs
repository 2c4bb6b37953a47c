using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Acute toxicity by mouth, skin and breath, CLP Annex I 3.1: 100/ATE(mix) = sum of C/ATE, in which ingredients of
/// unknown toxicity reduce the 100 once they make up more than a tenth (3.1.3.6.1 and 3.1.3.6.2.3).
/// </summary>
public sealed class AcuteToxicity : HazardClass
{
    // Swallowed, on the skin, inhaled in each form.
    private static readonly ExposureRoute[][] AllRoutes =
        [[ExposureRoute.Oral], [ExposureRoute.Dermal], [ExposureRoute.Gas, ExposureRoute.Vapour, ExposureRoute.Dust]];

    private const decimal UnknownFrom = 10m;

    public override string Name => "Acute toxicity, oral";

    public override IReadOnlyList<string> Categories { get; } = ["Acute Tox. 1", "Acute Tox. 2", "Acute Tox. 3", "Acute Tox. 4", "Acute Tox. 5"];

    public override bool JudgedAlways => true;

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        foreach (var routes in AllRoutes)
        {
            var worst = EstimateBy(routes, mixture, findings).MinBy(r => Severity(r.Band.Category));
            if (worst is not null && !Own(substance).Any(c => StatesRoute(c.Statement, routes[0])))
                findings.Add(worst.Band.Category, worst.Band.Statement, null, worst.Because, worst.Band.Provenance);
        }
    }

    public override void Judge(Mixture mixture, Findings findings)
    {
        foreach (var routes in AllRoutes)
        {
            if (EstimateBy(routes, mixture, findings).MinBy(r => Severity(r.Band.Category)) is { } worst)
                findings.Add(worst.Band.Category, worst.Band.Statement, null, worst.Because, worst.Band.Provenance);
        }
    }

    private sealed record RouteResult(AcuteBand Band, Func<string> Because);

    private static List<RouteResult> EstimateBy(ExposureRoute[] routes, Mixture mixture, Findings findings)
    {
        var unknown = mixture.Ingredients.Where(i => IsUnknown(i, routes)).Sum(i => i.Percent);
        foreach (var route in routes)
            findings.UnknownShare(route, unknown);
        var known = unknown > UnknownFrom ? 100m - unknown : 100m;
        var results = new List<RouteResult>();
        foreach (var route in FormsIn(routes, mixture))
        {
            var parts = mixture.Ingredients
                .Select(i => (Ingredient: i, Ate: AteOf(i, route, findings)))
                .Where(p => p.Ate is not null && p.Ingredient.Percent >= RelevantFrom(p.Ate.Value, route, findings))
                .ToList();
            var sum = parts.Sum(p => p.Ingredient.Percent / p.Ate!.Value);
            if (sum <= 0)
                continue;
            var ate = Math.Round(known / sum, 12);
            findings.Estimate(route, ate);
            if (findings.Facts.Bands.Containing(route, ate, findings.Rules) is { } band)
                results.Add(new RouteResult(band, () => Sentence(route, parts, unknown, ate, band)));
        }

        return results;
    }

    private static string Sentence(ExposureRoute route, List<(Ingredient Ingredient, decimal? Ate)> parts, decimal unknown, decimal ate, AcuteBand band)
    {
        var names = string.Join(", ", parts.Select(p => $"{Explain.Share(p.Ingredient)} of ATE {Explain.Number(p.Ate!.Value)}"));
        var reduced = unknown > UnknownFrom ? $", {Explain.Percent(unknown)} of unknown toxicity left out" : "";
        return $"{route.Word()}: {names}{reduced}; ATE of the whole {Explain.Number(ate)} {band.Unit}";
    }

    private static bool IsUnknown(Ingredient ingredient, ExposureRoute[] routes) =>
        ingredient.Profile.Knowledge == HazardKnowledge.Unknown || Array.Exists(routes, ingredient.Profile.UnknownRoutes.Contains);

    // A gas is breathed as gas; in a liquid or solid, liquids and dissolved gases are breathed as vapour, solids as dust or mist.
    private static IEnumerable<ExposureRoute> FormsIn(ExposureRoute[] routes, Mixture mixture)
    {
        if (routes.Length == 1)
            return routes;
        return mixture.Ingredients
            .Where(i => i.Profile.Estimates.Any(e => e.Route.IsInhalation() && e.HoldsAt(i.Percent)) || i.Categories.Any(c => IsInhaled(c.Statement)))
            .SelectMany(i => FormsOf(i, mixture))
            .Distinct()
            .Order();
    }

    private static IEnumerable<ExposureRoute> FormsOf(Ingredient ingredient, Mixture mixture)
    {
        if (mixture.State == MatterState.Gas)
            return [ExposureRoute.Gas];
        var given = ingredient.Profile.Estimates.Where(e => e.Route.IsInhalation() && e.Route != ExposureRoute.Gas && e.HoldsAt(ingredient.Percent)).Select(e => e.Route).ToList();
        return given.Count > 0 ? given : [ingredient.State == MatterState.Solid ? ExposureRoute.Dust : ExposureRoute.Vapour];
    }

    private static decimal? AteOf(Ingredient ingredient, ExposureRoute route, Findings findings)
    {
        var bands = findings.Facts.Bands;
        var own = ingredient.Profile.Estimates.FirstOrDefault(e => e.Route == route && e.HoldsAt(ingredient.Percent));
        if (own is not null)
            return bands.Containing(route, own.Value, findings.Rules) is null ? null : own.Value;
        var category = ingredient.Categories.Where(c => StatesRoute(c.Statement, route)).Select(c => c.Category).Order(StringComparer.Ordinal).FirstOrDefault();
        if (category is null && route.IsInhalation())
        {
            // An estimate in another form stands for its category.
            category = ingredient.Profile.Estimates
                .Where(e => e.Route.IsInhalation() && e.HoldsAt(ingredient.Percent))
                .Select(e => bands.Containing(e.Route, e.Value, findings.Rules)?.Category)
                .FirstOrDefault(c => c is not null);
        }

        return category is null ? null : bands.Of(route, category, findings.Rules)?.PointEstimate;
    }

    private static decimal RelevantFrom(decimal ate, ExposureRoute route, Findings findings) =>
        findings.Facts.Bands.Containing(route, ate, findings.Rules) is { } band ? findings.Facts.Limits.RelevantFrom(band.Category, findings.Rules) : 100m;

    private static bool IsInhaled(string statement) => statement.StartsWith("H33", StringComparison.Ordinal) && statement[3] is >= '0' and <= '3';

    private static bool StatesRoute(string statement, ExposureRoute route) => route switch
    {
        ExposureRoute.Oral => statement is "H300" or "H301" or "H302" or "H303",
        ExposureRoute.Dermal => statement is "H310" or "H311" or "H312" or "H313",
        _ => IsInhaled(statement),
    };
}
