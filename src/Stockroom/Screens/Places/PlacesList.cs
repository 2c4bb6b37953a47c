using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Places;

/// <summary>The tree of places, one row a place or a container.</summary>
internal sealed class PlacesList(Theme theme) : ListPane(theme)
{
    public PlaceTree Tree { get; } = new();

    public override int Count => Tree.Rows.Count;

    public TreeRow? ChosenRow => Chosen < 0 ? null : Tree.Rows[Chosen];

    public void Load(IReadOnlyList<PlaceNode> top)
    {
        string? key = ChosenRow?.Key;
        Tree.Load(top);
        ChooseKey(key);
    }

    public void SetOpen(PlaceNode place, bool open)
    {
        string? key = ChosenRow?.Key;
        Tree.SetOpen(place, open);
        ChooseKey(key);
    }

    protected override Line ComposeRow(int index, int columns, bool chosen)
    {
        TreeRow row = Tree.Rows[index];
        string hand = chosen ? Theme.Glyphs.Hand : " ";
        string indent = new(' ', row.Depth * 2);
        (string sign, string left, string right, Tone tone) = row.Place is { } place ? OfPlace(place) : OfContainer(row.Container!);
        int room = columns - 1 - indent.Length - 2 - 1;
        string shownRight = TextFit.Cut(Theme.Show(TextFit.Clean(right)), room * 3 / 5, Theme.Glyphs.Cut);
        string shownLeft = TextFit.Pad(Theme.Show(TextFit.Clean(left)), room - TextFit.Columns(shownRight) - 2, Theme.Glyphs.Cut);
        if (chosen) return Line.Chosen($"{hand}{indent}{sign} {shownLeft}  {shownRight}");
        return new Line([new($"{hand}{indent}", Tone.Plain), new(sign + " ", tone), new(shownLeft, Tone.Plain), new("  " + shownRight, Tone.Quiet)]);
    }

    private (string Sign, string Left, string Right, Tone Tone) OfPlace(PlaceNode place)
    {
        string sign = !PlaceTree.CanOpen(place) ? " " : Tree.IsOpen(place) ? Theme.Glyphs.Open : Theme.Glyphs.Shut;
        string left = place.Name.Contains(place.Kind, StringComparison.OrdinalIgnoreCase) ? place.Name : $"{place.Name}, {place.Kind}";
        return (sign, left, place.Note, Tone.Plain);
    }

    private static (string Sign, string Left, string Right, Tone Tone) OfContainer(HoldingRow row)
    {
        Tone tone = row.Sign switch { "!" => Tone.Danger, "*" => Tone.Notice, "-" => Tone.Warning, _ => Tone.Plain };
        string sign = row.Sign.Length == 0 ? " " : row.Sign;
        return (sign, $"{row.Id}  {row.Content}", row.Amount, tone);
    }

    private void ChooseKey(string? key)
    {
        int at = 0;
        for (int i = 0; i < Tree.Rows.Count; i++)
            if (string.Equals(Tree.Rows[i].Key, key, StringComparison.Ordinal)) at = i;
        Reset(at);
    }
}
