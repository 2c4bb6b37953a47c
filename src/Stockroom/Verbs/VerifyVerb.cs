using System.CommandLine;
using Stockroom.Storage;

namespace Stockroom.Verbs;

internal sealed class VerifyVerb : IVerb
{
    public string Name => "verify";

    public string Summary => "Check that the record was not altered and nothing is missing";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var json = BookAccess.JsonOption();
        var command = new Command(Name, Summary) { book, json };
        command.SetAction(p =>
        {
            var folder = BookAccess.FolderOf(p.GetValue(book), around);
            var report = StockBookFolder.Verify(folder);
            if (p.GetValue(json))
            {
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    w.WriteString("book", folder);
                    w.WriteBoolean("holds", report.Holds);
                    w.WriteNumber("transactions", report.Transactions);
                    w.WriteNumber("entries", report.Entries);
                    w.WriteString("head", report.HeadHash);
                    w.Texts("findings", report.Findings);
                    w.Texts("notes", report.Notes);
                });
            }
            else
            {
                around.Out.WriteLine($"{report.Entries} entries in {report.Transactions} transactions; head {report.HeadHash}");
                foreach (var finding in report.Findings)
                    around.Out.WriteLine("does not hold: " + finding);
                foreach (var note in report.Notes)
                    around.Out.WriteLine("note: " + note);
                if (report.Holds)
                    around.Out.WriteLine("everything holds");
            }

            return report.Holds ? ExitCodes.Done : ExitCodes.Refused;
        });
        return command;
    }
}
