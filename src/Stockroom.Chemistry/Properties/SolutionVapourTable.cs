using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Partial pressures over solutions in water: ln p linear in per cent between the listed strengths, and in 1/T at each.
/// Above the listed strengths the slope of the end is carried on. Below them what is dissolved follows Henry's law with an activity
/// coefficient whose logarithm is linear in the strength, p = k c exp(b c), with the slope of the end and b never below 0; water goes towards
/// pure water.
/// Outside the band widens 1.5 times per 10 per cent.
/// </summary>
internal sealed class SolutionVapourTable
{
    private readonly Dictionary<(string, string), List<Node>> _rows = [];

    private SolutionVapourTable()
    {
    }

    private readonly record struct Node(double Percent, double AtKelvin, double LnPascals, double Slope, Spread Spread, Provenance Provenance)
    {
        public double LnAt(Temperature t) => LnPascals - (Slope * ((1 / t.Kelvin) - (1 / AtKelvin)));
    }

    public static SolutionVapourTable Read(SubstanceCatalogue catalogue)
    {
        var table = new SolutionVapourTable();
        foreach (var row in EmbeddedTables.Facts("solution-vapour.tsv", "solution", "percent", "component", "at_k", "pascals", "slope_k", "spread_percent").Rows)
        {
            var key = (row.SubstanceOf(catalogue, "solution").Name, row.SubstanceOf(catalogue, "component").Name);
            if (!table._rows.TryGetValue(key, out var list))
                table._rows[key] = list = [];
            list.Add(new Node(
                row.Positive("percent"), row.Positive("at_k"), Math.Log(row.Positive("pascals")), row.Positive("slope_k"), Spread.OfPercent(row.Positive("spread_percent")), row.Provenance));
        }

        foreach (var list in table._rows.Values)
            list.Sort((a, b) => a.Percent.CompareTo(b.Percent));
        return table;
    }

    /// <summary>Null where the solution or the component is not listed.</summary>
    /// <param name="solute">What a solution is named for.</param>
    /// <param name="component">What presses.</param>
    /// <param name="strength">Share of the solute by mass.</param>
    /// <param name="t">Temperature.</param>
    /// <param name="pure">The component's own pressure, asked for water in weak solutions only.</param>
    public Fact<Pressure>? Find(Substance solute, Substance component, Fraction strength, Temperature t, Func<Substance, Temperature, Fact<Pressure>> pure)
    {
        if (!_rows.TryGetValue((solute.Name, component.Name), out var list))
            return null;
        var percent = strength.Percent;
        if (list.Count == 1)
            return Single(list[0], percent, solute, component, t);
        if (percent < list[0].Percent)
            return component.Name == "water" ? NearPure(list[0], percent, pure(component, t), t) : Weak(list[0], list[1], percent, t);
        var i = 0;
        while (i < list.Count && list[i].Percent < percent)
            i++;
        i = Math.Clamp(i < list.Count ? i : -1, 1, list.Count - 1);
        if (percent > list[^1].Percent)
            i = list.Count - 1;
        var (a, b) = (list[i - 1], list[i]);
        var share = (percent - a.Percent) / (b.Percent - a.Percent);
        var ln = a.LnAt(t) + (share * (b.LnAt(t) - a.LnAt(t)));
        var beyond = Math.Max(0, percent - b.Percent);
        var spread = Wider(a, b).And(Widened(beyond));
        var near = share < 0.5 ? a : b;
        return Fact<Pressure>.Of(
            new Pressure(Math.Exp(ln)), spread, near.Provenance, beyond > 0 ? "stronger than any listed; carried on, band widened" : null);
    }

    private static Fact<Pressure> Weak(Node first, Node second, double percent, Temperature t)
    {
        var ln = first.LnAt(t);
        var slope = (second.LnAt(t) - ln) / (second.Percent - first.Percent);
        var activity = Math.Min(0, (slope - (1 / first.Percent)) * (percent - first.Percent));
        var p = percent <= 0 ? 0 : Math.Exp(ln + activity) * percent / first.Percent;
        return Fact<Pressure>.Of(
            new Pressure(p), Wider(first, second).And(Widened(first.Percent - percent)), first.Provenance, "weaker than any listed; Henry's law towards nothing, band widened");
    }

    private static Fact<Pressure> NearPure(Node first, double percent, Fact<Pressure> pure, Temperature t)
    {
        if (pure.Value is not { Pascals: > 0 } p)
            return pure;
        var share = percent / first.Percent;
        var ln = (share * first.LnAt(t)) + ((1 - share) * Math.Log(p.Pascals));
        return Fact<Pressure>.Of(new Pressure(Math.Exp(ln)), first.Spread, first.Provenance, "weaker than any listed; towards pure water");
    }

    private static Spread Widened(double beyondPercent) => beyondPercent > 0 ? Spread.Of(Math.Pow(1.5, beyondPercent / 10)) : Spread.None;

    private static Spread Wider(Node a, Node b) => a.Spread.Factor > b.Spread.Factor ? a.Spread : b.Spread;

    // One listed strength: in proportion to the strength.
    private static Fact<Pressure> Single(Node node, double percent, Substance solute, Substance component, Temperature t)
    {
        var p = Math.Exp(node.LnAt(t)) * percent / node.Percent;
        var spread = node.Spread.And(Spread.Of(Math.Pow(1.5, Math.Abs(percent - node.Percent) / 10)));
        return Fact<Pressure>.Of(new Pressure(p), spread, node.Provenance, $"{component.Name} over {solute.Name} is listed at {node.Percent:0.#} % only; taken in proportion");
    }
}
