using System.CommandLine;
using System.Text.Json;
using Stockroom.Book.Ledgers;
using Stockroom.Imports;
using Stockroom.Storage;
using Stockroom.Storage.Exports;

namespace Stockroom.Verbs;

/// <summary>
/// Takes a list of containers or places (.csv), all rows or none, or a whole exported book (.json) into a folder that has
/// none yet.
/// </summary>
internal sealed class ImportVerb : IVerb
{
    public string Name => "import";

    public string Summary => "Take a list of containers or places (.csv), every row or none, or a whole book (.json)";

    public Command Build(Surroundings around)
    {
        var file = new Argument<string?>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "FILE.csv: a list whose first line names the columns, as 'export' writes it or as a spreadsheet has it; FILE.json: a book that 'export' wrote" };
        var dry = new Option<bool>("--dry-run") { Description = "Write nothing; say what would be booked" };
        var map = new Option<string[]>("--map") { Description = "What a column stands for: \"Fundort=origin\"; \"COLUMN=-\" leaves it out. Fields are the columns that 'export' writes, and note", HelpName = "COLUMN=FIELD", Arity = ArgumentArity.OneOrMore, AllowMultipleArgumentsPerToken = true };
        var book = BookAccess.BookOption();
        var by = new Option<string?>("--by") { Description = "Who books it; else your user name", HelpName = "NAME" };
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { file, dry, map, by, book, json };
        command.SetAction(p =>
        {
            var (path, maps) = Words(p.GetValue(file), p.GetValue(map) ?? []);
            var answer = new ImportAnswer(around, path, p.GetValue(dry), p.GetValue(json));
            var stated = maps.Select(Stated).ToList();
            return Path.GetExtension(path).ToLowerInvariant() switch
            {
                ".csv" => List(path, p.GetValue(book), p.GetValue(by) is { Length: > 0 } name ? name : around.User, stated, answer, around),
                ".json" when stated.Count == 0 => WholeBook(path, BookAccess.FolderOf(p.GetValue(book), around), answer, around),
                ".json" => throw RefusedException.Words("--map is for the columns of a .csv; a .json is a whole book and has none"),
                var other => throw RefusedException.Words($"'{other}' is not a format of import; give FILE.csv or FILE.json"),
            };
        });
        return command;
    }

    private static int List(string path, string? named, string by, List<(string Column, string Field)> stated, ImportAnswer answer, Surroundings around)
    {
        var bytes = Bytes(path, CsvText.MostBytes);
        var folder = BookAccess.FolderOf(named, around);
        try
        {
            if (answer.IsDry)
            {
                using var there = BookAccess.IsNew(folder) ? null : BookAccess.Read(named, around);
                return answer.Give(new CsvImport(there?.Ledger ?? Ledger.Empty(""), by, around.Clock).Try(bytes, stated), null);
            }

            // A list that is refused, or brings nothing, makes no book.
            var alone = BookAccess.IsNew(folder) ? new CsvImport(Ledger.Empty(""), by, around.Clock).Try(bytes, stated) : null;
            if (alone is { Refused.Count: > 0 } or { Entries.Count: 0 })
                return answer.Give(alone, null);
            using var book = BookAccess.WriteOrMake(named, around, _ => new Transaction(by, alone!.Entries));
            var outcome = new CsvImport(book.Ledger, by, around.Clock).Try(bytes, stated);
            return answer.Give(outcome, outcome.Entries.Count == 0 ? null : book.Append(new Transaction(by, outcome.Entries)));
        }
        catch (DocumentException e)
        {
            return answer.Refuse(e.Faults);
        }
    }

    private static int WholeBook(string path, string folder, ImportAnswer answer, Surroundings around)
    {
        try
        {
            var exported = BookImport.Read(Bytes(path, BookImport.MostBytes));
            var end = answer.IsDry ? BookImport.Check(folder, exported) : BookImport.Into(folder, exported, around.Clock);
            return answer.Give(exported, end, folder);
        }
        catch (DocumentException e)
        {
            return answer.Refuse(e.Faults);
        }
    }

    // "--map A=b FILE": the words that follow --map are taken for more of it.
    private static (string Path, string[] Maps) Words(string? file, string[] maps) => (file, maps) switch
    {
        ({ } path, _) => (path, maps),
        (null, [.. var before, var last]) when !last.Contains('=', StringComparison.Ordinal) => (last, before),
        _ => throw RefusedException.Words("a file is needed: import FILE.csv or FILE.json"),
    };

    private static (string Column, string Field) Stated(string words)
    {
        var cut = words.LastIndexOf('=');
        return cut > 0 && cut < words.Length - 1
            ? (words[..cut].Trim(), words[(cut + 1)..].Trim())
            : throw RefusedException.Words($"'--map {words}' is not COLUMN=FIELD; write for example --map \"Stored in=place\", or \"Colour=-\" to leave a column out");
    }

    private static byte[] Bytes(string path, long most) => InputFile.Read(path, most, $"at most {most} are imported at once");
}
