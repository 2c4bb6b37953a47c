using System.CommandLine;
using System.Text.RegularExpressions;

namespace Stockroom.Verbs;

/// <summary>Why words could not be read, in the keeper's language: no names of types.</summary>
internal static partial class ParseWords
{
    /// <summary>The first fault of a command line that has one.</summary>
    public static string FirstOf(ParseResult parsed)
    {
        var message = parsed.Errors[0].Message;
        return Untyped().Match(message) is { Success: true } fault
            ? $"'{fault.Groups["typed"].Value}' is not {Kind(fault.Groups["type"].Value)} for '{fault.Groups["name"].Value}'"
            : message;
    }

    private static string Kind(string type) =>
        type.Contains("Bool", StringComparison.Ordinal) ? "true or false"
        : type.Contains("Int", StringComparison.Ordinal) ? "a whole number of a size that can be"
        : "a number";

    [GeneratedRegex(@"^Cannot parse argument '(?<typed>.*)' for \w+ '(?<name>.*)' as expected type '(?<type>.*)'\.?$", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Untyped();
}
