using System.Globalization;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>
/// Published vapour-pressure and density points, from other sources than the fits: reference equations of state, the VDI saturation
/// tables, Stull 1947, NIOSH. 95 per cent must lie within their tolerance; the misses are listed.
/// </summary>
public sealed class ReferencePointTests(ITestOutputHelper output)
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;

    [Fact]
    public void VapourPressure_PublishedPoints_AreMet() =>
        Check("vapour_pressure_checks.tsv", r => r["status"] == "ok", "p_Pa", (s, t) => Facts.VapourPressure(s, t).Value?.Pascals);

    [Fact]
    public void LiquidDensity_PublishedPoints_AreMet() =>
        Check("liquid_density_checks.tsv", _ => true, "rho_kg_m3", (s, t) => Facts.LiquidDensity(s, t).Value?.KilogramsPerCubicMetre);

    private void Check(string file, Func<IReadOnlyDictionary<string, string>, bool> counts, string column, Func<Substance, Temperature, double?> value)
    {
        var (met, missed) = (0, new List<string>());
        foreach (var row in ReferenceFolder.Rows(file).Where(counts))
        {
            var substance = Find(row);
            if (substance is null)
                continue;
            var (t, expected, tolerance) = (Number(row, "T_K"), Number(row, column), Number(row, "tol_pct") / 100);
            var actual = value(substance, new Temperature(t));
            if (actual is { } a && Math.Abs((a / expected) - 1) <= tolerance)
                met++;
            else
                missed.Add($"{substance.Name} at {t} K: {actual?.ToString("G5", CultureInfo.InvariantCulture) ?? "none"} where {expected:G5} within {tolerance:P0} is published ({row["source"]})");
        }

        output.WriteLine($"{met} met, {missed.Count} missed");
        missed.ForEach(output.WriteLine);
        Assert.True(met >= 50 && met >= 0.95 * (met + missed.Count), string.Join(Environment.NewLine, missed));
    }

    private static Substance? Find(IReadOnlyDictionary<string, string> row) =>
        row["substance"].StartsWith("phosphorus", StringComparison.Ordinal) && !row["substance"].Contains("chlor", StringComparison.Ordinal)
            ? Facts.Catalogue.Find("phosphorus (white)")
            : Facts.Catalogue.ResolveSubstance(row["cas"]);

    private static double Number(IReadOnlyDictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);
}
