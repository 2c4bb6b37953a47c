using Stockroom.Assessment.Neighbours;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Arrangement;

/// <summary>How well a spot suits a content.</summary>
/// <param name="Rank">0 suits; the more, the less; from <see cref="PlaceFit.Never"/> on it is not sent there.</param>
/// <param name="Because">Null where nothing speaks for or against it.</param>
public sealed record Fit(int Rank, string? Because)
{
    /// <summary>True where it may be sent there.</summary>
    public bool IsOffered => Rank < PlaceFit.Never;

    /// <summary>True where it must not stay there either.</summary>
    public bool MustLeave => Rank == PlaceFit.MustNot;
}

/// <summary>Which kinds of places suit what, as the table gives it. Immutable.</summary>
public sealed class PlaceFit
{
    /// <summary>Rank of a spot to which the content is not sent.</summary>
    public const int Never = 99;

    /// <summary>Rank of a spot in which the content must not stand at all.</summary>
    public const int MustNot = 100;

    private const int Good = 0;
    private const int Plain = 2;
    private const int Poor = 5;

    private static readonly Lazy<PlaceFit> Embedded = new(Read);
    private static readonly Fit NothingSaid = new(Plain, null);
    private static readonly Dictionary<string, int> Ranks = new(StringComparer.Ordinal) { ["must not"] = MustNot, ["never"] = Never, ["poor"] = Poor, ["good"] = Good };
    private static readonly Dictionary<string, bool> OpenOnly = new(StringComparer.Ordinal) { ["open"] = true, ["any"] = false };

    private readonly IReadOnlyList<Row> _rows;

    private PlaceFit(IReadOnlyList<Row> rows) => _rows = rows;

    /// <summary>The rules that come with the program.</summary>
    public static PlaceFit Default => Embedded.Value;

    /// <summary>How well a spot suits a thing: what the rules of places say of it first, then what kind of place it is.</summary>
    public Fit Of(Thing thing, Spot spot)
    {
        var byKind = Of(thing.Profile, thing.IsFlameSealed, spot);
        if (byKind.MustLeave || !thing.Bans.TryGetValue(spot.Id, out var ban))
            return byKind;
        return new Fit(ban.MustLeave ? MustNot : Never, ban.Because);
    }

    /// <summary>How well a spot suits a content: the worst that speaks against it, else what speaks for it.</summary>
    public Fit Of(ContactProfile profile, bool isFlameSealed, Spot spot)
    {
        Fit? best = null;
        Fit? worst = null;
        foreach (var row in _rows)
        {
            if (!row.Speaks(profile, isFlameSealed, spot))
                continue;
            if (row.Rank < Plain)
                best ??= new Fit(row.Rank, row.Because);
            else if (worst is null || row.Rank > worst.Rank)
                worst = new Fit(row.Rank, row.Because);
        }

        return worst ?? best ?? NothingSaid;
    }

    private static PlaceFit Read()
    {
        var facts = ContactFacts.Default;
        var rows = EmbeddedTables.Facts("place-fit.tsv", "what", "sealed", "kind", "above_m", "fit", "because", "verified").Rows
            .Select(r => new Row(
                facts.Families.Any(f => f.Key == r.Text("what")) ? r.Text("what") : throw r.Wrong("what", $"'{r.Text("what")}' is not a contact family"),
                r.OneOf("sealed", OpenOnly),
                Kind(r),
                r.DecimalOrNull("above_m"),
                r.OneOf("fit", Ranks),
                r.Text("because")))
            .ToList();
        return new PlaceFit(rows);
    }

    private static PlaceKind? Kind(TableRow row)
    {
        var word = row.Text("kind");
        return word == "any" ? null : PlaceKind.All.FirstOrDefault(k => k.Word == word) ?? throw row.Wrong("kind", $"'{word}' is not a kind of place");
    }

    private sealed record Row(string Family, bool OpenOnly, PlaceKind? Kind, decimal? AboveMetres, int Rank, string Because)
    {
        public bool Speaks(ContactProfile profile, bool isFlameSealed, Spot spot) =>
            (Kind is null || ReferenceEquals(Kind, spot.Kind))
            && (AboveMetres is not { } height || spot.HeightMetres > height)
            && !(OpenOnly && isFlameSealed)
            && profile.Carries(Family);
    }
}
