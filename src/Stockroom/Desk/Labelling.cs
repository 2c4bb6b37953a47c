using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Layout;
using Stockroom.Verbs;

namespace Stockroom.Desk;

/// <summary>What the label of a container says: its classification's elements and its own particulars. Nobody types a statement.</summary>
internal static class Labelling
{
    private const string UnknownTitle = "Contents unknown";

    public static LabelText Of(Holding holding)
    {
        var container = holding.Container;
        var extra = holding.Label.WordsBeside.Where(w => w != UnknownTitle).ToList();
        if (container.HandsOff is not null)
            extra.Insert(0, "HANDS OFF");
        var details = new List<Detail>();
        if (container.NetGrams is not null)
            details.Add(new Detail("Amount", container.Quantity ?? Words.Grams(container.NetGrams)));
        if (holding.Content.IsUnknown)
            details.Add(new Detail("Seen", container.Seen ?? holding.Content.Name));
        if (container.Cover is { } cover)
            details.Add(new Detail("Cover", cover.Name));
        details.Add(new Detail(Book.Containers.Lot.WordOf(container.Lot.How) switch { "made" => "Made", "found" => "Found", _ => "Received" }, container.ReceivedOn.Iso()));
        if (container.OpenedOn is { } opened)
            details.Add(new Detail("Opened", opened.Iso()));
        if (container.SealedOn is { } closed)
            details.Add(new Detail("Sealed", closed.Iso()));
        details.Add(new Detail("Place", holding.PlaceWords));
        return Text(container.Id.ToString(), holding.Content, holding.Label, holding.Classification, extra, details);
    }

    public static LabelText Sample(Content content, StockFacts facts, RuleSet rules)
    {
        var classification = Classifier.Classify(content, facts.Hazards, rules);
        var label = LabelElements.Of(classification, facts.Hazards);
        return Text(null, content, label, classification, label.WordsBeside, []);
    }

    private static LabelText Text(
        string? id, Content content, LabelElements label, Classification classification, IReadOnlyList<string> extra, IReadOnlyList<Detail> details) => new()
        {
            Id = id,
            Title = content.IsUnknown ? UnknownTitle : content.Name,
            TitleNote = content.IsUnknown ? content.Name : Composition(content),
            SignalWord = label.SignalWord,
            Pictograms = label.Pictograms,
            HazardStatements = [.. label.HazardStatements.Concat(label.Supplemental).Select(s => new Statement(s.Code, s.Text))],
            PrecautionaryStatements = [.. label.Precautionary.Select(s => new Statement(s.Code, s.Text))],
            Extra = extra,
            Details = details,
            Footnotes = [Footnote(classification)],
        };

    private static string? Composition(Content content) =>
        content.Pure is { } pure
            ? pure.Formula?.Text
            : string.Join(", ", content.Parts.Select(p => $"{p.Substance} {p.Percent:0.##} %"));

    private static string Footnote(Classification classification)
    {
        var edition = classification.Rules switch
        {
            RuleSet.Un => "UN GHS Rev. 10",
            RuleSet.Us => "29 CFR 1910.1200 (2024)",
            _ => "CLP, as of ATP21",
        };
        return classification.IsUnknown ? $"Not classified: contents unknown. {edition}" : edition;
    }
}
