using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using Stockroom.Book;
using Stockroom.Chemistry.Tables;
using Stockroom.Labels;
using Stockroom.Storage;

namespace Stockroom.Verbs;

/// <summary>Reads the words, runs the verb, and turns every failure into one line and an exit code.</summary>
internal static class CommandLine
{
    public static int Run(IReadOnlyList<string> args, Surroundings around)
    {
        var help = new ShownTextWriter(around.Out, isOneLine: false);
        around = around with { Out = new ShownTextWriter(around.Out), Error = new ShownTextWriter(around.Error) };
        try
        {
            PlainWords.Check(args);
            var root = Root(around);
            if (args.Count == 0 && around.IsTerminal)
                args = ["open"];
            var parsed = root.Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0 && !AsksForHelp(args))
            {
                around.Error.WriteLine("stockroom: " + InOneLine(parsed));
                return ExitCodes.Words;
            }

            var code = parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = help, Error = around.Error });
            return AfterWork.Of(code, around);
        }
        catch (RefusedException e)
        {
            around.Error.WriteLine("stockroom: " + OneLine(e.Message));
            return e.ExitCode;
        }
        catch (BookRefusal e)
        {
            around.Error.WriteLine("stockroom: " + OneLine(e.Message));
            return ExitCodes.Words;
        }
        catch (Exception e) when (e is TableException or BookUnavailableException or LabelException)
        {
            around.Error.WriteLine("stockroom: " + OneLine(e.Message));
            return ExitCodes.Refused;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            around.Error.WriteLine("stockroom: the disk refuses: " + OneLine(e.Message));
            return ExitCodes.Refused;
        }
    }

    internal static RootCommand Root(Surroundings around)
    {
        var root = new RootCommand("Keeps the stock book of a collection of element samples and hazardous reagents. With no verb on a terminal it opens the terminal screens.");
        root.Directives.Clear();
        root.Directives.Add(new SuggestDirective());
        foreach (var verb in VerbList.All)
            root.Subcommands.Add(verb.Build(around));
        return root;
    }

    private static bool AsksForHelp(IReadOnlyList<string> args) => args.Any(a => a is "--help" or "-h" or "-?");

    private static string InOneLine(ParseResult parsed)
    {
        var verb = parsed.CommandResult.Command;
        if (verb is RootCommand)
        {
            return parsed.UnmatchedTokens.Count == 0
                ? "a verb is needed (see 'stockroom --help')"
                : $"'{parsed.UnmatchedTokens[0]}' is not a verb.{NearestVerb(parsed.UnmatchedTokens[0])} (see 'stockroom --help')";
        }

        return $"{OneLine(ParseWords.FirstOf(parsed))} (see 'stockroom {verb.Name} --help')";
    }

    private static string NearestVerb(string typed)
    {
        var nearest = Chemistry.Catalogue.NearestNames.To(typed, VerbList.All.Select(v => v.Name));
        return nearest.Count == 0 ? "" : $" Nearest: {string.Join(", ", nearest)}.";
    }

    private static string OneLine(string text) => string.Join(' ', text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
