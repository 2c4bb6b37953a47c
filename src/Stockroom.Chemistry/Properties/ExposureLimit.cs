using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>One published limit of a substance in the air of a workplace.</summary>
/// <remarks>Kind: Time-weighted average, short-term, ceiling, or immediately dangerous. Share: By volume; null where the limit is stated by mass only and the molar mass is unknown. Concentration: By mass in air; null where it cannot be converted.</remarks>
public sealed record ExposureLimit(string Name, string Kind, Fraction? Share, MassConcentration? Concentration, Provenance Provenance)
{
    public bool IsForDailyWork => Kind != "immediately dangerous";
}

/// <summary>Reads exposure-limits.tsv; a limit stated one way only is converted at 25 degrees C.</summary>
internal sealed class ExposureLimitTable
{
    private readonly Dictionary<string, List<ExposureLimit>> _limits = new(StringComparer.Ordinal);

    private ExposureLimitTable()
    {
    }

    public static ExposureLimitTable Read(SubstanceCatalogue catalogue)
    {
        var table = new ExposureLimitTable();
        foreach (var row in EmbeddedTables.Facts("exposure-limits.tsv", "substance", "limit", "kind", "ppm", "mg_m3").Rows)
        {
            var substance = row.SubstanceOf(catalogue, "substance");
            Fraction? share = row.PositiveOrNull("ppm") is { } ppm ? Fraction.FromPartsPerMillion(ppm) : null;
            MassConcentration? mass = row.PositiveOrNull("mg_m3") is { } mg ? MassConcentration.FromMilligramsPerCubicMetre(mg) : null;
            if (share is null && mass is null)
                throw row.Wrong("ppm", "a limit needs ppm or mg_m3");
            if (substance.MolarMass is { } molarMass)
            {
                // What is stated in parts per million is a vapour; milligrams of a solid may be dust.
                var one = GasLaw.AtReference(new Fraction(1), molarMass);
                mass ??= one * share!.Value.Value;
                if (substance.State != MatterState.Solid)
                    share ??= new Fraction(mass.Value / one);
            }

            if (!table._limits.TryGetValue(substance.Name, out var list))
                table._limits[substance.Name] = list = [];
            list.Add(new ExposureLimit(row.Text("limit"), row.Text("kind"), share, mass, row.Provenance));
        }

        return table;
    }

    public IReadOnlyList<ExposureLimit> Of(Substance substance) => _limits.TryGetValue(substance.Name, out var list) ? list : [];

    /// <summary>The lowest limit for daily work, of any kind and country; null where none is in the tables.</summary>
    public ExposureLimit? Strictest(Substance substance) =>
        Of(substance).Where(l => l.IsForDailyWork)
            .OrderBy(l => l.Concentration?.KilogramsPerCubicMetre ?? double.MaxValue)
            .ThenBy(l => l.Share?.Value ?? double.MaxValue)
            .FirstOrDefault();
}
