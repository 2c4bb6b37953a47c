namespace Stockroom.Views;

/// <summary>A place in the tree of places, with what stands in it.</summary>
/// <param name="Id">Place id as typed in commands.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Kind">Such as "room", "acid cabinet", "shelf", "tray".</param>
/// <param name="Note">Such as "18 to 26 C, 12 containers, 2 wrong".</param>
/// <param name="Inside">Places inside it.</param>
/// <param name="Containers">Containers that stand directly in it.</param>
public sealed record PlaceNode(string Id, string Name, string Kind, string Note, IReadOnlyList<PlaceNode> Inside, IReadOnlyList<HoldingRow> Containers);
