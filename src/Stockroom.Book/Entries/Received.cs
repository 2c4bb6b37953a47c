using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Entries;

/// <summary>A container came into the book.</summary>
public sealed record Received : Entry
{
    public const string Word = "received";

    public override string Kind => Word;

    /// <summary>As the catalogue resolved it; for an orphan what the keeper calls it ("unknown corrosive liquid").</summary>
    public required string Content { get; init; }

    /// <summary>Composition of a home-made mixture as it is on this day; null where the catalogue knows the content by name.</summary>
    public IReadOnlyList<PartShare>? Parts { get; init; }

    /// <summary>State of an orphan or a home-made mixture.</summary>
    public MatterState? State { get; init; }

    public bool IsOrphan { get; init; }

    public string? Seen { get; init; }

    public string? FoundBy { get; init; }

    public required Lot Lot { get; init; }

    public string? Vessel { get; init; }

    public string? Closure { get; init; }

    public string? Cover { get; init; }

    public decimal? CoverDepthMillimetres { get; init; }

    public string? Packing { get; init; }

    /// <summary>Id of the place it was put.</summary>
    public required string To { get; init; }

    /// <summary>As typed: "20 mL", "about half full".</summary>
    public string? Quantity { get; init; }

    /// <summary>The mass booked in g; null if unknown; 0 only for an empty container about to be decanted into.</summary>
    public decimal? NetGrams { get; init; }

    public BookedDensity? Density { get; init; }

    public decimal? TareGrams { get; init; }

    public decimal? GrossGrams { get; init; }

    internal override bool IsFirstOfItsSubject => true;

    internal static Received Read(EntryReader r) => new()
    {
        Content = r.Text("content"),
        Parts = r.List("parts", PartShare.Read),
        State = r.TextOrNull("state") is { } state ? MatterWords.Parse(state) : null,
        IsOrphan = r.Flag("orphan"),
        Seen = r.TextOrNull("seen"),
        FoundBy = r.TextOrNull("found_by"),
        Lot = r.Nested("lot", Lot.Read) ?? throw new FormatException("'lot' is missing"),
        Vessel = r.TextOrNull("vessel"),
        Closure = r.TextOrNull("closure"),
        Cover = r.TextOrNull("cover"),
        CoverDepthMillimetres = r.NumberOrNull("depth_mm"),
        Packing = r.TextOrNull("packing"),
        To = r.Text("to"),
        Quantity = r.TextOrNull("quantity"),
        NetGrams = r.NumberOrNull("net_g"),
        Density = r.Nested("density", BookedDensity.Read),
        TareGrams = r.NumberOrNull("tare_g"),
        GrossGrams = r.NumberOrNull("gross_g"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("content", Content);
        w.List("parts", Parts, (p, inner) => p.Write(inner));
        w.Text("state", State is { } state ? MatterWords.Of(state) : null);
        w.Flag("orphan", IsOrphan);
        w.Text("seen", Seen);
        w.Text("found_by", FoundBy);
        w.Nested("lot", Lot, (l, inner) => l.Write(inner));
        w.Text("vessel", Vessel);
        w.Text("closure", Closure);
        w.Text("cover", Cover);
        w.Number("depth_mm", CoverDepthMillimetres);
        w.Text("packing", Packing);
        w.Text("to", To);
        w.Text("quantity", Quantity);
        w.Number("net_g", NetGrams);
        w.Nested("density", Density, (d, inner) => d.Write(inner));
        w.Number("tare_g", TareGrams);
        w.Number("gross_g", GrossGrams);
    }

    internal override void Check(BookState state)
    {
        if (Container is null)
            throw new BookRefusal($"receiving '{Content}' needs a container id");
        if (state.Containers.ContainsKey(Container))
            throw new BookRefusal($"{Container} is already in the book");
        if (string.IsNullOrWhiteSpace(Content))
            throw new BookRefusal($"{Container} needs a content; an unknown one is booked as an orphan");
        if (IsOrphan && string.IsNullOrWhiteSpace(Seen))
            throw new BookRefusal($"{Container} is an orphan: say what is to be seen on it");
        state.PlaceCalled(To);
        CheckParts();
        if (NetGrams == 0 && Lot.How != LotOrigin.Split)
            throw new BookRefusal($"{Container}: a net mass of 0 g is nothing to receive; it must be above 0 g, or left out if unknown");
        Limits.Mass($"{Container}: a net mass", NetGrams == 0 ? null : NetGrams);
        Limits.Mass($"{Container}: a tare", TareGrams);
        Limits.Mass($"{Container}: a gross mass", GrossGrams);
        Limits.Mass($"{Container}: a density in g/mL, as", Density?.GramsPerMillilitre);
        if (GrossGrams < TareGrams)
            throw new BookRefusal($"{Container}: gross {GrossGrams} g is less than tare {TareGrams} g");
        Limits.Depth(Container, CoverDepthMillimetres);
        if (CoverDepthMillimetres is not null && Cover is null)
            throw new BookRefusal($"{Container}: a cover of {CoverDepthMillimetres} mm needs a name");
        if (Lot.MadeOn > HappenedOn)
            throw new BookRefusal($"{Container}: made on {Lot.MadeOn:yyyy-MM-dd} is after it was received on {HappenedOn:yyyy-MM-dd}");
        Limits.NotTooOld($"{Container}: made on", Lot.MadeOn);
    }

    internal override BookState Apply(BookState state) => state.WithContainer(
        new Container
        {
            Id = Container!,
            ContentName = Content,
            Parts = Parts,
            State = State,
            IsOrphan = IsOrphan,
            Seen = Seen,
            FoundBy = FoundBy,
            Lot = Lot,
            Vessel = Vessel,
            Closure = Closure,
            Cover = Cover is null ? null : new Cover(Cover, CoverDepthMillimetres, HappenedOn, HappenedOn),
            CoverDepths = Cover is not null && CoverDepthMillimetres is { } depth ? [new CoverDepth(Number, HappenedOn, depth)] : [],
            Packing = Packing,
            PlaceId = To,
            Quantity = Quantity,
            NetGrams = NetGrams,
            Density = Density,
            TareGrams = TareGrams,
            LastGrossGrams = GrossGrams,
            ReceivedOn = HappenedOn,
        },
        this);

    private void CheckParts()
    {
        if (Parts is null)
            return;
        if (IsOrphan || Parts.Count == 0)
            throw new BookRefusal($"{Container}: an orphan has no known parts, and a mixture has at least one");
        if (Parts.FirstOrDefault(p => p.Percent is <= 0 or > 100 || string.IsNullOrWhiteSpace(p.Substance)) is { } part)
            throw new BookRefusal($"{Container}: '{part.Substance}' at {part.Percent} % by mass cannot be; a part has a name and more than 0, at most 100 %");
        if (Parts.Sum(p => p.Percent) > 100.5m)
            throw new BookRefusal($"{Container}: the parts sum to {Parts.Sum(p => p.Percent)} % by mass, more than 100 %");
    }
}
