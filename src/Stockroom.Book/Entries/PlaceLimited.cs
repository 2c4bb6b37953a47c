using Stockroom.Book.Encoding;
using Stockroom.Book.Places;

namespace Stockroom.Book.Entries;

/// <summary>More was said of a place: another name or kind, its height, temperatures, what it can carry. What is null stays as it was.</summary>
public sealed record PlaceLimited : Entry
{
    public const string Word = "place limited";

    public override string Kind => Word;

    public string? Name { get; init; }

    public PlaceKind? PlaceKind { get; init; }

    public PlaceLimits Limits { get; init; } = PlaceLimits.Unknown;

    internal static PlaceLimited Read(EntryReader r) => new()
    {
        Name = r.TextOrNull("name"),
        PlaceKind = r.TextOrNull("place_kind") is { } kind ? PlaceKind.Parse(kind) : null,
        Limits = PlaceLimitsFields.Read(r),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("name", Name);
        w.Text("place_kind", PlaceKind?.Word);
        PlaceLimitsFields.Write(Limits, w);
    }

    internal override void Check(BookState state)
    {
        var place = state.PlaceCalled(Place);
        if (PlaceKind is { } kind)
        {
            state.CheckNesting(kind, place.Inside, place.Name);
            if (state.Places.Values.FirstOrDefault(p => p.Inside == place.Id && p.Level <= kind.Level) is { } inner)
                throw new BookRefusal($"'{place.Name}' cannot become a {kind}: '{inner.Name}', a {inner.Kind}, stands in it");
        }

        if (Name is not null && string.IsNullOrWhiteSpace(Name))
            throw new BookRefusal($"the place '{Place}' needs a name");
        place.Limits.With(Limits).Check();
    }

    internal override BookState Apply(BookState state)
    {
        var place = state.PlaceCalled(Place);
        return state.WithPlace(place with
        {
            Name = Name ?? place.Name,
            Kind = PlaceKind ?? place.Kind,
            Limits = place.Limits.With(Limits),
            Note = Note ?? place.Note,
            LastDay = HappenedOn,
        });
    }
}
