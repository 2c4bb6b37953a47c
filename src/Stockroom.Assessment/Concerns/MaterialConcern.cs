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
            Sentence(poor[0], Contents(poor), holding.PlaceName),
            string.Join("; ", poor.Select(p => p.Finding.Because).Distinct(StringComparer.Ordinal)),
            poor[0].Finding.Source?.ToString() ?? "unknown",
            null,
            [holding.Id]);

    // A halogen walks through a polyolefin that it hardly attacks: common practice, and the table's own remark.
    private static bool Fails(WettedPart wetted, Holding holding) =>
        wetted.Finding.Rating == ResistanceRating.Poor
        || (wetted.Finding.Rating == ResistanceRating.Limited && wetted.By == "content"
            && wetted.Finding.Material is "LDPE" or "HDPE" or "PP" && holding.Content.Parts.Any(p => p.Substance.Element is "Cl" or "Br" or "I"));

    private static string Contents(List<WettedPart> parts) =>
        string.Join(" and ", parts.Where(p => p.Part == parts[0].Part).Select(p => p.Finding.Content).Distinct(StringComparer.Ordinal));

    private static string Sentence(WettedPart part, string contents, string place) => part.Finding.Rating == ResistanceRating.Poor
        ? $"The {part.Finding.Material} {part.Part} does not stand {contents} on {place}: change it"
        : $"The {part.Finding.Material} {part.Part} lets {contents} through on {place}: change it";
}
