using System.CommandLine;
using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Neighbours;

namespace Stockroom.Verbs;

internal sealed class ArrangeVerb : IVerb
{
    public string Name => "arrange";

    public string Summary => "Where everything should stand: the fewest moves to it, or the best places for one container";

    public Command Build(Surroundings around)
    {
        var forOne = new Option<string?>("--for") { Description = "Only the best places for one container", HelpName = "ID" };
        var content = new Option<string?>("--content") { Description = "The best places for something that is not in the book yet", HelpName = "NAME" };
        var thorough = new Option<bool>("--thorough") { Description = "Search longer" };
        var book = BookAccess.BookOption();
        var asOf = BookAccess.AsOfOption();
        var json = BookAccess.JsonOption();
        var table = ClassTableOption.Make();
        var command = new Command(Name, Summary) { forOne, content, thorough, table, book, asOf, json };
        command.SetAction(p =>
        {
            if (p.GetValue(forOne) is not null && p.GetValue(content) is not null)
                throw RefusedException.Words("--for asks about a container of the book, --content about something new; give one of them");
            using var open = OpenedStock.OpenWhole(p.GetValue(book), p.GetValue(asOf), around, ClassTableOption.Read(p.GetValue(table)));
            var shelving = ShelvingOf.Stock(open.Stock);
            var judge = new PairJudge(open.Stock.ClassTable);
            if (p.GetValue(forOne) is { } id)
                return Places(around, shelving, InBook(id, open, shelving), judge, p.GetValue(json));
            if (p.GetValue(content) is { } words)
                return Places(around, shelving, NotYetBooked(words, open), judge, p.GetValue(json));
            var plan = Arranger.Propose(shelving, p.GetValue(thorough) ? Effort.Thorough : Effort.Usual, judge);
            if (p.GetValue(json))
                JsonDocumentWriter.Write(around.Out, w => ArrangeJson.WritePlan(w, plan));
            else
                ArrangeText.PrintPlan(around.Out, plan, shelving);
            return plan.Left.Count > 0 ? ExitCodes.Attention : ExitCodes.Done;
        });
        return command;
    }

    private static int Places(Surroundings around, Shelving shelving, Thing thing, PairJudge judge, bool json)
    {
        var places = GoodPlaces.Of(shelving, thing, judge);
        if (json)
            JsonDocumentWriter.Write(around.Out, w => ArrangeJson.WritePlaces(w, thing, places));
        else
            ArrangeText.PrintPlaces(around.Out, thing, places);
        return places.Any(p => p.IsSafe) ? ExitCodes.Done : ExitCodes.Attention;
    }

    private static Thing InBook(string typed, OpenedStock open, Shelving shelving)
    {
        var id = open.Stock.Of(BookAccess.Id(typed)).Id.ToString();
        return shelving.Things.FirstOrDefault(t => t.Key == id) ?? throw RefusedException.Words($"{id} was retired; it has no place any more");
    }

    private static Thing NotYetBooked(string words, OpenedStock open) =>
        ShelvingOf.NotYetBooked(open.Stock, ContentWords.Find(words, open.Stock.Facts.Catalogue)) with { Key = "" };
}
