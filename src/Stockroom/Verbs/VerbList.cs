namespace Stockroom.Verbs;

/// <summary>All verbs, in the order in which the help shows them. A new verb is a file beside this one and a line here.</summary>
internal static class VerbList
{
    public static IReadOnlyList<IVerb> All { get; } =
    [
        new DemoVerb(),
        new OpenVerb(),
        new TodayVerb("today", "What is wrong and what is due", wrongToo: true),
        new TodayVerb("rounds", "What is due, oldest first", wrongToo: false),
        new ListVerb(),
        new ShowVerb(),
        new PlacesVerb(),
        new AddVerb(),
        new MoveVerb(),
        new MarkVerb(),
        new WeighVerb(),
        new AttachVerb(),
        new CorrectVerb(),
        new UndoVerb(),
        new LedgerVerb(),
        new PlaceVerb(),
        new FactsVerb(),
        new SubstancesVerb(),
        new ClassifyVerb(),
        new ForecastVerb(),
        WaresVerb.Vessels(),
        WaresVerb.Closures(),
        WaresVerb.Covers(),
        new ResistsVerb(),
        new AmpouleVerb(),
        new PairVerb(),
        new NeighboursVerb(),
        new ArrangeVerb(),
        new LabelVerb(),
        new StocksVerb(),
        new ImportVerb(),
        new SheetVerb(),
        new ExportVerb(),
        new VerifyVerb(),
        new RepairVerb(),
        new BackupVerb(),
        new RestoreVerb(),
        new CompletionsVerb(),
    ];
}
