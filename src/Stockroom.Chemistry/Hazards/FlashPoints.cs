using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Flash points of solutions in water by strength, from flash-points.tsv.</summary>
public sealed class FlashPoints
{
    private readonly Dictionary<string, List<(decimal Percent, decimal Celsius, Provenance Source)>> _curves = new(StringComparer.Ordinal);

    private FlashPoints(Table table)
    {
        foreach (var row in table.Rows)
        {
            var name = row.Text("substance");
            if (!_curves.TryGetValue(name, out var curve))
                _curves[name] = curve = [];
            if (curve.Count > 0 && curve[^1].Percent >= row.Decimal("percent"))
                throw row.Wrong("percent", "strengths must rise");
            curve.Add((row.Decimal("percent"), row.Decimal("flash_point_c"), row.Provenance));
        }
    }

    internal static FlashPoints Read() => new(EmbeddedTables.Facts("flash-points.tsv", "substance", "percent", "flash_point_c"));

    public bool Knows(string substance) => _curves.ContainsKey(substance);

    /// <summary>
    /// Flash point in degrees Celsius of a solution in water, between the tabulated strengths by straight line;
    /// null below the least of them, where none is known.
    /// </summary>
    /// <param name="substance">One that <see cref="Knows"/>.</param>
    /// <param name="percent">Share of the substance in what it and the water weigh together.</param>
    public (decimal Celsius, Provenance Source)? Of(string substance, decimal percent)
    {
        var curve = _curves[substance];
        if (percent < curve[0].Percent)
            return null;
        var above = curve.FindIndex(p => p.Percent >= percent);
        if (above < 0)
            return (curve[^1].Celsius, curve[^1].Source);
        if (above == 0)
            return (curve[0].Celsius, curve[0].Source);
        var (a, b) = (curve[above - 1], curve[above]);
        return (a.Celsius + ((b.Celsius - a.Celsius) * (percent - a.Percent) / (b.Percent - a.Percent)), b.Source);
    }
}
