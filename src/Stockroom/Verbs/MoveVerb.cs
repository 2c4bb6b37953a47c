using System.CommandLine;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Verbs;

internal sealed class MoveVerb : IVerb
{
    public string Name => "move";

    public string Summary => "Book that a container was put in another place";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string?>("ID") { Arity = ArgumentArity.ZeroOrOne, Description = "Container id" };
        var place = new Argument<string?>("PLACE") { Arity = ArgumentArity.ZeroOrOne, Description = "Id, name or path of the place" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { id, place };
        options.AddTo(command, force: true, lines: true);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) =>
        {
            if (parsed.GetValue(id) is not { } container || parsed.GetValue(place) is not { } target)
                throw RefusedException.Words("a container and a place are needed: move ID PLACE");
            return book.Append(new Transaction(options.Keeper(parsed, around), new Moved
            {
                Container = BookAccess.Id(container),
                To = BookAccess.Place(book.Ledger.State, target).Id,
                HappenedAt = Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
                Note = parsed.GetValue(options.Note),
                Forced = parsed.GetValue(options.Force),
            }));
        }));
        return command;
    }
}
