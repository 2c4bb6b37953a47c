using System.CommandLine;
using Stockroom.Storage;

namespace Stockroom.Verbs;

internal sealed class RepairVerb : IVerb
{
    public string Name => "repair";

    public string Summary => "Make a new book from what is sound in a damaged one, which stays as it is";

    public Command Build(Surroundings around)
    {
        var target = new Argument<string>("NEW_FOLDER") { Description = "A folder that is not there yet" };
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { target, book, json };
        command.SetAction(p =>
        {
            var folder = BookAccess.FolderOf(p.GetValue(book), around);
            var report = StockBookFolder.Repair(folder, p.GetRequiredValue(target), around.Clock);
            if (p.GetValue(json))
            {
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    w.WriteString("book", report.Folder);
                    w.WriteString("old_book", folder);
                    w.WriteNumber("entries", report.Entries);
                    w.WriteNumber("from_litedb", report.FromLite);
                    w.WriteString("head", report.HeadHash);
                    w.Texts("lost", report.Lost);
                });
            }
            else
            {
                around.Out.WriteLine($"{report.Entries} entries saved in '{report.Folder}', {report.FromLite} of them from the LiteDB file; head {report.HeadHash}");
                foreach (var lost in report.Lost)
                    around.Out.WriteLine("not saved: " + lost);
                around.Out.WriteLine($"the old book stays in '{folder}'");
            }

            return report.Lost.Count == 0 ? ExitCodes.Done : ExitCodes.Attention;
        });
        return command;
    }
}
