namespace Stockroom.Book.Places;

/// <summary>A place stands inside one of a higher level: tray in shelf in cabinet in room; levels may be left out.</summary>
public enum PlaceLevel
{
    Room = 0,
    Cabinet,
    Shelf,
    Tray,
}
