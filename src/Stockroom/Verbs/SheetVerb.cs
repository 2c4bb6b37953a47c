using System.CommandLine;
using Stockroom.Desk;
using Stockroom.Desk.Sheets;
using Stockroom.Labels.Output;
using Stockroom.Labels.Sheets;

namespace Stockroom.Verbs;

internal sealed class SheetVerb : IVerb
{
    private const string CallVariable = "STOCKROOM_CALL";
    private const int LongestCall = 120;

    private readonly Option<string?> _out = new("--out") { Description = "The file to write; several pages of SVG or PNG are numbered files", HelpName = "FILE.pdf|.svg|.png" };
    private readonly Option<string?> _paper = new("--paper") { Description = "a4 (the rule) or letter", HelpName = "PAPER" };

    public string Name => "sheet";

    public string Summary => "Sheets to print: for a door, the catalogue, the rounds";

    public Command Build(Surroundings around)
    {
        var command = new Command(Name, Summary);
        var place = new Argument<string>("PLACE") { Description = "Id, name or path of a place" };
        var call = new Option<string?>("--call") { Description = $"Whom to call, with the number; else {CallVariable}", HelpName = "TEXT" };
        var door = Part("door", "For whoever opens the door in an emergency: one page if it can be", around, onePage: true, (p, open) =>
            DoorSheet.Of(BookAccess.Place(open.State, p.GetValue(place)!), open.Stock, Call(p.GetValue(call) ?? around.Variable(CallVariable), around)));
        door.Add(place);
        door.Add(call);
        command.Add(door);
        command.Add(Part("catalogue", "The collection as a booklet, element by element", around, onePage: false, (_, open) => CatalogueSheet.Of(open.Stock, BookName(open))));
        command.Add(Part("rounds", "What is due, as a check-list to carry", around, onePage: false, (_, open) => RoundsSheet.Of(open.Stock, BookName(open))));
        return command;
    }

    private Command Part(string name, string summary, Surroundings around, bool onePage, Func<ParseResult, OpenedStock, Sheet> make)
    {
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var part = new Command(name, summary) { _out, _paper, asOf, book, json };
        part.SetAction(p =>
        {
            var file = p.GetValue(_out) ?? throw RefusedException.Words("a file is needed: --out FILE.pdf, .svg or .png");
            if (!PageFiles.CanWrite(file))
                throw RefusedException.Words($"'{file}': sheets are written as .pdf, .svg or .png");
            var paper = Paper(p.GetValue(_paper));
            using var open = OpenedStock.OpenWhole(p.GetValue(book), p.GetValue(asOf), around);
            var sheet = make(p, open);
            var pages = SheetRenderer.Render(sheet, paper, onePage);
            var files = PageFiles.Write(file, pages, sheet.Title, around.Clock.GetLocalNow());
            if (p.GetValue(json))
            {
                JsonDocumentWriter.Write(around.Out, w =>
                {
                    w.WriteString("file", files[0]);
                    w.Texts("files", files);
                    w.WriteString("title", sheet.Title);
                    w.WriteNumber("pages", pages.Count);
                });
            }
            else
            {
                around.Out.WriteLine($"{sheet.Title}: {pages.Count} page{(pages.Count == 1 ? "" : "s")} in {string.Join(", ", files)}");
                if (onePage && pages.Count > 1)
                    around.Out.WriteLine($"it needs {pages.Count} pages at a size that can still be read: hang them all, or print a sheet for each place inside");
            }

            return ExitCodes.Done;
        });
        return part;
    }

    private static SheetPaper Paper(string? name) => name is null ? SheetPaper.A4
        : SheetPaper.All.FirstOrDefault(s => s.Name == name.Trim().ToLowerInvariant())
        ?? throw RefusedException.Words($"'{name}' is not a paper; it is one of {string.Join(", ", SheetPaper.All.Select(s => s.Name))}");

    private static string? Call(string? text, Surroundings around)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            around.Error.WriteLine($"stockroom: nobody to call is named, so the sheet has a line to write on; give --call \"NAME, NUMBER\" or set {CallVariable}");
            return null;
        }

        return text.Trim() is { Length: <= LongestCall } call
            ? call
            : throw RefusedException.Words($"whom to call has {text.Trim().Length} characters; at most {LongestCall}");
    }

    // "museum" for the folder museum.stockbook.
    private static string BookName(OpenedStock open) => Path.GetFileNameWithoutExtension(open.Name);
}
