using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Desk.Sheets;

/// <summary>What must not be used on what stands in a place, and why.</summary>
/// <param name="Agent">"WATER".</param>
/// <param name="Because">"flammable gas, fire: alkali metal with water".</param>
/// <param name="Contents">What it is that must not meet it.</param>
/// <param name="Source">Who says so.</param>
internal sealed record Forbidden(string Agent, string Because, IReadOnlyList<string> Contents, string Source);

/// <summary>Asks the contact rules what each content does with the usual means of putting out and wiping up.</summary>
internal static class NotToUse
{
    // Each is judged as itself by the same rules as any neighbour; foam and wet sand count as water.
    private static readonly (string Agent, string Content)[] Agents =
    [
        ("WATER, FOAM", "water"),
        ("CARBON DIOXIDE", "carbon dioxide"),
        ("ACID", "hydrochloric acid 10%"),
    ];

    // What makes a fire or poisons the air; that a concentrated acid spatters is of use to whoever holds the hose.
    private static readonly HashSet<string> Grave = new(StringComparer.Ordinal) { "explosion", "toxic gas", "fire", "flammable gas", "spatter" };

    public static IReadOnlyList<Forbidden> On(IReadOnlyList<Holding> holdings, StockFacts facts)
    {
        var judge = new PairJudge();
        var list = new List<Forbidden>();
        foreach (var (agent, name) in Agents)
        {
            if (facts.Catalogue.Resolve(name).Content is not { } content)
                continue;
            var profile = ContactProfile.Of(content, Classifier.Classify(content, facts.Hazards, RuleSet.Eu).StatementCodes, facts.Contacts);
            var found = holdings
                .Where(h => !h.Content.IsUnknown)
                .DistinctBy(h => h.Content.Name, StringComparer.Ordinal)
                .Select(h => (h.Content, Reason: Worst(judge.Judge(h.Profile, profile))))
                .Where(f => f.Reason is not null);
            foreach (var rule in found.GroupBy(f => (Because(f.Reason!), f.Reason!.Source.ToString())))
                list.Add(new Forbidden(agent, rule.Key.Item1, [.. rule.Select(r => r.Content.Name).Order(StringComparer.Ordinal)], rule.Key.Item2));
        }

        var burning = Named(holdings.Where(h => h.Label.HazardStatements.Any(s => s.Code is "H224" or "H225" or "H226")));
        if (burning.Count > 0)
            list.Add(new Forbidden("A JET OF WATER", "burning liquid floats on it and spreads", burning, "common practice"));
        var unknown = Named(holdings.Where(h => h.Content.IsUnknown));
        if (unknown.Count > 0)
            list.Add(new Forbidden("WATER, FOAM, ACID", "what it would do is not known, because nobody knows what it is", unknown, "common practice"));
        return list;
    }

    private static List<string> Named(IEnumerable<Holding> holdings) => [.. holdings.Select(h => h.Content.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static PairReason? Worst(PairJudgement judgement) =>
        judgement.Reasons.FirstOrDefault(r => r.Would.Any(Grave.Contains));

    private static string Because(PairReason reason) =>
        $"{string.Join(", ", reason.Would.Where(Grave.Contains))}{(reason.Product is null ? "" : $" ({reason.Product})")}: {reason.Cause}{(reason.OnlyIf is null ? "" : $", if {reason.OnlyIf}")}";
}
