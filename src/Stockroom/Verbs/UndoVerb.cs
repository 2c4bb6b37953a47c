using System.CommandLine;

namespace Stockroom.Verbs;

internal sealed class UndoVerb : IVerb
{
    public string Name => "undo";

    public string Summary => "Take the last transaction back; refused where something later rests on it";

    public Command Build(Surroundings around)
    {
        var because = new Option<string?>("--because") { Description = "The reason", HelpName = "TEXT" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { because };
        options.AddTo(command);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) => book.Append(book.Ledger.Undo(
            options.Keeper(parsed, around),
            parsed.GetValue(because) ?? parsed.GetValue(options.Note) ?? "undone by the keeper",
            Dates.MomentOf(parsed.GetValue(options.On), around.Clock)))));
        return command;
    }
}
