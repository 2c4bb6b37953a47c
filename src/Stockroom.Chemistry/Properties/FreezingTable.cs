using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>What happens to a content on cooling, and when: "freezes", "crystallises", "clouds".</summary>
public sealed record CoolingEvent(string Does, Temperature At, TemperatureChange Spread, Provenance Provenance);

/// <summary>
/// Freezing of solutions: listed strengths, else for a dilute solution in water the depression of 1.86 K for each mole dissolved in a
/// kilogram of water, a salt or strong acid taken as two particles.
/// </summary>
internal sealed class FreezingTable
{
    private const double MostBetween = 5;
    private const double Beside = 1.5;
    private const double DiluteWater = 88;
    private const double Cryoscopic = 1.86;

    private static readonly Provenance Depression = new("Atkins, Physical Chemistry, freezing-point depression of water", "1.86 K kg/mol", "2014");

    private readonly Dictionary<string, List<(double Percent, CoolingEvent Event)>> _rows = new(StringComparer.Ordinal);

    private FreezingTable()
    {
    }

    public static FreezingTable Read(SubstanceCatalogue catalogue)
    {
        var table = new FreezingTable();
        foreach (var row in EmbeddedTables.Facts("solution-freezing.tsv", "substance", "percent", "event", "at_k", "spread_k").Rows)
        {
            var name = row.SubstanceOf(catalogue, "substance").Name;
            if (!table._rows.TryGetValue(name, out var list))
                table._rows[name] = list = [];
            if (list.Count > 0 && list[^1].Percent >= row.Positive("percent"))
                throw row.Wrong("percent", "must rise down the table");
            list.Add((row.Positive("percent"), new CoolingEvent(row.Text("event"), new Temperature(row.Positive("at_k")), new TemperatureChange(row.Positive("spread_k")), row.Provenance)));
        }

        return table;
    }

    /// <summary>Null where nothing is known.</summary>
    public CoolingEvent? Find(Content content)
    {
        foreach (var part in content.Parts)
        {
            if (_rows.TryGetValue(part.Substance.Name, out var list) && At(list, (double)part.Percent) is { } found)
                return found;
        }

        return (double)content.WaterPercent >= DiluteWater ? Dilute(content) : null;
    }

    private static CoolingEvent? At(List<(double Percent, CoolingEvent Event)> list, double percent)
    {
        var above = list.FindIndex(r => r.Percent >= percent);
        if (above > 0 && list[above].Percent - list[above - 1].Percent <= MostBetween)
        {
            var (a, b) = (list[above - 1], list[above]);
            var share = (percent - a.Percent) / (b.Percent - a.Percent);
            return b.Event with { At = new Temperature(a.Event.At.Kelvin + (share * (b.Event.At.Kelvin - a.Event.At.Kelvin))), Spread = a.Event.Spread > b.Event.Spread ? a.Event.Spread : b.Event.Spread };
        }

        var near = list.MinBy(r => Math.Abs(r.Percent - percent));
        return Math.Abs(near.Percent - percent) <= Beside ? near.Event : null;
    }

    private static CoolingEvent Dilute(Content content)
    {
        var water = (double)content.WaterPercent / 100;
        var moles = content.Parts.Where(p => p.Substance.Name != "water").Sum(p => (double)p.Percent / 100 / (p.Substance.MolarMass?.KilogramsPerMole ?? 0.1) * (p.Substance.State == MatterState.Solid ? 2 : 1));
        var depression = Cryoscopic * moles / water;
        return new CoolingEvent("freezes", new Temperature(273.15 - depression), new TemperatureChange(1 + (0.3 * depression)), Depression);
    }
}
