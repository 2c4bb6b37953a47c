using System.CommandLine;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Verbs;

internal sealed class WeighVerb : IVerb
{
    public string Name => "weigh";

    public string Summary => "Book a gross mass read on a balance";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string?>("ID") { Arity = ArgumentArity.ZeroOrOne, Description = "Container id" };
        var gross = new Argument<string?>("GROSS_G") { Arity = ArgumentArity.ZeroOrOne, Description = "Gross mass in grams" };
        var readability = new Option<string?>("--readability") { Description = "Smallest step of the balance", HelpName = "GRAMS" };
        var temperature = new Option<string?>("--temperature") { Description = "Temperature at the balance in degrees Celsius", HelpName = "C" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { id, gross, readability, temperature };
        options.AddTo(command, force: true, lines: true);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) =>
        {
            if (parsed.GetValue(id) is not { } container || parsed.GetValue(gross) is not { } mass)
                throw RefusedException.Words("a container and its gross mass are needed: weigh ID GROSS_G");
            return book.Append(new Transaction(options.Keeper(parsed, around), new Weighed
            {
                Container = BookAccess.Id(container),
                GrossGrams = Numbers.Grams(mass, "a gross mass")!.Value,
                ReadabilityGrams = Numbers.Grams(parsed.GetValue(readability), "a readability"),
                TemperatureCelsius = Numbers.Plain(parsed.GetValue(temperature), "a temperature in degrees Celsius"),
                HappenedAt = Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
                Note = parsed.GetValue(options.Note),
                Forced = parsed.GetValue(options.Force),
            }));
        }));
        return command;
    }
}
