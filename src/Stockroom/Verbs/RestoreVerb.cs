using System.CommandLine;
using Stockroom.Storage.Backups;

namespace Stockroom.Verbs;

internal sealed class RestoreVerb : IVerb
{
    public string Name => "restore";

    public string Summary => "Make a book from a backup in a folder that is not there yet; --check only replays the backup";

    public Command Build(Surroundings around)
    {
        var file = new Argument<string>("FILE") { Description = "A backup" };
        var folder = new Argument<string?>("FOLDER") { Arity = ArgumentArity.ZeroOrOne, Description = "The new book's folder" };
        var check = new Option<bool>("--check") { Description = "A drill: replay the backup and write nothing" };
        var passphrase = PassphraseOption.New();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { file, folder, check, passphrase, json };
        command.SetAction(p =>
        {
            var from = p.GetRequiredValue(file);
            var secret = PassphraseOption.Read(p.GetValue(passphrase), around);
            if (p.GetValue(check))
            {
                BackupWords.Print(around.Out, "file", from, BookBackup.Check(from, secret), p.GetValue(json));
                return ExitCodes.Done;
            }

            var to = p.GetValue(folder) ?? throw RefusedException.Words("a folder is needed: restore FILE FOLDER; or --check to replay the backup only");
            BackupWords.Print(around.Out, "book", to, BookBackup.Restore(from, to, secret, around.Clock), p.GetValue(json));
            return ExitCodes.Done;
        });
        return command;
    }
}
