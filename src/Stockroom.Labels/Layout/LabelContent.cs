using Stockroom.Labels.Codes;
using Stockroom.Labels.Fonts;

namespace Stockroom.Labels.Layout;

/// <summary>A label's text, cleaned and cut for setting, once for all the sizes that are tried.</summary>
internal sealed class LabelContent
{
    private static readonly Paragraph HazardsShort = new("Not all hazards are shown: see the full label.", Face.Bold);
    private static readonly Paragraph PrecautionsShort = new("Not all precautions are shown: see the full label.", Face.Bold);

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
        Details = [.. text.Details.Select(d => new Detail(clean.Of(d.Label), clean.Of(d.Value))).Where(d => d.Value.Length > 0)];
        Footnotes = [.. text.Footnotes.Select(clean.Of).Where(f => f.Length > 0)];
        CodeWords = QrText.Words(TitleText, Extra, text.SignalWord, text.HazardStatements.FirstOrDefault().Text);
        Notes = [.. clean.Notes];
    }

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

    /// <summary>Area that pictograms and statements cover at the least: a plan that asks for more than the label has is not worth trying.</summary>
    public double LeastAreaMm2(Plan plan)
    {
        var ems = _hazardEms[plan.Portion.Hazards] + _precautionEms[plan.Portion.Precautions];
        var pictograms = plan.Portion.Pictograms * plan.PictogramSideMm * plan.PictogramSideMm;
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

    /// <summary>Stands on a label that leaves out a hazard or what to do about it, so that no one takes it for the whole; null on a whole one.</summary>
    public Paragraph? Remark(Portion portion)
    {
        if (portion.Pictograms < Pictograms.Count || portion.Hazards < Hazards.Count || portion.Extra < Extra.Count)
        {
            return HazardsShort;
        }

        return portion.Precautions < Precautions.Count ? PrecautionsShort : null;
    }

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
