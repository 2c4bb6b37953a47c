using System.CommandLine;
using System.Globalization;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Verbs;

internal sealed class CorrectVerb : IVerb
{
    public string Name => "correct";

    public string Summary => "Book that an earlier entry ought to have said something else; the earlier one stays";

    public Command Build(Surroundings around)
    {
        var entry = new Argument<string>("ENTRY") { Description = "Number of the entry" };
        var changes = new Argument<string[]>("FIELD=VALUE") { Arity = ArgumentArity.OneOrMore, Description = "What it ought to have said: gross_g=132.75; an empty value takes it away" };
        var because = new Option<string?>("--because") { Description = "The reason", HelpName = "TEXT" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { entry, changes, because };
        options.AddTo(command);
        command.SetAction(p => LineMode.Run(command, p, around, options, (parsed, book) =>
        {
            var typed = parsed.GetRequiredValue(entry);
            if (!long.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
                throw RefusedException.Words($"'{typed}' is not the number of an entry; 'stockroom ledger' shows them");
            return book.Append(new Transaction(options.Keeper(parsed, around), new Corrected
            {
                Entry = number,
                Changes = [.. Changes(parsed.GetRequiredValue(changes)).Select(c => CorrectedWords.Checked(c, number, book.Ledger))],
                Reason = parsed.GetValue(because) ?? parsed.GetValue(options.Note) ?? "mistyped",
                HappenedAt = Dates.MomentOf(parsed.GetValue(options.On), around.Clock),
            }));
        }));
        return command;
    }

    private static List<FieldChange> Changes(IEnumerable<string> words)
    {
        var changes = words.Select(Change).ToList();
        return changes.GroupBy(c => c.Field, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw RefusedException.Words($"'{twice.Key}' stands twice; say once what it ought to have been")
            : changes;
    }

    private static FieldChange Change(string words)
    {
        var cut = words.IndexOf('=');
        if (cut <= 0)
            throw RefusedException.Words($"'{words}' is not FIELD=VALUE; write for example gross_g=132.75");
        var value = words[(cut + 1)..];
        return new FieldChange(words[..cut].Trim(), value.Length == 0 ? null : value);
    }
}
