using System.CommandLine;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Verbs;

internal sealed class ClassifyVerb : IVerb
{
    private readonly Argument<string?> _name = new("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "Name, synonym, formula, CAS number, or a preparation: \"hydrogen peroxide 30%\", \"sodium hydroxide 1 M\"" };
    private readonly Option<string?> _mix = new("--mix") { Description = "Composition, per cent by mass of each pure substance: \"hydrochloric acid=10%; water=90%\"; '>' and '<' take the worst case", HelpName = "PARTS" };
    private readonly Option<string?> _file = new("--mix-file") { Description = "Composition in a JSON file whose ingredients bring their own data", HelpName = "FILE" };
    private readonly Option<string?> _state = new("--state") { Description = "liquid, solid or gas; else by the parts", HelpName = "STATE" };
    private readonly Option<string?> _flashPoint = new("--flash-point") { Description = "Flash point of the whole in degrees Celsius", HelpName = "CELSIUS" };
    private readonly Option<string?> _boilingPoint = new("--boiling-point") { Description = "Initial boiling point of the whole in degrees Celsius", HelpName = "CELSIUS" };
    private readonly Option<string?> _ph = new("--ph") { Description = "pH of the whole; counts only when given, and published limits win over it", HelpName = "PH" };
    private readonly Option<string?> _viscosity = new("--viscosity") { Description = "Kinematic viscosity at 40 degrees Celsius in mm2/s", HelpName = "MM2_S" };
    private readonly Option<string?> _rules = new("--rules") { Description = "Whose rules and wording: eu (the rule), un or us", HelpName = "eu|un|us" };
    private readonly Option<string?> _each = EachLine.Option();
    private readonly Option<bool> _json = BookAccess.JsonOption();
    private readonly Option<string?> _book = BookAccess.BookOption();

    public string Name => "classify";

    public string Summary => "Hazards and label elements of a substance, a preparation or a mixture, each with its reason";

    public Command Build(Surroundings around)
    {
        var command = new Command(Name, Summary) { _name, _mix, _file, _state, _flashPoint, _boilingPoint, _ph, _viscosity, _rules, _each, _book, _json };
        command.SetAction(p => p.GetValue(_each) is { } from ? Each(command, from, ContentWords.KnownTo(p.GetValue(_book), around), around) : Once(p, around));
        return command;
    }

    private int Once(ParseResult p, Surroundings around)
    {
        var answer = Query(p, ContentWords.KnownTo(p.GetValue(_book), around)).Answer(around);
        if (p.GetValue(_json))
            JsonDocumentWriter.Write(around.Out, w => ClassificationJson.Write(w, answer));
        else
            ClassificationText.Write(around.Out, answer);
        return ExitCodes.Done;
    }

    private int Each(Command command, string from, (SubstanceCatalogue Catalogue, HazardFacts Hazards) known, Surroundings around) => EachLine.Run(command, from, around, line =>
    {
        if (line.GetValue(_each) is not null)
            throw RefusedException.Words("--each cannot stand inside a line");
        var answer = Query(line, known).Answer(around);
        return json => ClassificationJson.Write(json, answer);
    });

    private ClassifyQuery Query(ParseResult p, (SubstanceCatalogue Catalogue, HazardFacts Hazards) known) => new()
    {
        Catalogue = known.Catalogue,
        Facts = known.Hazards,
        Name = p.GetValue(_name),
        Mix = p.GetValue(_mix),
        File = p.GetValue(_file),
        State = p.GetValue(_state),
        FlashPoint = Numbers.Plain(p.GetValue(_flashPoint), "a flash point in degrees Celsius"),
        BoilingPoint = Numbers.Plain(p.GetValue(_boilingPoint), "a boiling point in degrees Celsius"),
        Ph = Numbers.Plain(p.GetValue(_ph), "a pH"),
        Viscosity = Numbers.Plain(p.GetValue(_viscosity), "a viscosity in mm2/s"),
        Rules = p.GetValue(_rules),
    };
}
