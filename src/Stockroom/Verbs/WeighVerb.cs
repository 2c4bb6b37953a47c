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
        var pressure = new Option<string?>("--pressure") { Description = "Air pressure at the balance in hPa, not reduced to sea level", HelpName = "HPA" };
        var calibration = new Option<string?>("--calibration") { Description = "How far the balance may be out at that load, as last checked", HelpName = "GRAMS" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { id, gross, readability, temperature, pressure, calibration };
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
                PressureHectopascals = Numbers.Plain(parsed.GetValue(pressure), "an air pressure in hPa"),
                CalibrationGrams = Numbers.Grams(parsed.GetValue(calibration), "an error of the balance"),
                HappenedAt = Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
                Note = parsed.GetValue(options.Note),
                Forced = parsed.GetValue(options.Force),
            }));
        }));
        return command;
    }
}
