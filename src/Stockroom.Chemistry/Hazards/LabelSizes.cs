using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards;

/// <summary>Sizes that CLP asks of a label for packages of a capacity.</summary>
/// <param name="UpToMillilitres">Largest capacity of the row; null for the last.</param>
/// <param name="ShorterMillimetres">Shorter side of the label.</param>
/// <param name="LongerMillimetres">Longer side of the label.</param>
/// <param name="LabelIfPossible">True where a smaller label will do if there is no room.</param>
/// <param name="PictogramMillimetres">Side of a pictogram, not less.</param>
/// <param name="PictogramIfPossibleMillimetres">Side of a pictogram where there is room.</param>
/// <param name="XHeightMillimetres">Height of a lower-case x under the formatting rules of 2024.</param>
/// <param name="Provenance">Who says so.</param>
public sealed record LabelSize(
    decimal? UpToMillilitres,
    decimal ShorterMillimetres,
    decimal LongerMillimetres,
    bool LabelIfPossible,
    decimal PictogramMillimetres,
    decimal PictogramIfPossibleMillimetres,
    decimal XHeightMillimetres,
    Provenance Provenance);

/// <summary>The sizes by capacity, from label-sizes.tsv.</summary>
public static class LabelSizes
{
    private static readonly Lazy<IReadOnlyList<LabelSize>> Rows = new(Read);

    /// <summary>The row for a capacity in millilitres above 0.</summary>
    public static LabelSize For(decimal capacityMillilitres) => Rows.Value.First(r => r.UpToMillilitres is not { } most || capacityMillilitres <= most);

    private static List<LabelSize> Read() =>
    [
        .. EmbeddedTables.Facts(
            "label-sizes.tsv", "over_ml", "up_to_ml", "label_width_mm", "label_height_mm", "label_if_possible", "pictogram_mm", "pictogram_if_possible_mm", "x_height_mm")
            .Rows.OrderBy(r => r.Decimal("over_ml")).Select(r => new LabelSize(
                r.DecimalOrNull("up_to_ml"), r.Decimal("label_width_mm"), r.Decimal("label_height_mm"), r.YesNo("label_if_possible"),
                r.Decimal("pictogram_mm"), r.Decimal("pictogram_if_possible_mm"), r.Decimal("x_height_mm"), r.Provenance)),
    ];
}
