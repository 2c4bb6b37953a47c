using System.CommandLine;
using Stockroom.Book.Entries;

namespace Stockroom.Verbs;

internal sealed class AttachVerb : IVerb
{
    private static readonly long MostBytes = Attached.MostBytes;

    public string Name => "attach";

    public string Summary => "Keep a file with a container: a photograph, a scanned sheet, a certificate";

    public Command Build(Surroundings around)
    {
        var id = new Argument<string>("ID") { Description = "Container id, as printed, spoken or scanned" };
        var file = new Argument<string>("FILE") { Description = $"Any file of at most {MostBytes / 1_000_000} MB; a copy goes into the book's folder" };
        var options = new WritingOptions();
        var command = new Command(Name, Summary) { id, file };
        options.AddTo(command);
        command.SetAction(p =>
        {
            var path = p.GetRequiredValue(file);
            var draft = new Attached
            {
                Container = BookAccess.Id(p.GetRequiredValue(id)),
                HappenedAt = Dates.MomentOf(p.GetValue(options.On), around.Clock),
                Note = p.GetValue(options.Note),
                Name = path,
                Sha256 = "",
                Bytes = 0,
                MediaType = "",
            };
            using var book = BookAccess.Write(p.GetValue(options.Book), around);
            book.Ledger.State.ContainerCalled(draft.Container);
            LineMode.Acknowledge(around, book.Attach(options.Keeper(p, around), draft, Content(path)), p.GetValue(options.Json), oneLine: false);
            return ExitCodes.Done;
        });
        return command;
    }

    private static byte[] Content(string path) =>
        InputFile.Read(path, MostBytes, $"at most {MostBytes} (20 MB) are attached: make a smaller copy of it") is { Length: > 0 } content
            ? content
            : throw RefusedException.Input($"'{path}' is empty; there is nothing to attach");
}
