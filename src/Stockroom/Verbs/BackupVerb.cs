using System.CommandLine;
using Stockroom.Storage.Backups;

namespace Stockroom.Verbs;

internal sealed class BackupVerb : IVerb
{
    private const int UsualDays = 7;
    private const int UsualKept = 8;

    private readonly Argument<string?> _file = new("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "The backup to be made; it overwrites nothing" };
    private readonly Option<bool> _encrypt = new("--encrypt") { Description = "Under a passphrase: AES-256-GCM, PBKDF2-HMAC-SHA256 with 600,000 rounds" };
    private readonly Option<string?> _passphrase = PassphraseOption.New();
    private readonly Option<bool> _due = new("--due") { Description = "Only if the book's schedule says so; for a daily timer" };
    private readonly Option<string?> _to = new("--to") { Description = "Set the schedule: the folder for backups, made when due after each entry booked", HelpName = "FOLDER" };
    private readonly Option<int> _every = new("--every") { Description = "With --to: days from one backup to the next", HelpName = "DAYS", DefaultValueFactory = _ => UsualDays };
    private readonly Option<bool> _off = new("--off") { Description = "Take the schedule away; backups already made stay" };
    private readonly Option<int> _keep = new("--keep") { Description = "With --to: how many are kept", HelpName = "COUNT", DefaultValueFactory = _ => UsualKept };

    public string Name => "backup";

    public string Summary => "Write the book into one file, and check that file by replaying it";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { _file, _encrypt, _passphrase, _due, _to, _every, _keep, _off, book, json };
        command.SetAction(p =>
        {
            var folder = BookAccess.FolderOf(p.GetValue(book), around);
            if (new[] { p.GetValue(_file) is not null, p.GetValue(_to) is not null, p.GetValue(_due), p.GetValue(_off) }.Count(asked => asked) > 1)
                throw RefusedException.Words("one thing at a time: backup FILE, --due, --to FOLDER or --off");
            if (p.GetValue(_to) is { } to)
                return SetSchedule(new BackupSchedule(to, p.GetValue(_every), p.GetValue(_keep), p.GetValue(_encrypt)), folder, around);
            if (p.GetValue(_off))
            {
                around.Out.WriteLine(BackupSchedule.TakeAway(folder) ? "the schedule was taken away; backups already made stay" : "no schedule was set");
                return ExitCodes.Done;
            }

            var passphrase = Passphrase(p, around);
            if (p.GetValue(_due))
                return Due(folder, passphrase, around);
            var file = p.GetValue(_file) ?? throw RefusedException.Words("a file is needed: backup FILE; or --due, or --to FOLDER to set a schedule");
            var manifest = BookBackup.Make(folder, file, passphrase, around.Clock);
            BackupWords.Print(around.Out, "file", file, manifest, p.GetValue(json));
            return ExitCodes.Done;
        });
        return command;
    }

    private string? Passphrase(ParseResult p, Surroundings around)
    {
        if (!p.GetValue(_encrypt) && p.GetValue(_passphrase) is null)
            return null;
        return PassphraseOption.Read(p.GetValue(_passphrase), around)
            ?? throw RefusedException.Words($"a passphrase is needed: --passphrase-file FILE, or {PassphraseOption.Variable}");
    }

    private static int SetSchedule(BackupSchedule schedule, string folder, Surroundings around)
    {
        schedule.Set(folder);
        around.Out.WriteLine($"every {schedule.EveryDays} days to '{Path.GetFullPath(schedule.To)}', {schedule.Keep} kept{(schedule.Encrypted ? $", encrypted: set {PassphraseOption.Variable}" : "")}; made when due after each entry booked and on leaving the screens, or by a daily timer with 'stockroom backup --due'");
        return ExitCodes.Done;
    }

    private static int Due(string folder, string? passphrase, Surroundings around)
    {
        var schedule = BackupSchedule.Of(folder) ?? throw RefusedException.Words("this book has no schedule; set one with 'stockroom backup --to FOLDER --every DAYS --keep COUNT'");
        passphrase ??= schedule.Encrypted ? PassphraseOption.Read(null, around) : null;
        var (made, takenAway) = schedule.RunIfDue(folder, passphrase, around.Clock);
        around.Out.WriteLine(made is null ? "no backup is due" : $"backed up to '{made}'");
        foreach (var old in takenAway)
            around.Out.WriteLine($"taken away: '{old}'");
        return ExitCodes.Done;
    }
}
