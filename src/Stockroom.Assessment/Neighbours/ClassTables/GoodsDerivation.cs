using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Neighbours.ClassTables;

/// <summary>
/// Derives a transport class from GHS categories, whose criteria for physical hazards, acute toxicity and corrosion are those
/// of the UN Model Regulations, chapters 2.1 to 2.9. Source: from memory, UN Model Regulations part 2 and GHS part 2 and 3.
/// </summary>
internal static class GoodsDerivation
{
    private static readonly Provenance Criteria = new("from memory: UN Model Regulations", "part 2, criteria shared with the GHS", "2023");

    public static GoodsClass Derive(Content content, Classification classification, bool isRadioactive)
    {
        if (content.IsUnknown || classification.IsUnknown)
            return new GoodsClass { Because = $"what {content.Name} is, is not known, and so is its class" };
        var gas = content.State == MatterState.Gas || classification.Categories.Any(c => c.Category.Contains(". Gas", StringComparison.Ordinal));
        var hazards = HazardPrecedence.Sort(Hazards(classification, gas, isRadioactive));
        if (hazards.Count == 0)
            return WithoutHazards(content, classification);
        var main = hazards[0];
        var unsure = classification.Unclassified.Count > 0 ? $"; nothing is known of {string.Join(" and ", classification.Unclassified)}" : "";
        return new GoodsClass
        {
            Class = main.Class,
            Subsidiary = [.. hazards.Skip(1).Select(h => h.Class).Where(c => c != "9" && c != main.Class).Distinct()],
            PackingGroup = main.Group.Length > 0 ? main.Group : null,
            Zone = ByInhalation(classification, main.Class) ? "A" : null,
            IsDerived = true,
            Because = $"not named in the list; derived from its GHS categories{unsure}{(ByInhalation(classification, main.Class) ? "; its US hazard zone is not known and counts as A, the worst" : "")}",
            Source = Criteria,
        };
    }

    private static bool ByInhalation(Classification classification, string main) =>
        main == "2.3" || (main == "6.1" && classification.Categories.Any(c => c is { Category: "Acute Tox. 1", Statement: "H330" }));

    private static GoodsClass WithoutHazards(Content content, Classification classification) =>
        classification.Unclassified.Count > 0 || content.Parts.Count == 0
            ? new GoodsClass { Because = $"nothing is known of {string.Join(" and ", classification.Unclassified.DefaultIfEmpty(content.Name))}, so that the class of {content.Name} is not known" }
            : new GoodsClass { Class = GoodsClass.NotRegulated, IsDerived = true, Because = $"no transport class follows from the GHS categories of {content.Name}", Source = Criteria };

    private static List<TransportHazard> Hazards(Classification classification, bool gas, bool isRadioactive)
    {
        var found = new Dictionary<string, TransportHazard>(StringComparer.Ordinal);
        if (isRadioactive)
            found["7"] = new TransportHazard("7", "");
        foreach (var category in classification.Categories)
        {
            if (Of(category, gas) is not { } hazard)
                continue;
            if (!found.TryGetValue(hazard.Class, out var before) || Rank(hazard) < Rank(before))
                found[hazard.Class] = hazard;
        }

        // A gas that is corrosive counts as poisonous too: 2.2.2.1.
        if (gas && found.ContainsKey("8"))
            found["2.3"] = new TransportHazard("2.3", "");
        if (gas && !found.Keys.Any(k => k.StartsWith("2.", StringComparison.Ordinal)))
            found["2.2"] = new TransportHazard("2.2", "");
        if (found.ContainsKey("2.1") || found.ContainsKey("2.3"))
            found.Remove("2.2");
        if (found.Keys.Any(k => k != "9"))
            found.Remove("9");
        return [.. found.Values];
    }

    private static TransportHazard? Of(ClassifiedCategory category, bool gas) => category.Category switch
    {
        "Unst. Expl." => new TransportHazard("1.1", ""),
        { } c when c.StartsWith("Expl. 1.", StringComparison.Ordinal) => new TransportHazard(c["Expl. ".Length..], ""),
        "Flam. Gas 1" or "Flam. Gas 1A" or "Flam. Gas 1B" or "Pyr. Gas" => new TransportHazard("2.1", ""),
        "Ox. Gas 1" => new TransportHazard("5.1", ""),
        { } c when c.StartsWith("Press. Gas", StringComparison.Ordinal) => new TransportHazard("2.2", ""),
        "Flam. Liq. 1" => new TransportHazard("3", "I"),
        "Flam. Liq. 2" => new TransportHazard("3", "II"),
        "Flam. Liq. 3" => new TransportHazard("3", "III"),
        "Flam. Sol. 1" => new TransportHazard("4.1", "II"),
        "Flam. Sol. 2" => new TransportHazard("4.1", "III"),
        { } c when c.StartsWith("Self-react.", StringComparison.Ordinal) => new TransportHazard("4.1", ""),
        { } c when c.StartsWith("Desen. Expl.", StringComparison.Ordinal) => new TransportHazard("4.1", "I"),
        { } c when c.StartsWith("Pyr. ", StringComparison.Ordinal) => new TransportHazard("4.2", "I"),
        "Self-heat. 1" => new TransportHazard("4.2", "II"),
        "Self-heat. 2" => new TransportHazard("4.2", "III"),
        { } c when c.StartsWith("Water-react. ", StringComparison.Ordinal) => new TransportHazard("4.3", Group(c)),
        { } c when c.StartsWith("Ox. Liq. ", StringComparison.Ordinal) || c.StartsWith("Ox. Sol. ", StringComparison.Ordinal) => new TransportHazard("5.1", Group(c)),
        { } c when c.StartsWith("Org. Perox.", StringComparison.Ordinal) => new TransportHazard("5.2", ""),
        "Acute Tox. 1" or "Acute Tox. 2" or "Acute Tox. 3" => gas
            ? new TransportHazard("2.3", "")
            : new TransportHazard("6.1", Group(category.Category), category.Statement.StartsWith("H30", StringComparison.Ordinal)),
        "Skin Corr. 1A" => new TransportHazard("8", "I"),
        "Skin Corr. 1B" => new TransportHazard("8", "II"),
        "Skin Corr. 1C" or "Met. Corr. 1" => new TransportHazard("8", "III"),
        "Skin Corr. 1" => new TransportHazard("8", ""),
        "Aquatic Acute 1" or "Aquatic Chronic 1" or "Aquatic Chronic 2" => gas ? null : new TransportHazard("9", "III"),
        _ => null,
    };

    private static string Group(string category) => category[^1] switch { '1' => "I", '2' => "II", _ => "III" };

    private static int Rank(TransportHazard hazard) => hazard.Group switch { "I" => 0, "II" => 1, "III" => 2, _ => 1 };
}
