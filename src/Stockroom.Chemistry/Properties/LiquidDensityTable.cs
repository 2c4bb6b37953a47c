using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>Reads liquid-density.tsv: one fit a substance.</summary>
internal sealed class LiquidDensityTable
{
    private static readonly Dictionary<string, Func<LiquidDensityFit, Substance, Temperature, Density>> Forms = new(StringComparer.Ordinal)
    {
        ["dippr_105"] = (f, s, t) => LiquidDensityEquations.Dippr105(f.Coefficients, s.MolarMass!.Value, t),
        ["ppds_116"] = (f, _, t) => LiquidDensityEquations.Ppds116(f.Coefficients, f.Critical!.Value, t),
        ["linear"] = (f, _, t) => LiquidDensityEquations.Linear(f.Coefficients, t),
    };

    private readonly Dictionary<string, LiquidDensityFit> _fits = new(StringComparer.Ordinal);

    private LiquidDensityTable()
    {
    }

    public static LiquidDensityTable Read(SubstanceCatalogue catalogue)
    {
        var table = new LiquidDensityTable();
        foreach (var row in EmbeddedTables.Facts(
            "liquid-density.tsv", "substance", "form", "a", "b", "c", "d", "e", "critical_k", "from_k", "to_k", "spread_percent").Rows)
        {
            var substance = row.SubstanceOf(catalogue, "substance");
            var fit = new LiquidDensityFit(
                row.OneOf("form", Forms),
                row.Coefficients(),
                row.PositiveOrNull("critical_k") is { } tc ? new Temperature(tc) : null,
                row.PositiveOrNull("from_k") is { } from ? new Temperature(from) : null,
                new Temperature(row.Positive("to_k")),
                Spread.OfPercent(row.Positive("spread_percent")),
                row.Provenance);
            if (row.Text("form") == "ppds_116" && fit.Critical is null)
                throw row.Wrong("critical_k", "this form needs critical_k");
            if (!table._fits.TryAdd(substance.Name, fit))
                throw row.Wrong("substance", $"'{substance.Name}' stands twice");
        }

        return table;
    }

    public LiquidDensityFit? Find(Substance substance) => _fits.GetValueOrDefault(substance.Name);
}

/// <summary>One published fit of a liquid's density with its range.</summary>
internal sealed record LiquidDensityFit(
    Func<LiquidDensityFit, Substance, Temperature, Density> Form,
    FitCoefficients Coefficients,
    Temperature? Critical,
    Temperature? From,
    Temperature To,
    Spread Spread,
    Provenance Provenance)
{
    public Density At(Substance substance, Temperature t) => Form(this, substance, t);
}
