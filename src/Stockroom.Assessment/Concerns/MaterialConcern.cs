using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Vessels;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Concerns;

/// <summary>Vessels, liners and stoppers that do not stand what they hold.</summary>
public sealed class MaterialConcern : IConcern
{
    public IEnumerable<WrongItem> Find(StockAssessment stock) =>
        from holding in stock.Holdings
        let poor = holding.Wetted.Where(w => Fails(w, holding)).ToList()
        where poor.Count > 0
        select new WrongItem(
            Severity.Warning,
            "material",
            $"The {poor[0].Finding.Material} {poor[0].Part} {(poor[0].Finding.Rating == ResistanceRating.Poor ? "does not stand" : "lets through")} {string.Join(" and ", poor.Where(p => p.Part == poor[0].Part).Select(p => p.Finding.Content).Distinct(StringComparer.Ordinal))} on {holding.PlaceName}: change it",
            string.Join("; ", poor.Select(p => p.Finding.Because).Distinct(StringComparer.Ordinal)),
            poor[0].Finding.Source?.ToString() ?? "unknown",
            null,
            [holding.Id]);

    // A halogen walks through a polyolefin that it hardly attacks: common practice, and the table's own remark.
    private static bool Fails(WettedPart wetted, Holding holding) =>
        wetted.Finding.Rating == ResistanceRating.Poor
        || (wetted.Finding.Rating == ResistanceRating.Limited && wetted.By == "content"
            && wetted.Finding.Material is "LDPE" or "HDPE" or "PP" && holding.Content.Parts.Any(p => p.Substance.Element is "Cl" or "Br" or "I"));
}
