using System.CommandLine;

namespace Stockroom.Verbs;

/// <summary>A backup's passphrase: never a word of the command line, where others can read it.</summary>
internal static class PassphraseOption
{
    public const string Variable = "STOCKROOM_PASSPHRASE";

    public static Option<string?> New() => new("--passphrase-file") { Description = $"A file whose first line is the passphrase ('-' is standard input); else {Variable}", HelpName = "FILE" };

    /// <summary>The passphrase; null if none is given anywhere.</summary>
    public static string? Read(string? file, Surroundings around)
    {
        if (file is null)
            return around.Variable(Variable) is { Length: > 0 } set ? set : null;
        try
        {
            var line = file == "-" ? around.In.ReadLine() : File.ReadLines(file).FirstOrDefault();
            return string.IsNullOrEmpty(line) ? throw RefusedException.Words($"'{file}' holds no passphrase; its first line is taken") : line;
        }
        catch (Exception e) when (InputFile.IsUnreadable(e))
        {
            throw RefusedException.Input($"the passphrase in '{file}' cannot be read: {e.Message}");
        }
    }
}
