using Stockroom.Assessment.Neighbours;
using Stockroom.Book.Places;

namespace Stockroom.Assessment.Arrangement;

/// <summary>What stands, where it could stand, and what each place can take: all that an arrangement is made from.</summary>
/// <param name="Things">The containers.</param>
/// <param name="Spots">Every place something stands in or could be put in.</param>
/// <param name="Limits">What places can take. A place without a line here is not limited.</param>
public sealed record Shelving(IReadOnlyList<Thing> Things, IReadOnlyList<Spot> Spots, IReadOnlyList<SpotLimit> Limits);

/// <summary>One container, as far as its place matters.</summary>
/// <param name="Key">The container's id.</param>
/// <param name="Label">What the keeper calls it.</param>
/// <param name="Profile">What its content is to neighbours.</param>
public sealed record Thing(string Key, string Label, ContactProfile Profile)
{
    /// <summary>Id of the spot it stands in; null where it has no place yet.</summary>
    public string? Spot { get; init; }

    /// <summary>True for a flame-sealed ampoule: it breathes nothing out and lets nothing in.</summary>
    public bool IsFlameSealed { get; init; }

    /// <summary>Why the keeper wants it where it is; null where it may be moved.</summary>
    public string? Pinned { get; init; }

    /// <summary>Why nobody may touch it; null where it may be handled.</summary>
    public string? HandsOff { get; init; }

    /// <summary>True in outer packing that holds what leaks: it stands as in a tray of its own.</summary>
    public bool IsInOwnPacking { get; init; }

    /// <summary>What speaks against spots whatever stands near, by the spot's id; a spot without a line here is not spoken against.</summary>
    public IReadOnlyDictionary<string, Ban> Bans { get; init; } = Ban.None;

    public Burden Burden { get; init; } = Burden.OfOne;

    /// <summary>True where it stays, whatever else is moved.</summary>
    public bool Stays => Pinned is not null || HandsOff is not null;

    public override string ToString() => $"{Key} {Label}";
}

/// <summary>Why a thing does not belong in a spot.</summary>
/// <param name="Because">In a few words.</param>
/// <param name="MustLeave">True where it may not stay there either; false where it is only not sent there.</param>
public sealed record Ban(string Because, bool MustLeave)
{
    public static readonly IReadOnlyDictionary<string, Ban> None = new Dictionary<string, Ban>(StringComparer.Ordinal);
}

/// <summary>A place of the lowest level at which something is put down.</summary>
/// <param name="Id">The place's id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Path">Its name with what it stands in, room first.</param>
/// <param name="Stand">Where it stands.</param>
public sealed record Spot(string Id, string Name, string Path, Stand Stand)
{
    /// <summary>Kind of the cabinet it belongs to; null in the open room.</summary>
    public PlaceKind? Kind { get; init; }

    /// <summary>Height above the floor in m; null where not known.</summary>
    public decimal? HeightMetres { get; init; }

    /// <summary>False where things may stand but none is sent: the open room, or a cabinet that has shelves.</summary>
    public bool IsOffered { get; init; } = true;

    /// <summary>Ids of the places whose limits count for it: itself and all that it stands in.</summary>
    public IReadOnlyList<string> Within { get; init; } = [];

    public override string ToString() => Path;
}

/// <summary>What a place can take of.</summary>
public enum Measure
{
    Containers = 0,

    /// <summary>Load, in mg.</summary>
    Milligrams,

    /// <summary>Liquid, in uL.</summary>
    Microlitres,

    /// <summary>Flammable liquid, in uL.</summary>
    FlammableMicrolitres,
}

/// <summary>The most that a place and all that stands in it can take of one measure, in the measure's unit.</summary>
public sealed record SpotLimit(string Place, string PlaceName, Measure Measure, long Most)
{
    /// <summary>True where the keeper has said nothing and a published or customary limit stands in.</summary>
    public bool IsCustomary { get; init; }
}

/// <summary>What a container takes of a place's limits. What is not known counts as nothing and is told.</summary>
/// <param name="Milligrams">Known mass in mg; null where not known.</param>
/// <param name="Microlitres">Liquid in uL; null where not known, 0 for a solid.</param>
/// <param name="FlammableMicrolitres">Flammable liquid in uL; null where not known, 0 for what is not flammable.</param>
public sealed record Burden(long? Milligrams, long? Microlitres, long? FlammableMicrolitres)
{
    /// <summary>One container of which no weight or volume is known.</summary>
    public static readonly Burden OfOne = new(null, null, null);

    public long? Of(Measure measure) => measure switch
    {
        Measure.Containers => 1,
        Measure.Milligrams => Milligrams,
        Measure.Microlitres => Microlitres,
        _ => FlammableMicrolitres,
    };
}
