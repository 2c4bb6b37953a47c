using System.CommandLine;
using System.CommandLine.Parsing;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>
/// Runs a writing verb once, or with "--journal -" once for each line of standard input, acknowledging each in turn.
/// A line holds the verb's words and options, separated by tabs, or by spaces with quotes as in a shell.
/// </summary>
internal static class LineMode
{
    public static Option<string?> JournalOption() => new("--journal") { Description = "With '-', read one command a line from standard input and acknowledge each in turn", HelpName = "-" };

    /// <summary>Runs the verb's work over one book that stays open.</summary>
    /// <param name="command">The verb as built, for reading each line.</param>
    /// <param name="parsed">The command line as typed.</param>
    /// <param name="around">Streams and clock.</param>
    /// <param name="options">Where the common options stand.</param>
    /// <param name="work">One command against the open book: the entries that became durable.</param>
    public static int Run(Command command, ParseResult parsed, Surroundings around, WritingOptions options, Func<ParseResult, StockBook, IReadOnlyList<Entry>> work)
    {
        var journal = parsed.GetValue(options.Journal);
        if (journal is not null and not "-")
            throw RefusedException.Words($"'--journal {journal}': only '-' (standard input) can be read");
        using var book = BookAccess.Write(parsed.GetValue(options.Book), around);
        var json = parsed.GetValue(options.Json);
        if (journal is null)
        {
            Acknowledge(around, work(parsed, book), json, oneLine: false);
            return ExitCodes.Done;
        }

        var refused = false;
        while (around.In.ReadLine() is { } line)
        {
            if (line.Trim().Length == 0)
                continue;
            try
            {
                Acknowledge(around, work(Read(command, line), book), json, oneLine: true);
            }
            catch (Exception e) when (e is BookRefusal or RefusedException)
            {
                refused = true;
                if (json)
                    JsonDocumentWriter.WriteLine(around.Out, w => w.WriteString("error", e.Message));
                else
                    around.Out.WriteLine("refused: " + e.Message);
            }

            around.Out.Flush();
            around.Seen.Tell(around.Error);
        }

        return refused ? ExitCodes.Attention : ExitCodes.Done;
    }

    private static string Subject(Entry entry) => (entry.Container?.ToString() ?? entry.Place) is { } subject ? subject + " " : "";

    private static ParseResult Read(Command command, string line)
    {
        var words = line.Contains('\t')
            ? [.. line.Split('\t').Where(w => w.Length > 0)]
            : CommandLineParser.SplitCommandLine(line).ToList();
        if (words.Count > 0 && words[0] == command.Name)
            words.RemoveAt(0);
        PlainWords.Check(words);
        var parsed = command.Parse(words);
        return parsed.Errors.Count == 0 ? parsed : throw RefusedException.Words(ParseWords.FirstOf(parsed));
    }

    /// <summary>Says what became durable, and only that.</summary>
    public static void Acknowledge(Surroundings around, IReadOnlyList<Entry> entries, bool json, bool oneLine)
    {
        if (!json)
        {
            foreach (var entry in entries)
                around.Out.WriteLine($"entry {entry.Number}: {Subject(entry)}{EntryWords.Of(entry)}");
            return;
        }

        void Body(System.Text.Json.Utf8JsonWriter w)
        {
            w.WriteNumber("entry", entries[0].Number);
            w.WriteNumber("transaction", entries[0].Transaction);
            w.TextOrNull("id", entries[0].Container?.ToString());
            w.TextOrNull("place", entries[0].Place);
            w.WriteStartArray("entries");
            foreach (var entry in entries)
                w.WriteNumberValue(entry.Number);
            w.WriteEndArray();
        }

        if (oneLine)
            JsonDocumentWriter.WriteLine(around.Out, Body);
        else
            JsonDocumentWriter.Write(around.Out, Body);
    }
}

/// <summary>Options that every writing verb has.</summary>
internal sealed record WritingOptions
{
    public Option<string?> Book { get; } = BookAccess.BookOption();

    public Option<bool> Json { get; } = BookAccess.JsonOption();

    public Option<string?> By { get; } = new("--by") { Description = "Who books it; else your user name", HelpName = "NAME" };

    public Option<DateOnly?> On { get; } = new("--on") { Description = "The day it happened; else today", HelpName = "DATE", CustomParser = Dates.Parse };

    public Option<string?> Note { get; } = new("--note") { Description = "Anything worth keeping", HelpName = "TEXT" };

    public Option<string?> Force { get; } = new("--force") { Description = "Do it to a container marked hands off, and why", HelpName = "REASON" };

    public Option<string?> Journal { get; } = LineMode.JournalOption();

    public void AddTo(Command command, bool force = false, bool lines = false)
    {
        command.Options.Add(On);
        command.Options.Add(Note);
        command.Options.Add(By);
        if (force)
            command.Options.Add(Force);
        if (lines)
            command.Options.Add(Journal);
        command.Options.Add(Book);
        command.Options.Add(Json);
    }

    public string Keeper(ParseResult parsed, Surroundings around) => parsed.GetValue(By) is { Length: > 0 } by ? by : around.User;
}
