using Stockroom.Labels.Codes;
using Stockroom.Labels.Designs;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Rules;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Layout;

/// <summary>A label's text, cleaned and cut for setting, once for all the sizes that are tried.</summary>
internal sealed class LabelContent
{
    /// <summary>Stands beside pictograms that are smaller than the law asks.</summary>
    public const string WorkplaceOnly = "Workplace label only.";

    private const string HazardsShort = "Not all hazards are shown: see the full label.";
    private const string PrecautionsShort = "Not all precautions are shown: see the full label.";

    private readonly Dictionary<string, IReadOnlyList<Detail>> _details = new(StringComparer.Ordinal);
    private readonly string[] _remarks;
    private readonly Dictionary<double, QrSymbol?> _codes = [];
    private readonly Dictionary<(Face, int), Paragraph> _joined = [];
    private readonly ParagraphStore _store;
    private readonly double[] _hazardEms;
    private readonly double[] _precautionEms;

    public LabelContent(LabelText text, ParagraphStore store)
    {
        _store = store;
        var clean = new CleanText();
        Id = clean.Of(text.Id ?? QrText.Sample);
        CodeId = text.Id;
        TitleText = clean.Of(text.Title);
        Title = new Paragraph(TitleText, Face.Bold);
        Note = new Paragraph(ChemicalFormula.WithSubscripts(clean.Of(text.TitleNote)), Face.Regular);
        Signal = new Paragraph(clean.Of(text.SignalWord), Face.Bold);
        Pictograms = text.Pictograms;
        Extra = [.. text.Extra.Select(clean.Of).Where(e => e.Length > 0)];
        Hazards = Statements(text.HazardStatements, clean, Face.Bold, store);
        Precautions = Statements(text.PrecautionaryStatements, clean, Face.Regular, store);
        _hazardEms = SumsEm(Hazards);
        _precautionEms = SumsEm(Precautions);
        HazardCodes = [.. text.HazardStatements.Select(s => s.Code)];
        PrecautionCodes = [.. text.PrecautionaryStatements.Select(s => s.Code)];
        Details = [.. text.Details.Select(d => new Detail(clean.Of(d.Label), clean.Of(d.Value), d.Part)).Where(d => d.Value.Length > 0)];
        Footnotes = [.. text.Footnotes.Select(clean.Of).Where(f => f.Length > 0)];
        CodeWords = QrText.Words(TitleText, Extra, text.SignalWord, text.HazardStatements.FirstOrDefault().Text);
        Demands = text.Demands;
        _remarks = [.. text.Remarks.Select(clean.Of).Where(r => r.Length > 0)];
        Notes = [.. clean.Notes];
    }

    public LabelDemands Demands { get; }

    public string Id { get; }

    /// <summary>The id inside the code; null for a sample.</summary>
    public string? CodeId { get; }

    public string TitleText { get; }

    public Paragraph Title { get; }

    public Paragraph Note { get; }

    public Paragraph Signal { get; }

    public IReadOnlyList<string> Pictograms { get; }

    public IReadOnlyList<string> Extra { get; }

    public IReadOnlyList<Paragraph> Hazards { get; }

    public IReadOnlyList<Paragraph> Precautions { get; }

    public IReadOnlyList<string> HazardCodes { get; }

    public IReadOnlyList<string> PrecautionCodes { get; }

    public IReadOnlyList<Detail> Details { get; }

    public IReadOnlyList<string> Footnotes { get; }

    public bool HasHazards => Pictograms.Count + Hazards.Count + Precautions.Count > 0 || !Signal.IsEmpty;

    /// <summary>Plain words for the code, richest first.</summary>
    public IReadOnlyList<string> CodeWords { get; }

    public IReadOnlyList<string> Notes { get; }

    /// <summary>The particulars that a design shows, in its order of priority.</summary>
    public IReadOnlyList<Detail> DetailsBy(Design design)
    {
        if (!_details.TryGetValue(design.Name, out var details))
        {
            var ranked = design.Always.Concat(design.Priority).ToList();
            _details[design.Name] = details = [.. Details.Where(d => design.Foot.Contains(d.Part)).OrderBy(d => ranked.IndexOf(d.Part))];
        }

        return details;
    }

    /// <summary>Area that pictograms and statements cover at the least: a plan that asks for more than the label has is not worth trying.</summary>
    public double LeastAreaMm2(Plan plan, LabelStock stock)
    {
        var ems = _hazardEms[plan.Portion.Hazards] + _precautionEms[plan.Portion.Precautions];
        var side = stock.Frames.Count > 0 ? stock.Frames[0].SideMm : plan.PictogramSideMm;
        var pictograms = plan.Portion.Pictograms * side * side;
        return (ems * plan.StatementMm * plan.StatementMm * FlowArea.LineSpacing) + pictograms;
    }

    /// <summary>The code for a square of this size, built once.</summary>
    public QrSymbol? CodeFor(double edgeMm)
    {
        if (!_codes.TryGetValue(edgeMm, out var code))
        {
            _codes[edgeMm] = code = QrSymbol.Fit(CodeId, CodeWords, edgeMm);
        }

        return code;
    }

    /// <summary>
    /// What a label must say about itself: that it leaves out a hazard or what to do about it, so that no one takes it for the whole;
    /// that its pictograms are marks; and what the edition wants said. Null where there is nothing to say.
    /// </summary>
    public Paragraph? Remark(Portion portion)
    {
        var remarks = Remarks(portion);
        return remarks.Count == 0 ? null : _store.Of(string.Join(' ', remarks), Face.Bold);
    }

    /// <summary>The remarks a mark of identity has room for: not that hazards are left off, which its user knows.</summary>
    public IReadOnlyList<string> MarkRemarks(Portion portion) => IsMarked(portion) ? [.. _remarks, WorkplaceOnly] : _remarks;

    private List<string> Remarks(Portion portion)
    {
        var remarks = new List<string>(MarkRemarks(portion));
        if (portion.Pictograms < Pictograms.Count || portion.Hazards < Hazards.Count || portion.Extra < Extra.Count)
        {
            remarks.Add(HazardsShort);
        }
        else if (portion.Precautions < Precautions.Count)
        {
            remarks.Add(PrecautionsShort);
        }

        return remarks;
    }

    /// <summary>True where pictograms stand there that are smaller than the edition asks.</summary>
    public bool IsMarked(Portion portion) => portion is { Marks: true, Pictograms: > 0 } && Demands.PictogramSideMm > Legibility.SmallestPictogramSideMm;

    /// <summary>The name, cut to a number of characters where need be.</summary>
    public Paragraph Name(int length) => length >= TitleText.Length
        ? Title
        : new Paragraph(TitleText[..(char.IsHighSurrogate(TitleText[length - 1]) ? length - 1 : length)].TrimEnd() + "…", Face.Bold);

    /// <summary>The first statements of a list, each by itself or all as one paragraph.</summary>
    public IReadOnlyList<Paragraph> Some(IReadOnlyList<Paragraph> statements, int count, bool runIn)
    {
        if (!runIn || count < 2)
        {
            return count == statements.Count ? statements : [.. statements.Take(count)];
        }

        var key = (statements[0].Face, count);
        if (!_joined.TryGetValue(key, out var joined))
        {
            _joined[key] = joined = _store.Of(string.Join(' ', statements.Take(count).Select(p => Ended(p.Text))), statements[0].Face);
        }

        return [joined];
    }

    private static string Ended(string text) => char.IsLetterOrDigit(text[^1]) || text[^1] == ')' ? text + "." : text;

    private static Paragraph[] Statements(IReadOnlyList<Statement> statements, CleanText clean, Face face, ParagraphStore store) =>
        [.. statements.Select(s => store.Of(clean.Of(s.Text), face)).Where(p => !p.IsEmpty)];

    /// <summary>Widths of the first 0, 1, 2 ... paragraphs together.</summary>
    private static double[] SumsEm(IReadOnlyList<Paragraph> paragraphs)
    {
        var sums = new double[paragraphs.Count + 1];
        for (var i = 0; i < paragraphs.Count; i++)
        {
            sums[i + 1] = sums[i] + paragraphs[i].WidthEm;
        }

        return sums;
    }
}
