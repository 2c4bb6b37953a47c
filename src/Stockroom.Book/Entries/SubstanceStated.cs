using Stockroom.Book.Encoding;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Entries;

/// <summary>The keeper stated a substance, or corrected one of the catalogue; the latest statement of a name holds.</summary>
public sealed record SubstanceStated : Entry
{
    public const string Word = "substance stated";

    public override string Kind => Word;

    public required string Name { get; init; }

    public string? Formula { get; init; }

    public string? Cas { get; init; }

    /// <summary>solid, liquid, gas or unknown.</summary>
    public required string State { get; init; }

    /// <summary>Other names, parted by semicolons.</summary>
    public string? Synonyms { get; init; }

    /// <summary>"Flam. Liq. 2 H225; EUH066", "none", or null where nothing is known.</summary>
    public string? Hazards { get; init; }

    public required string Source { get; init; }

    /// <summary>Date or edition that the source was good for.</summary>
    public required string AsOf { get; init; }

    /// <summary>The entry of a substance as stated.</summary>
    public static SubstanceStated Of(OwnSubstanceWords words) => new()
    {
        Name = words.Name,
        Formula = words.Formula,
        Cas = words.Cas,
        State = words.State,
        Synonyms = words.Synonyms,
        Hazards = words.Hazards,
        Source = words.Source,
        AsOf = words.AsOf,
    };

    internal static SubstanceStated Read(EntryReader r) => new()
    {
        Name = r.Text("name"),
        Formula = r.TextOrNull("formula"),
        Cas = r.TextOrNull("cas"),
        State = r.Text("state"),
        Synonyms = r.TextOrNull("synonyms"),
        Hazards = r.TextOrNull("hazards"),
        Source = r.Text("source"),
        AsOf = r.Text("as_of"),
    };

    internal override void Write(EntryWriter w)
    {
        w.Text("name", Name);
        w.Text("formula", Formula);
        w.Text("cas", Cas);
        w.Text("state", State);
        w.Text("synonyms", Synonyms);
        w.Text("hazards", Hazards);
        w.Text("source", Source);
        w.Text("as_of", AsOf);
    }

    internal override void Check(BookState state) => _ = Make();

    internal override BookState Apply(BookState state) => state.WithOwn(Make());

    private OwnSubstance Make() => OwnSubstance.TryMake(new OwnSubstanceWords(Name, Formula, Cas, State, Synonyms, Hazards, Source, AsOf), out var own, out var column, out var problem)
        ? own
        : throw new BookRefusal($"the substance '{Name}' cannot be stated so: {column} {problem}");
}
