using System.CommandLine;

namespace Stockroom.Verbs;

/// <summary>Prints what a shell needs to complete verbs, options and names.</summary>
internal sealed class CompletionsVerb : IVerb
{
    private static readonly Dictionary<string, string> Scripts = new(StringComparer.Ordinal)
    {
        ["bash"] = """
            _stockroom() {
                local line="${COMP_LINE:0:COMP_POINT}"
                local IFS=$'\n'
                COMPREPLY=($(compgen -W "$(stockroom "[suggest:${#line}]" "$line" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
            }
            complete -F _stockroom stockroom
            """,
        ["zsh"] = """
            _stockroom() {
                local completions=("${(@f)$(stockroom "[suggest:${#BUFFER}]" "$BUFFER" 2>/dev/null)}")
                compadd -- $completions
            }
            compdef _stockroom stockroom
            """,
        ["fish"] = """
            complete -f -c stockroom -a '(stockroom "[suggest:"(string length -- (commandline -cp))"]" (commandline -cp) 2>/dev/null)'
            """,
        ["powershell"] = """
            Register-ArgumentCompleter -Native -CommandName stockroom -ScriptBlock {
                param($word, $command, $position)
                stockroom "[suggest:$position]" "$command" | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
            }
            """,
    };

    public string Name => "completions";

    public string Summary => "Print completions for a shell: bash, zsh, fish or powershell";

    public Command Build(Surroundings around)
    {
        var shell = new Argument<string>("SHELL") { Description = string.Join(", ", Scripts.Keys) };
        shell.CompletionSources.Add(_ => Scripts.Keys.Select(k => new System.CommandLine.Completions.CompletionItem(k)));
        var command = new Command(Name, Summary) { shell };
        command.SetAction(p =>
        {
            around.Out.Write(Scripts.TryGetValue(p.GetRequiredValue(shell), out var script)
                ? script + "\n"
                : throw RefusedException.Words($"'{p.GetRequiredValue(shell)}' is not a shell that completions are known for; it is one of {string.Join(", ", Scripts.Keys)}"));
            return ExitCodes.Done;
        });
        return command;
    }
}
