using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>Reads vapour-pressure.tsv: one preferred fit a substance and phase.</summary>
internal sealed class VapourPressureTable
{
    private static readonly Dictionary<string, MatterState> Phases = new(StringComparer.Ordinal)
    {
        ["solid"] = MatterState.Solid,
        ["liquid"] = MatterState.Liquid,
    };

    private static readonly Dictionary<string, Func<VapourPressureFit, Temperature, Pressure>> Forms = new(StringComparer.Ordinal)
    {
        ["antoine_ln"] = (f, t) => AntoineEquation.NaturalLogarithm(f.Coefficients, t),
        ["antoine_log10"] = (f, t) => AntoineEquation.DecimalLogarithm(f.Coefficients, t),
        ["dippr_101"] = (f, t) => Dippr101Equation.Pressure(f.Coefficients, t),
        ["wagner_25"] = (f, t) => WagnerEquation.With25And5(f.Coefficients, f.Critical!.Value, f.CriticalPressure!.Value, t),
        ["wagner_36"] = (f, t) => WagnerEquation.With3And6(f.Coefficients, f.Critical!.Value, f.CriticalPressure!.Value, t),
    };

    private readonly Dictionary<(string, MatterState), VapourPressureFit> _fits = [];

    private VapourPressureTable()
    {
    }

    public static VapourPressureTable Read(SubstanceCatalogue catalogue)
    {
        var table = new VapourPressureTable();
        foreach (var row in EmbeddedTables.Facts(
            "vapour-pressure.tsv", "substance", "phase", "form", "a", "b", "c", "d", "e", "critical_k", "critical_pa", "from_k", "to_k", "spread_percent").Rows)
        {
            var substance = row.SubstanceOf(catalogue, "substance");
            var phase = row.OneOf("phase", Phases);
            var fit = new VapourPressureFit(
                row.OneOf("form", Forms),
                row.Coefficients(),
                row.PositiveOrNull("critical_k") is { } tc ? new Temperature(tc) : null,
                row.PositiveOrNull("critical_pa") is { } pc ? new Pressure(pc) : null,
                new Temperature(row.Positive("from_k")),
                new Temperature(row.Positive("to_k")),
                Spread.OfPercent(row.Positive("spread_percent")),
                row.Provenance);
            if (fit.To <= fit.From)
                throw row.Wrong("to_k", "must lie above from_k");
            if (row.Text("form").StartsWith("wagner", StringComparison.Ordinal) && (fit.Critical is null || fit.CriticalPressure is null))
                throw row.Wrong("critical_k", "a Wagner fit needs critical_k and critical_pa");
            if (!table._fits.TryAdd((substance.Name, phase), fit))
                throw row.Wrong("phase", $"{substance.Name} has two rows for the {row.Text("phase")}");
        }

        return table;
    }

    public VapourPressureFit? Find(Substance substance, MatterState phase) => _fits.GetValueOrDefault((substance.Name, phase));
}
