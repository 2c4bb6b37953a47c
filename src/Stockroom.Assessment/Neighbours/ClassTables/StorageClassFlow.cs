using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>Finds the one storage class of a content: the first question of storage-class-flow.tsv that is true. TRGS 510, Annex 2.</summary>
internal static class StorageClassFlow
{
    private const decimal SubstanceFromPercent = 45m;
    private const string AnyTransport = "any";
    private const string WettedExplosive = "EUH001";

    private static readonly HashSet<string> Explosive = new(StringComparer.Ordinal) { "H200", "H201", "H202", "H203", "H204", "H205", "H209", "H210", "H211" };

    private static readonly Dictionary<string, MatterState> States = new(StringComparer.Ordinal)
    {
        ["solid"] = MatterState.Solid, ["liquid"] = MatterState.Liquid, ["gas"] = MatterState.Gas,
    };

    private static readonly Lazy<List<Step>> Steps = new(() =>
        [.. EmbeddedTables.Facts("storage-class-flow.tsv", "step", "storage_class", "statements", "state", "combustible", "transport", "substance").Rows.Select(r => new Step(
            r.Integer("step"), r.Text("storage_class"), [.. r.List("statements")], r.TextOrNull("state") is null ? null : r.OneOf("state", States),
            r.TextOrNull("combustible") is null ? null : r.YesNo("combustible"), [.. r.List("transport")], r.TextOrNull("substance"), r.Provenance))]);

    /// <summary>All classes that the questions can end in.</summary>
    public static IReadOnlyList<string> Classes => [.. Steps.Value.Select(s => s.Class).Distinct(StringComparer.Ordinal)];

    /// <summary>The storage class of a content, with the question that gave it.</summary>
    /// <param name="content">What it is.</param>
    /// <param name="codes">Its statements.</param>
    /// <param name="goods">Its transport class.</param>
    /// <param name="burns">True where it burns.</param>
    public static StorageClass Of(Content content, IReadOnlyCollection<string> codes, GoodsClass goods, bool burns)
    {
        var bare = codes.Select(StatementCode.Bare).ToHashSet(StringComparer.Ordinal);
        // What the list carries as a wetted explosive is stored as one, whatever the statements of the dry substance say.
        if (goods is { UnNumber: not null, Class: "4.1" } && bare.RemoveWhere(c => Explosive.Contains(c)) > 0)
            bare.Add(WettedExplosive);
        var step = content.IsUnknown ? null : Steps.Value.Find(s => s.Holds(content, bare, goods, burns));
        return step is null
            ? new StorageClass(null, content.IsUnknown || goods.IsKnown ? $"what {content.Name} is, or its state, is not known" : goods.Because, Steps.Value[0].Provenance)
            : new StorageClass(step.Class, $"question {step.Number} of the scheme is the first that holds: {step.Why(bare, goods, burns)}", step.Provenance);
    }

    private sealed record Step(
        int Number, string Class, string[] Statements, MatterState? State, bool? Combustible, string[] Transport, string? Substance, Provenance Provenance)
    {
        public bool Holds(Content content, HashSet<string> codes, GoodsClass goods, bool burns)
        {
            if ((State is { } state && content.State != state) || (Combustible is { } combustible && combustible != burns))
                return false;
            return Statements.Any(codes.Contains)
                || (Substance is { } name && content.PercentOf(name) >= SubstanceFromPercent)
                || Transport.Any(t => Matches(t, goods));
        }

        public string Why(HashSet<string> codes, GoodsClass goods, bool burns)
        {
            var burning = Combustible is null ? "" : burns ? ", and it burns" : ", and it does not burn";
            if (Statements.FirstOrDefault(codes.Contains) is { } code)
                return $"statement {code}{burning}";
            return Substance is not null ? Substance : Transport is [AnyTransport] ? $"none of the hazards before{burning}" : $"transport class {goods.Class}{burning}";
        }

        // "6.1 I" names class and packing group, "2" every division of a class.
        private static bool Matches(string transport, GoodsClass goods)
        {
            if (transport == AnyTransport)
                return goods.IsKnown;
            if (!goods.IsDangerous)
                return false;
            var parts = transport.Split(' ');
            return (goods.Class == parts[0] || goods.Class!.Split('.')[0] == parts[0]) && (parts.Length == 1 || goods.PackingGroup == parts[1]);
        }
    }
}
