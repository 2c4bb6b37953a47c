using Stockroom.Labels.Codes;

namespace Stockroom.Labels.Layout;

/// <summary>What is left off first where a label is too small, and how it is called.</summary>
internal static class Portions
{
    private const int ShortestName = 12;

    /// <summary>Everything; then without small print; then without the last particulars, one after another.</summary>
    public static IEnumerable<Portion> OptionalLast(LabelContent content)
    {
        var all = Portion.All(content);
        yield return all;
        if (all.Footnotes > 0)
        {
            all = all with { Footnotes = 0 };
            yield return all;
        }

        for (var details = all.Details - 1; details >= 0; details--)
        {
            yield return all with { Details = details };
        }
    }

    public static Portion RequiredOnly(LabelContent content) => Portion.All(content) with { Details = 0, Footnotes = 0 };

    /// <summary>Ever less of what is required: precautions go first, then hazards, the note, the pictograms, the end of the name.</summary>
    public static IEnumerable<Portion> RequiredLast(LabelContent content)
    {
        var portion = RequiredOnly(content);
        while (portion.Precautions > 0)
        {
            yield return portion = portion with { Precautions = portion.Precautions - 1 };
        }

        while (portion.Hazards > 0)
        {
            yield return portion = portion with { Hazards = portion.Hazards - 1 };
        }

        if (portion.Note)
        {
            yield return portion = portion with { Note = false };
        }

        while (portion.Pictograms > 0)
        {
            yield return portion = portion with { Pictograms = portion.Pictograms - 1 };
        }

        while (portion.NameLength > ShortestName)
        {
            yield return portion = portion with { NameLength = Math.Max(ShortestName, portion.NameLength * 3 / 4) };
        }
    }

    /// <summary>What a mark of identity beside a full label elsewhere carries: id, warnings of the house, signal word and ever less of the name.</summary>
    public static IEnumerable<Portion> Mark(LabelContent content)
    {
        var portion = RequiredOnly(content) with { Pictograms = 0, Hazards = 0, Precautions = 0, Note = false };
        yield return portion;
        while (portion.NameLength > ShortestName)
        {
            yield return portion = portion with { NameLength = Math.Max(ShortestName, portion.NameLength * 3 / 4) };
        }

        yield return portion = portion with { NameLength = 0 };
        while (portion.Extra > 1)
        {
            yield return portion = portion with { Extra = portion.Extra - 1 };
        }

        yield return portion with { Signal = false };
        yield return portion with { Extra = 0, Signal = false };
    }

    public static IEnumerable<LeftOff> LeftOff(LabelContent content, Portion portion, QrSymbol? code)
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

        foreach (var detail in content.Details.Skip(portion.Details))
        {
            yield return new LeftOff(detail.Label, Required: false);
        }

        foreach (var footnote in content.Footnotes.Skip(portion.Footnotes))
        {
            yield return new LeftOff($"small print '{footnote}'", Required: false);
        }
    }
}
