namespace Stockroom.Book.Places;

/// <summary>What sort of place it is, in the trade's words; each stands on one level.</summary>
public sealed class PlaceKind
{
    public static readonly PlaceKind Room = new("room", PlaceLevel.Room);
    public static readonly PlaceKind Cabinet = new("cabinet", PlaceLevel.Cabinet);
    public static readonly PlaceKind OpenShelf = new("open shelf", PlaceLevel.Cabinet);
    public static readonly PlaceKind FireCabinet = new("fire cabinet", PlaceLevel.Cabinet);
    public static readonly PlaceKind AcidCabinet = new("acid cabinet", PlaceLevel.Cabinet);
    public static readonly PlaceKind VentilatedCabinet = new("ventilated cabinet", PlaceLevel.Cabinet);
    public static readonly PlaceKind PoisonCabinet = new("poison cabinet", PlaceLevel.Cabinet);
    public static readonly PlaceKind Refrigerator = new("refrigerator", PlaceLevel.Cabinet);
    public static readonly PlaceKind DisplayCase = new("display case", PlaceLevel.Cabinet);
    public static readonly PlaceKind Shelf = new("shelf", PlaceLevel.Shelf);
    public static readonly PlaceKind Tray = new("tray", PlaceLevel.Tray);

    private PlaceKind(string word, PlaceLevel level)
    {
        Word = word;
        Level = level;
    }

    public static IReadOnlyList<PlaceKind> All { get; } =
        [Room, Cabinet, OpenShelf, FireCabinet, AcidCabinet, VentilatedCabinet, PoisonCabinet, Refrigerator, DisplayCase, Shelf, Tray];

    public string Word { get; }

    public PlaceLevel Level { get; }

    /// <summary>Reads a word in any case.</summary>
    /// <exception cref="BookRefusal">No kind has that word.</exception>
    public static PlaceKind Parse(string word) =>
        All.FirstOrDefault(k => string.Equals(k.Word, word.Trim(), StringComparison.OrdinalIgnoreCase))
        ?? throw new BookRefusal($"'{word}' is not a kind of place; it is one of: {string.Join(", ", All.Select(k => k.Word))}");

    public override string ToString() => Word;
}
