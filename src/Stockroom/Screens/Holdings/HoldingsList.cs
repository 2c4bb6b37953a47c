using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Holdings;

/// <summary>The containers that the filter lets through, one a row, in as many columns as there is room for.</summary>
internal sealed class HoldingsList(Theme theme) : ListPane(theme)
{
    private const int SignColumns = 2;
    private const int IdColumns = 7;
    private const int AmountColumns = 12;
    private const int LossColumns = 22;
    private const int LossFrom = 100;

    private IReadOnlyList<HoldingRow> _rows = [];

    public override int Count => _rows.Count;

    /// <summary>Whether the keys go to this list; else the hand is elsewhere.</summary>
    public bool HasKeys { get; set; } = true;

    public HoldingRow? ChosenRow => Chosen < 0 ? null : _rows[Chosen];

    /// <summary>Shows other rows; the chosen container stays chosen where it is still among them.</summary>
    public void Load(IReadOnlyList<HoldingRow> rows, string? chosenId)
    {
        _rows = rows;
        int at = 0;
        for (int i = 0; i < rows.Count && chosenId is not null; i++)
        {
            if (!string.Equals(rows[i].Id, chosenId, StringComparison.Ordinal)) continue;
            at = i;
            break;
        }

        Reset(at);
    }

    protected override int HeaderRows => 1;

    protected override Line ComposeHeader(int row, int columns) =>
        Line.Of(" " + Columns("", "id", "content", "holds", "stands in", "loses a year", columns - 1), Tone.Quiet);

    protected override Line ComposeRow(int index, int columns, bool chosen)
    {
        HoldingRow row = _rows[index];
        string text = Columns(row.Sign, row.Id, row.Content, row.Amount, row.Place, row.LossPerYear, columns - 1);
        if (chosen) return Line.Chosen((HasKeys ? Theme.Glyphs.Hand : " ") + text);
        Tone tone = row.Sign switch { "!" => Tone.Danger, "*" => Tone.Notice, "-" => Tone.Warning, _ => Tone.Plain };
        return new Line([new(" ", Tone.Plain), new(text[..SignColumns], tone), new(text[SignColumns..], Tone.Plain)]);
    }

    private string Columns(string sign, string id, string content, string amount, string place, string loss, int columns)
    {
        bool withLoss = columns >= LossFrom;
        int rest = Math.Max(0, columns - SignColumns - IdColumns - AmountColumns - (withLoss ? LossColumns : 0));
        int contentWidth = rest * 45 / 100;
        int placeWidth = rest - contentWidth;
        string cut = Theme.Glyphs.Cut;
        string shownPlace = Theme.Show(TextFit.Clean(place));
        return Cell(sign, SignColumns) + Cell(id, IdColumns) + Cell(content, contentWidth) + Cell(amount, AmountColumns)
            + (withLoss ? Cell(loss, LossColumns) : "")
            + TextFit.Pad(TextFit.CutPath(shownPlace, placeWidth, cut), placeWidth, cut);
    }

    private string Cell(string text, int columns) =>
        columns < 2 ? "" : TextFit.Pad(Theme.Show(TextFit.Clean(text)), columns - 1, Theme.Glyphs.Cut) + " ";
}
