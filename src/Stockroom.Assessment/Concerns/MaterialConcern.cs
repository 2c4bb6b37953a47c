using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Concerns;

/// <summary>Vessels, liners and stoppers that do not stand what they hold.</summary>
public sealed class MaterialConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        let poor = holding.Wetted.Where(w => w.Finding.Rating == ResistanceRating.Poor).ToList()
        where poor.Count > 0
        select new WrongItem(
            Severity.Warning,
            "material",
            $"The {poor[0].Finding.Material} {poor[0].Part} does not stand {string.Join(" and ", poor.Where(p => p.Part == poor[0].Part).Select(p => p.Finding.Content).Distinct(StringComparer.Ordinal))} on {holding.PlaceName}: change it",
            string.Join("; ", poor.Select(p => p.Finding.Because).Distinct(StringComparer.Ordinal)),
            poor[0].Finding.Source?.ToString() ?? "unknown",
            null,
            [holding.Id]);
}
