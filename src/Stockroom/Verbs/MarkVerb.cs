using System.CommandLine;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Verbs;

internal sealed class MarkVerb : IVerb
{
    private const string HandsOff = "hands-off";
    private const string Pinned = "pinned";
    private const string LeastStrength = "least-strength";

    public string Name => "mark";

    public string Summary => "Mark a container hands-off, pinned to its place, or of use down to a least strength; or lift the mark";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string?>("ID") { Arity = ArgumentArity.ZeroOrOne, Description = "Container id" };
        var mark = new Argument<string?>("MARK") { Arity = ArgumentArity.ZeroOrOne, Description = $"{Pinned}: no arrangement moves it; {HandsOff}: nobody may move, open or weigh it; {LeastStrength}: due when it falls below --percent" };
        var percent = new Option<string?>("--percent") { Description = $"With {LeastStrength}: per cent by mass of the part it is named for", HelpName = "PERCENT" };
        var because = new Option<string?>("--because") { Description = "Why the mark is set or lifted", HelpName = "REASON" };
        var lift = new Option<bool>("--lift") { Description = "Take the mark off again" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { id, mark, because, percent, lift };
        options.AddTo(command, lines: true);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) =>
        {
            if (parsed.GetValue(id) is not { } container || parsed.GetValue(mark) is not { } word)
                throw RefusedException.Words("a container and a mark are needed: mark ID pinned --because REASON");
            if (word is not (HandsOff or Pinned or LeastStrength))
                throw RefusedException.Words($"'{word}' is not a mark; it is {Pinned} or {HandsOff}, or {LeastStrength}");
            var isSet = !parsed.GetValue(lift);
            var least = Numbers.Percent(parsed.GetValue(percent), "a least strength");
            if (least is null != (word != LeastStrength || !isSet))
                throw RefusedException.Words($"{LeastStrength} is set with a percentage, and nothing else is: mark ID {LeastStrength} --percent 30");
            return book.Append(new Transaction(options.Keeper(parsed, around), new Marked
            {
                Container = BookAccess.Id(container),
                HandsOff = word == HandsOff ? isSet : null,
                Pinned = word == Pinned ? isSet : null,
                LeastPercent = word == LeastStrength ? least ?? 0 : null,
                Reason = parsed.GetValue(because),
                HappenedAt = Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
                Note = parsed.GetValue(options.Note),
            }));
        }));
        return command;
    }
}
