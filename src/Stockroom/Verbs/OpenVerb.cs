using System.CommandLine;
using Stockroom.Assessment.Holdings;
using Stockroom.Desk;
using Stockroom.Screens;
using Stockroom.Storage;

namespace Stockroom.Verbs;

internal sealed class OpenVerb : IVerb
{
    public string Name => "open";

    public string Summary => "Open the terminal screens (Ctrl-Q leaves, ? shows the keys)";

    public Command Build(Surroundings around)
    {
        var book = BookAccess.BookOption();
        var command = new Command(Name, Summary) { book };
        command.SetAction(p =>
        {
            if (!around.IsTerminal)
                throw RefusedException.Words("the screens need a terminal; for plain lines ask 'stockroom today', 'list' or 'places'");
            using var open = BookAccess.OnSight(p.GetValue(book), around);
            var code = Show(open, around);
            return open.Damage.Count == 0 ? code : throw RefusedException.Input($"the book '{open.Folder}' is damaged: {open.Damage[0]}; see 'stockroom verify'");
        });
        return command;
    }

    /// <summary>The screens over an open book.</summary>
    internal static int Show(BookOnSight book, Surroundings around) =>
        TerminalSession.Run(new StockDesk(book, StockFacts.Default, around.Clock), around.Clock);
}
