using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Layout;
using Stockroom.Verbs;

namespace Stockroom.Desk;

/// <summary>What the label of a container says: its classification's elements and its own particulars. Nobody types a statement.</summary>
internal static class Labelling
{
    private const string UnknownTitle = "Contents unknown";

    public static LabelText Of(Holding holding) => Of(holding, StockFacts.Default, LabelWishes.Usual);

    public static LabelText Of(Holding holding, StockFacts facts, LabelWishes wishes)
    {
        var container = holding.Container;
        var extra = holding.Label.WordsBeside.Where(w => w != UnknownTitle).ToList();
        if (container.HandsOff is not null)
            extra.Insert(0, "HANDS OFF");
        var details = new List<Detail>();
        if (container.NetGrams is not null)
            details.Add(new Detail("Amount", container.Quantity ?? Words.Grams(container.NetGrams), LabelPart.Amount));
        if (holding.Content.IsUnknown)
            details.Add(new Detail("Seen", container.Seen ?? holding.Content.Name, LabelPart.Other));
        if (container.Cover is { } cover)
            details.Add(new Detail("Cover", cover.Name, LabelPart.Cover));
        details.Add(new Detail(Book.Containers.Lot.WordOf(container.Lot.How) switch { "made" => "Made", "found" => "Found", _ => "Received" }, container.ReceivedOn.Iso(), LabelPart.Dates));
        if (container.OpenedOn is { } opened)
            details.Add(new Detail("Opened", opened.Iso(), LabelPart.Dates));
        if (container.SealedOn is { } closed)
            details.Add(new Detail("Sealed", closed.Iso(), LabelPart.Dates));
        details.Add(new Detail("Place", holding.PlaceWords, LabelPart.Place));
        if (container.Lot.Batch is { } batch)
            details.Add(new Detail("Lot", batch, LabelPart.Lot));
        var vessel = container.Vessel is { } name ? facts.Wares.FindVessel(name) : null;
        return Text(container.Id.ToString(), holding.Content, holding.Label, holding.Classification, extra, details, facts, wishes, vessel is null ? null : (decimal)vessel.Volume.Millilitres);
    }

    public static LabelText Sample(Content content, StockFacts facts, LabelWishes wishes)
    {
        var classification = Classifier.Classify(content, facts.Hazards, wishes.Rules);
        var label = LabelElements.Of(classification, facts.Hazards);
        return Text(null, content, label, classification, label.WordsBeside, [], facts, wishes, null);
    }

    private static LabelText Text(
        string? id, Content content, LabelElements label, Classification classification, IReadOnlyList<string> extra, List<Detail> details,
        StockFacts facts, LabelWishes wishes, decimal? vesselMillilitres)
    {
        if (wishes.Keeper is { } keeper)
            details.Add(new Detail("Keeper", keeper, LabelPart.Keeper));
        var text = new LabelText
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
            Remarks = label.Pictograms.Count > 0 ? wishes.FrameRemarks : [],
            Demands = wishes.Demands(vesselMillilitres),
        };
        return text with { Reliefs = LabelReliefs.Of(text, classification, facts.Hazards, wishes, wishes.PackageMillilitres ?? vesselMillilitres) };
    }

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
