using Stockroom.Views;

namespace Stockroom.Screens.Places;

/// <summary>One row of the tree that is in sight.</summary>
/// <param name="Depth">Steps from the top; 0 for a room.</param>
/// <param name="Place">The place; null where the row is a container.</param>
/// <param name="Container">The container; null where the row is a place.</param>
internal sealed record TreeRow(int Depth, PlaceNode? Place, HoldingRow? Container)
{
    public string Key => Place is null ? "container " + Container!.Id : "place " + Place.Id;
}

/// <summary>Which places are open, and the rows that follow from it.</summary>
internal sealed class PlaceTree
{
    private readonly Dictionary<string, bool> _open = new(StringComparer.Ordinal);

    private IReadOnlyList<PlaceNode> _top = [];

    public IReadOnlyList<TreeRow> Rows { get; private set; } = [];

    public void Load(IReadOnlyList<PlaceNode> top)
    {
        _top = top;
        Lay();
    }

    /// <summary>At first a place is open where other places are inside it, and shut where containers stand in it.</summary>
    public bool IsOpen(PlaceNode place) => _open.GetValueOrDefault(place.Id, place.Inside.Count > 0);

    public static bool CanOpen(PlaceNode place) => place.Inside.Count > 0 || place.Containers.Count > 0;

    public void SetOpen(PlaceNode place, bool open)
    {
        _open[place.Id] = open;
        Lay();
    }

    /// <summary>Row of the place that a row stands in; -1 for a room.</summary>
    public int RowOutside(int row)
    {
        for (int i = row - 1; i >= 0; i--)
            if (Rows[i].Depth < Rows[row].Depth) return i;
        return -1;
    }

    private void Lay()
    {
        var rows = new List<TreeRow>();
        foreach (PlaceNode place in _top) Lay(rows, place, 0);
        Rows = rows;
    }

    private void Lay(List<TreeRow> rows, PlaceNode place, int depth)
    {
        rows.Add(new TreeRow(depth, place, null));
        if (!IsOpen(place)) return;
        foreach (PlaceNode inner in place.Inside) Lay(rows, inner, depth + 1);
        foreach (HoldingRow container in place.Containers) rows.Add(new TreeRow(depth + 1, null, container));
    }
}
