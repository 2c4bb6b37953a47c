using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>Reads the cells that several tables of properties share.</summary>
internal static class PropertyCells
{
    public static Substance SubstanceOf(this TableRow row, SubstanceCatalogue catalogue, string column) =>
        catalogue.Find(row.Text(column)) ?? throw row.Wrong(column, $"'{row.Text(column)}' is not a substance of substances.tsv");

    /// <summary>The columns a to e; an empty one is 0.</summary>
    public static FitCoefficients Coefficients(this TableRow row) =>
        new(row.Number("a"), row.Number("b"), row.NumberOrNull("c") ?? 0, row.NumberOrNull("d") ?? 0, row.NumberOrNull("e") ?? 0);
}
