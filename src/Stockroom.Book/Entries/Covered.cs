using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;

namespace Stockroom.Book.Entries;

/// <summary>What was done about the cover.</summary>
public enum CoverAct
{
    /// <summary>A cover was put on, in the place of any other.</summary>
    PutOn = 0,

    /// <summary>The same cover was topped up; the depth is the one after.</summary>
    ToppedUp,

    /// <summary>Its depth was measured and nothing else done.</summary>
    Measured,

    /// <summary>The cover was taken off.</summary>
    TakenOff,
}

/// <summary>A cover was put on, topped up, measured or taken off.</summary>
public sealed record Covered : ContainerEntry
{
    public const string Word = "covered";

    public override string Kind => Word;

    public required CoverAct Act { get; init; }

    /// <summary>What it is: needed when put on; otherwise the one that is there.</summary>
    public string? Cover { get; init; }

    /// <summary>Depth in mm afterwards; needed when topped up or measured.</summary>
    public decimal? DepthMillimetres { get; init; }

    internal override bool Handles => true;

    public static string WordOf(CoverAct act) => act switch
    {
        CoverAct.PutOn => "put on",
        CoverAct.ToppedUp => "topped up",
        CoverAct.Measured => "measured",
        _ => "taken off",
    };

    internal static Covered Read(EntryReader r) => new()
    {
        Act = ParseAct(r.Text("act")),
        Cover = r.TextOrNull("cover"),
        DepthMillimetres = r.NumberOrNull("depth_mm"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("act", WordOf(Act));
        w.Text("cover", Cover);
        w.Number("depth_mm", DepthMillimetres);
    }

    private protected override void Check(BookState state, Container container)
    {
        Limits.Depth(Container, DepthMillimetres);
        if (Act == CoverAct.PutOn)
        {
            Limits.Words(Container, "the cover's name", Cover);
            return;
        }

        if (container.Cover is not { } there)
            throw new BookRefusal($"{Container} has no cover that could be {WordOf(Act)}; put one on first");
        if (Cover is not null && Cover != there.Name)
            throw new BookRefusal($"{Container} is covered with {there.Name}, not {Cover}; put the other on as a new cover");
        if (Act != CoverAct.TakenOff && DepthMillimetres is null)
            throw new BookRefusal($"{Container}: a cover {WordOf(Act)} needs its depth in mm");
    }

    private protected override Container Change(Container container) => container with
    {
        Cover = Act switch
        {
            CoverAct.PutOn => new Cover(Cover!, DepthMillimetres, HappenedOn, HappenedOn),
            CoverAct.TakenOff => null,
            _ => container.Cover! with { DepthMillimetres = DepthMillimetres, DepthOn = HappenedOn },
        },
        Refittings = Act == CoverAct.Measured
            ? container.Refittings
            : container.Refittings.Add(new Refitting(Number, HappenedOn, Act is CoverAct.PutOn or CoverAct.TakenOff)),
        CoverDepths = (Act, DepthMillimetres) switch
        {
            (CoverAct.TakenOff, _) => [],
            (CoverAct.PutOn, { } depth) => [new CoverDepth(Number, HappenedOn, depth)],
            (CoverAct.PutOn, null) => [],
            (_, { } depth) => container.CoverDepths.Add(new CoverDepth(Number, HappenedOn, depth)),
            _ => container.CoverDepths,
        },
    };

    private static CoverAct ParseAct(string word) =>
        Enum.GetValues<CoverAct>().Where(a => WordOf(a) == word).Select(a => (CoverAct?)a).FirstOrDefault()
        ?? throw new BookRefusal($"'{word}' is not done to a cover; it is put on, topped up, measured or taken off");
}
