using Stockroom.Book.Encoding;
using Stockroom.Book.Places;

namespace Stockroom.Book.Entries;

/// <summary>A room, cabinet, shelf or tray was set up. Places hold for all time: one set up today may stand in a receipt of last year.</summary>
public sealed record PlaceMade : Entry
{
    public const string Word = "place made";

    public override string Kind => Word;

    public required string Name { get; init; }

    public required PlaceKind PlaceKind { get; init; }

    /// <summary>Id of the place it stands in; null for a room.</summary>
    public string? Inside { get; init; }

    public PlaceLimits Limits { get; init; } = PlaceLimits.Unknown;

    internal override bool IsFirstOfItsSubject => true;

    internal static PlaceMade Read(EntryReader r) => new()
    {
        Name = r.Text("name"),
        PlaceKind = PlaceKind.Parse(r.Text("place_kind")),
        Inside = r.TextOrNull("inside"),
        Limits = PlaceLimitsFields.Read(r),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("name", Name);
        w.Text("place_kind", PlaceKind.Word);
        w.Text("inside", Inside);
        PlaceLimitsFields.Write(Limits, w);
    }

    internal override void Check(BookState state)
    {
        PlaceIds.Check(Place);
        if (state.Places.ContainsKey(Place!))
            throw new BookRefusal($"there is already a place '{Place}'");
        if (string.IsNullOrWhiteSpace(Name))
            throw new BookRefusal($"the place '{Place}' needs a name");
        state.CheckNesting(PlaceKind, Inside, Name);
        Limits.Check();
    }

    internal override BookState Apply(BookState state) => state.WithPlace(new Place
    {
        Id = Place!,
        Name = Name,
        Kind = PlaceKind,
        Inside = Inside,
        Limits = Limits,
        Note = Note,
    });
}
