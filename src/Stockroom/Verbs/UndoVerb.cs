using System.CommandLine;
using System.Globalization;

namespace Stockroom.Verbs;

internal sealed class UndoVerb : IVerb
{
    public string Name => "undo";

    public string Summary => "Take the last transaction back; refused where something later rests on it";

    public Command Build(Surroundings around)
    {
        var because = new Option<string?>("--because") { Description = "The reason", HelpName = "TEXT" };
        var transaction = new Option<string?>("--transaction") { Description = "A given transaction in place of the last; 'stockroom ledger --json' numbers them", HelpName = "N" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { because, transaction };
        options.AddTo(command);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) => book.Append(book.Ledger.Undo(
            options.Keeper(parsed, around),
            parsed.GetValue(because) ?? parsed.GetValue(options.Note) ?? "undone by the keeper",
            Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
            Number(parsed.GetValue(transaction))))));
        return command;
    }

    private static long? Number(string? text) => text is null ? null
        : long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number
        : throw RefusedException.Words($"'{text}' is not the number of a transaction; 'stockroom ledger --json' shows them");
}
