using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>How fast something diffuses within a wall material, which says how long the wall takes to let through what it will.</summary>
/// <remarks>Substance: null where the row stands for every vapour of a liquid or solid that has none of its own. Activation: null where it is not known; then the band holds for room temperature and near it.</remarks>
public sealed record WallDiffusivity(
    string Material, Substance? Substance, Band<Diffusivity> Diffusivity, Temperature At, MolarEnergy? Activation, Provenance Provenance)
{
    /// <summary>At another temperature, by Arrhenius where the activation energy is known.</summary>
    public Band<Diffusivity> AtTemperature(Temperature t)
    {
        var warm = Activation is { } e ? Permeation.TemperatureFactor(e, At, t).Value : 1;
        return Diffusivity.Select(d => d * warm);
    }

    /// <summary>The lag of a sheet at a temperature, shortest to longest.</summary>
    public Band<Span> Lag(Length thickness, Temperature t)
    {
        var d = AtTemperature(t);
        return new Band<Span>(Permeation.TimeLag(d.High, thickness), Permeation.TimeLag(d.Expected, thickness), Permeation.TimeLag(d.Low, thickness));
    }
}

/// <summary>Reads wall-diffusivity.tsv.</summary>
internal sealed class WallDiffusivityTable
{
    private const string Any = "*";

    private readonly Dictionary<(string Material, string Substance), WallDiffusivity> _rows = [];

    private WallDiffusivityTable()
    {
    }

    public static WallDiffusivityTable Read(SubstanceCatalogue catalogue)
    {
        var table = new WallDiffusivityTable();
        foreach (var row in EmbeddedTables.Facts("wall-diffusivity.tsv", "material", "substance", "low_m2_s", "m2_s", "high_m2_s", "at_k", "activation_kj").Rows)
        {
            var band = new Band<double>(row.Positive("low_m2_s"), row.Positive("m2_s"), row.Positive("high_m2_s"));
            if (band.Low > band.Expected || band.High < band.Expected)
                throw row.Wrong("m2_s", "must lie between low and high");
            var entry = new WallDiffusivity(
                row.Text("material"),
                row.Text("substance") == Any ? null : row.SubstanceOf(catalogue, "substance"),
                band.Select(d => new Diffusivity(d)),
                new Temperature(row.Positive("at_k")),
                row.PositiveOrNull("activation_kj") is { } kj ? MolarEnergy.FromKilojoulesPerMole(kj) : null,
                row.Provenance);
            if (!table._rows.TryAdd((entry.Material, entry.Substance?.Name ?? Any), entry))
                throw row.Wrong("substance", "stands twice for this material");
        }

        return table;
    }

    // A gas diffuses far faster than the vapours for which a material's own row stands: without a row of its own it is not known.
    public WallDiffusivity? Find(string material, Substance substance) =>
        _rows.GetValueOrDefault((material, substance.Name)) ?? (substance.State == MatterState.Gas ? null : _rows.GetValueOrDefault((material, Any)));
}
