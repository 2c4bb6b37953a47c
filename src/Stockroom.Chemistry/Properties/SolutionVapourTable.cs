using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Partial pressures over solutions in water: ln p linear in per cent between the listed strengths, and in 1/T at each.
/// Beyond the listed strengths the slope of the end is carried on and the band widens 1.5 times per 10 per cent.
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
    public Fact<Pressure>? Find(Substance solute, Substance component, Fraction strength, Temperature t)
    {
        if (!_rows.TryGetValue((solute.Name, component.Name), out var list))
            return null;
        var percent = strength.Percent;
        if (list.Count == 1)
            return Single(list[0], percent, solute, component, t);
        var i = 0;
        while (i < list.Count && list[i].Percent < percent)
            i++;
        i = Math.Clamp(i < list.Count ? i : -1, 1, list.Count - 1);
        if (percent > list[^1].Percent)
            i = list.Count - 1;
        var (a, b) = (list[i - 1], list[i]);
        var share = (percent - a.Percent) / (b.Percent - a.Percent);
        var ln = a.LnAt(t) + (share * (b.LnAt(t) - a.LnAt(t)));
        var beyond = Math.Max(0, Math.Max(a.Percent - percent, percent - b.Percent));
        var spread = Wider(a, b).And(Spread.Of(Math.Pow(1.5, beyond / 10)));
        var near = share < 0.5 ? a : b;
        return Fact<Pressure>.Of(
            new Pressure(Math.Exp(ln)), spread, near.Provenance, beyond > 0 ? $"{percent:0.#} % lies outside the listed strengths; carried on, band widened" : null);
    }

    private static Spread Wider(Node a, Node b) => a.Spread.Factor > b.Spread.Factor ? a.Spread : b.Spread;

    // One listed strength: in proportion to the strength.
    private static Fact<Pressure> Single(Node node, double percent, Substance solute, Substance component, Temperature t)
    {
        var p = Math.Exp(node.LnAt(t)) * percent / node.Percent;
        var spread = node.Spread.And(Spread.Of(Math.Pow(1.5, Math.Abs(percent - node.Percent) / 10)));
        return Fact<Pressure>.Of(new Pressure(p), spread, node.Provenance, $"{component.Name} over {solute.Name} is listed at {node.Percent:0.#} % only; taken in proportion");
    }
}
