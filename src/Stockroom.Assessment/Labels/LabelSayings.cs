using System.Globalization;
using Stockroom.Assessment.Holdings;
using Stockroom.Book.Containers;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Labels;

/// <summary>What the label of a container says, part by part, in words that can be compared later.</summary>
public static class LabelSayings
{
    internal const string Name = "name";
    internal const string Composition = "composition";
    internal const string Hazards = "hazards";
    internal const string Warnings = "warnings";
    internal const string Opened = "opened";
    internal const string Sealed = "sealed";
    internal const string Cover = "cover";
    internal const string Place = "place";

    /// <summary>What a label printed now by an edition's rules would say; amounts are left out, as every draw changes them.</summary>
    public static IReadOnlyList<LabelSaying> Of(Holding holding, StockFacts facts, RuleSet rules)
    {
        var container = holding.Container;
        var classification = holding.Classification.Rules == rules ? holding.Classification : Classifier.Classify(holding.Content, facts.Hazards, rules);
        var label = LabelElements.Of(classification, facts.Hazards);
        return
        [
            new(Name, holding.Content.IsUnknown ? $"contents unknown: {container.Seen ?? holding.Content.Name}" : holding.Content.Name),
            new(Composition, holding.Content.IsUnknown || holding.Content.Pure is not null ? "" : string.Join(", ", holding.Content.Parts.Select(p => $"{p.Substance.Name} {p.Percent.ToString("0.##", CultureInfo.InvariantCulture)} %"))),
            new(Hazards, HazardsOf(label)),
            new(Warnings, string.Join(", ", label.WordsBeside.Concat(container.HandsOff is null ? [] : ["hands off"]))),
            new(Opened, Day(container.OpenedOn)),
            new(Sealed, Day(container.SealedOn)),
            new(Cover, container.Cover?.Name ?? ""),
            new(Place, holding.PlaceWords),
        ];
    }

    private static string HazardsOf(LabelElements label)
    {
        string[] codes = [.. label.HazardStatements.Concat(label.Supplemental).Concat(label.Precautionary).Select(s => s.Code).Where(c => c.Length > 0)];
        return string.Join(' ', new[] { label.SignalWord }.OfType<string>().Concat(label.Pictograms).Concat(codes));
    }

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
