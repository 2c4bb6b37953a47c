using Stockroom.Labels.Codes;
using Stockroom.Labels.Designs;

namespace Stockroom.Labels.Layout;

/// <summary>What is left off first where a label is too small, in the order of its design, and how it is called.</summary>
internal static class Portions
{
    private const int ShortestName = 12;

    /// <summary>All that the design has a place for; then ever less, from the end of its order of priority.</summary>
    public static IEnumerable<Portion> Shrinking(LabelContent content, Design design)
    {
        var portion = All(content, design);
        yield return portion;
        foreach (var part in design.Priority.Reverse())
        {
            foreach (var less in Without(part, portion, content, design))
            {
                portion = less;
                yield return portion;
            }
        }
    }

    /// <summary>What the law or the house requires, at full size, and nothing else.</summary>
    public static Portion RequiredOnly(LabelContent content, Design design) => All(content, design) with { Details = 0, Footnotes = 0 };

    private static Portion All(LabelContent content, Design design) => new()
    {
        Pictograms = design.Shows(LabelPart.Pictograms) ? content.Pictograms.Count : 0,
        Marks = design.Layout == DesignLayout.Mark,
        Hazards = design.Shows(LabelPart.HazardStatements) ? content.Hazards.Count : 0,
        Precautions = design.Shows(LabelPart.PrecautionaryStatements) ? content.Precautions.Count : 0,
        Details = content.DetailsBy(design).Count,
        Footnotes = design.Shows(LabelPart.SmallPrint) ? content.Footnotes.Count : 0,
        Note = design.Shows(LabelPart.Formula),
        NameLength = content.TitleText.Length,
        Extra = design.Shows(LabelPart.Warnings) ? content.Extra.Count : 0,
        Signal = design.Shows(LabelPart.SignalWord),
        Code = true,
    };

    private static IEnumerable<Portion> Without(LabelPart part, Portion p, LabelContent content, Design design)
    {
        switch (part)
        {
            case LabelPart.RestOfName:
                while (p.NameLength > ShortestName)
                {
                    yield return p = p with { NameLength = Math.Max(ShortestName, p.NameLength * 3 / 4) };
                }

                break;
            case LabelPart.Name:
                yield return p with { NameLength = 0 };
                break;
            case LabelPart.Code:
                yield return p with { Code = false };
                break;
            case LabelPart.Formula when p.Note && !content.Note.IsEmpty:
                yield return p with { Note = false };
                break;
            case LabelPart.SignalWord when p.Signal && !content.Signal.IsEmpty:
                yield return p with { Signal = false };
                break;
            case LabelPart.SmallPrint when p.Footnotes > 0:
                yield return p with { Footnotes = 0 };
                break;
            case LabelPart.Pictograms:
                // Too small for the law, they are still a mark that warns.
                if (p.Pictograms > 0 && !p.Marks && content.Demands.PictogramSideMm > design.Sizes.Pictograms.LeastMm)
                {
                    yield return p = p with { Marks = true };
                }

                foreach (var count in Down(p.Pictograms))
                {
                    yield return p with { Pictograms = count };
                }

                break;
            case LabelPart.Warnings:
                foreach (var count in Down(p.Extra))
                {
                    yield return p with { Extra = count };
                }

                break;
            case LabelPart.HazardStatements:
                foreach (var count in Down(p.Hazards))
                {
                    yield return p with { Hazards = count };
                }

                break;
            case LabelPart.PrecautionaryStatements:
                foreach (var count in Down(p.Precautions))
                {
                    yield return p with { Precautions = count };
                }

                break;
            default:
                // Particulars stand in the order of priority, so that the last ones are of this kind.
                var details = content.DetailsBy(design);
                for (var count = p.Details - 1; count >= 0 && details[count].Part == part; count--)
                {
                    yield return p with { Details = count };
                }

                break;
        }
    }

    private static IEnumerable<int> Down(int from) => Enumerable.Range(0, from).Reverse();

    public static IEnumerable<LeftOff> LeftOff(LabelContent content, Design design, Portion portion, QrSymbol? code)
    {
        if (code is null)
        {
            yield return new LeftOff("the QR code", Required: false);
        }

        if (portion.NameLength < content.TitleText.Length)
        {
            var part = portion.NameLength == 0 ? "the name" : "the end of the name";
            yield return new LeftOff($"{part} '{content.TitleText}'", Required: true);
        }

        if (!portion.Signal && !content.Signal.IsEmpty)
        {
            yield return new LeftOff($"signal word {content.Signal.Text}", Required: true);
        }

        foreach (var extra in content.Extra.Skip(portion.Extra))
        {
            yield return new LeftOff($"'{extra}'", Required: true);
        }

        foreach (var pictogram in content.Pictograms.Except(PictogramChoice.Worst(content.Pictograms, portion.Pictograms)))
        {
            yield return new LeftOff($"pictogram {pictogram}", Required: true);
        }

        if (!portion.Note && !content.Note.IsEmpty)
        {
            yield return new LeftOff($"'{content.Note.Text}'", Required: true);
        }

        foreach (var statement in content.HazardCodes.Skip(portion.Hazards))
        {
            yield return new LeftOff($"hazard statement {statement}", Required: true);
        }

        foreach (var statement in content.PrecautionCodes.Skip(portion.Precautions))
        {
            yield return new LeftOff($"precautionary statement {statement}", Required: true);
        }

        var shown = content.DetailsBy(design).Take(portion.Details).ToList();
        foreach (var detail in content.Details.Where(d => !shown.Contains(d)))
        {
            yield return new LeftOff(detail.Label.Length > 0 ? detail.Label : detail.Value, Required: false);
        }

        foreach (var footnote in content.Footnotes.Skip(portion.Footnotes))
        {
            yield return new LeftOff($"small print '{footnote}'", Required: false);
        }
    }
}
