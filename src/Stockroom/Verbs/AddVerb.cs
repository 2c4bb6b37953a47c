using System.CommandLine;
using System.Globalization;
using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Chemistry.Properties;
using Stockroom.Storage;

namespace Stockroom.Verbs;

internal sealed class AddVerb : IVerb
{
    private readonly Argument<string?> _content = new("CONTENT") { Arity = ArgumentArity.ZeroOrOne, Description = "Name, synonym, formula, CAS number, with a strength where it is a solution; or the word orphan" };
    private readonly Option<string?> _place = new("--place") { Description = "Where it is put: id, name or path of a place", HelpName = "PLACE" };
    private readonly Option<string?> _amount = new("--amount") { Description = "Such as \"20 mL\" or \"3.5 g\"; leave out where it is not known", HelpName = "AMOUNT" };
    private readonly Option<string?> _vessel = new("--vessel") { Description = "See 'stockroom vessels'", HelpName = "VESSEL" };
    private readonly Option<string?> _closure = new("--closure") { Description = "See 'stockroom closures'", HelpName = "CLOSURE" };
    private readonly Option<string?> _cover = new("--cover") { Description = "Such as \"water:40 mm\" or argon; see 'stockroom covers'", HelpName = "COVER[:DEPTH mm]" };
    private readonly Option<string?> _packing = new("--packing") { Description = "Outer packing: capped tube, can with absorbent, bag", HelpName = "TEXT" };
    private readonly Option<string?> _how = new("--how") { Description = "bought (the rule), made or found", HelpName = "HOW" };
    private readonly Option<string?> _origin = new("--origin") { Description = "Where it came from", HelpName = "TEXT" };
    private readonly Option<string?> _mix = new("--mix") { Description = "Composition of a home-made mixture, per cent by mass: \"sodium hydroxide=10%; water=90%\"", HelpName = "PARTS" };
    private readonly Option<string?> _seen = new("--seen") { Description = "What is seen on an orphan", HelpName = "TEXT" };
    private readonly Option<string?> _foundBy = new("--found-by") { Description = "Who found an orphan", HelpName = "NAME" };
    private readonly Option<DateOnly?> _opened = new("--opened") { Description = "The day it was first opened", HelpName = "DATE", CustomParser = Dates.Parse };
    private readonly Option<DateOnly?> _sealed = new("--sealed") { Description = "The day it was sealed", HelpName = "DATE", CustomParser = Dates.Parse };
    private readonly Option<string?> _gross = new("--gross") { Description = "Gross mass on receipt", HelpName = "GRAMS" };
    private readonly Option<string?> _tare = new("--tare") { Description = "Mass of the empty vessel with its closure", HelpName = "GRAMS" };
    private readonly Option<string?> _sealedAt = new("--sealed-at") { Description = "With --sealed: temperature of the gas over it then", HelpName = "C" };
    private readonly Option<string?> _sealedPressure = new("--sealed-pressure") { Description = "With --sealed: absolute pressure of that gas, 0 for a vacuum", HelpName = "BAR" };
    private readonly Option<string?> _least = new("--least-strength") { Description = "Due when the part it is named for falls below so many per cent by mass; else as published", HelpName = "PERCENT" };
    private readonly WritingOptions _options = new();

    public string Name => "add";

    public string Summary => "Book a container that came in";

    public Command Build(Surroundings around)
    {
        var command = new Command(Name, Summary)
        {
            _content, _place, _amount, _vessel, _closure, _cover, _packing, _how, _origin, _mix, _seen, _foundBy, _opened, _sealed, _sealedAt, _sealedPressure, _gross, _tare, _least,
        };
        _options.AddTo(command, lines: true);
        command.SetAction(p => LineMode.Run(command, p, around, _options, (parsed, book) => Add(parsed, book, around)));
        return command;
    }

    private IReadOnlyList<Entry> Add(ParseResult p, StockBook book, Surroundings around)
    {
        var state = book.Ledger.State;
        var place = p.GetValue(_place) ?? throw RefusedException.Words("a place is needed: --place PLACE; 'stockroom places' lists them");
        var id = state.NewId();
        var desk = new IntakeDesk(PropertyFacts.Default, WareCatalogue.Default, state.OwnSubstances.Count > 0 ? state.Catalogue() : null);
        var received = desk.Receive(Request(p, BookAccess.Place(state, place).Id), id, Dates.MomentOf(p.GetValue(_options.On), around.Clock));
        var entries = new List<Entry> { received };
        if (p.GetValue(_opened) is { } opened)
            entries.Add(new Opened { Container = id, HappenedAt = Dates.MomentOf(opened, around.Clock) });
        if (p.GetValue(_sealed) is { } closed)
            entries.Add(Closed(p, id, Dates.MomentOf(closed, around.Clock)));
        else if (p.GetValue(_sealedAt) is not null || p.GetValue(_sealedPressure) is not null)
            throw RefusedException.Words("--sealed-at and --sealed-pressure say how it was sealed: give --sealed DATE too");
        if (Numbers.Percent(p.GetValue(_least), "a least strength") is { } least)
            entries.Add(new Marked { Container = id, HappenedAt = received.HappenedAt, LeastPercent = least });
        return book.Append(new Transaction(_options.Keeper(p, around), entries));
    }

    private Sealed Closed(ParseResult p, ContainerId id, DateTimeOffset at) => new()
    {
        Container = id,
        HappenedAt = at,
        GasCelsius = Numbers.Plain(p.GetValue(_sealedAt), "a temperature in degrees Celsius"),
        GasBar = Numbers.Plain(p.GetValue(_sealedPressure), "a pressure in bar"),
    };

    private IntakeRequest Request(ParseResult p, string placeId)
    {
        var (cover, depth) = CoverWords.Read(p.GetValue(_cover));
        return new IntakeRequest
        {
            Content = p.GetValue(_content) ?? throw RefusedException.Words("a content is needed: its name, or the word orphan"),
            Seen = p.GetValue(_seen),
            FoundBy = p.GetValue(_foundBy),
            Mix = p.GetValue(_mix),
            Amount = p.GetValue(_amount),
            Vessel = p.GetValue(_vessel),
            Closure = p.GetValue(_closure),
            Cover = cover,
            CoverDepthMillimetres = depth,
            Packing = p.GetValue(_packing),
            Place = placeId,
            How = p.GetValue(_how) is { } how ? Lot.ParseOrigin(how) : p.GetValue(_mix) is null ? LotOrigin.Bought : LotOrigin.Made,
            Origin = p.GetValue(_origin),
            GrossGrams = Numbers.Grams(p.GetValue(_gross), "a gross mass"),
            TareGrams = Numbers.Grams(p.GetValue(_tare), "a tare"),
            Note = p.GetValue(_options.Note),
        };
    }
}
