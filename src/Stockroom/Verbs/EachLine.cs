using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using Stockroom.Book;

namespace Stockroom.Verbs;

/// <summary>
/// "--each FILE" (or "-"): one query a line, its words and options parted by tabs; one JSON document a line comes back,
/// in order, with an error where a line was refused.
/// </summary>
internal static class EachLine
{
    public static Option<string?> Option() => new("--each") { Description = "One query a line from a file or '-', words parted by tabs; answers one JSON document a line", HelpName = "FILE" };

    /// <summary>Answers every line.</summary>
    /// <param name="command">The verb as built, for reading each line.</param>
    /// <param name="file">A file, or "-" for standard input.</param>
    /// <param name="around">Streams.</param>
    /// <param name="answer">Makes the body of one document, or throws a refusal.</param>
    public static int Run(Command command, string file, Surroundings around, Func<ParseResult, Action<Utf8JsonWriter>> answer)
    {
        var refused = false;
        using var opened = file == "-" ? null : OpenText(file);
        var reader = opened ?? around.In;
        while (reader.ReadLine() is { } line)
        {
            if (line.Trim().Length == 0)
                continue;
            try
            {
                var parsed = command.Parse([.. line.Split('\t').Select(w => w.Trim()).Where(w => w.Length > 0)]);
                if (parsed.Errors.Count > 0)
                    throw RefusedException.Words(ParseWords.FirstOf(parsed));
                JsonDocumentWriter.WriteLine(around.Out, answer(parsed));
            }
            catch (Exception e) when (e is BookRefusal or RefusedException)
            {
                refused = true;
                JsonDocumentWriter.WriteLine(around.Out, w => w.WriteString("error", e.Message));
            }
        }

        return refused ? ExitCodes.Attention : ExitCodes.Done;
    }

    private static StreamReader OpenText(string file)
    {
        try
        {
            return File.OpenText(file);
        }
        catch (Exception e) when (InputFile.IsUnreadable(e))
        {
            throw RefusedException.Input($"'{file}' cannot be read: {e.Message}");
        }
    }
}
