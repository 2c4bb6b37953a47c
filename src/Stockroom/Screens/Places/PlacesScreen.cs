using Stockroom.Screens.Drawing;
using Stockroom.Screens.Shell;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Places;

/// <summary>The places as a tree, with what stands in them.</summary>
internal sealed class PlacesScreen : Screen
{
    private const int WideFrom = 110;

    private readonly PlacesList _list;
    private readonly RulePane _rule;
    private readonly TextPane _about;

    public PlacesScreen(ScreenContext context)
        : base(context)
    {
        _list = new PlacesList(Theme);
        _rule = new RulePane(Theme);
        _about = new TextPane(Theme);
        _list.ChosenChanged += (_, _) => ShowAbout();
        Add(_list, _rule, _about);
        Keys =
        [
            new("Enter", "the container, among the holdings", () => Context.Go.ToContainer(_list.ChosenRow!.Container!.Id), Key.Enter)
            {
                Brief = "to the container",
                Hindrance = () => _list.ChosenRow?.Container is null ? "the chosen line is a place" : null,
            },
            new("Enter", "open or shut the place", Toggle, Key.Enter)
            {
                Brief = "opens, shuts",
                Hindrance = () => Place is not { } place ? "the chosen line is a container" : PlaceTree.CanOpen(place) ? null : "nothing stands in it",
            },
            new("Right", "open the place", () => _list.SetOpen(Place!, true), Key.CursorRight)
            {
                Hindrance = () => Place is not { } place ? "the chosen line is a container" : !PlaceTree.CanOpen(place) ? "nothing stands in it" : _list.Tree.IsOpen(place) ? "it is open" : null,
            },
            new("Left", "shut the place, or go to the place outside", ShutOrOutside, Key.CursorLeft)
            {
                Hindrance = () => Place is { } place && IsOpen(place) || Outside >= 0 ? null : "no place is outside it",
            },
            .. ListKeys.Choosing(_list, static () => true),
        ];
    }

    public override IReadOnlyList<KeyAction> Keys { get; }

    public override void Refresh() => _list.Load(Desk.Places());

    protected override void Arrange(int columns, int rows)
    {
        if (columns >= WideFrom)
        {
            int left = columns * 55 / 100;
            _list.Place(0, 0, left, rows);
            _rule.Place(left + 1, 0, columns - left - 1, 1);
            _about.Place(left + 1, 1, columns - left - 1, rows - 1);
            return;
        }

        int about = Math.Clamp(rows / 3, 4, 9);
        _list.Place(0, 0, columns, rows - about - 1);
        _rule.Place(0, rows - about - 1, columns, 1);
        _about.Place(0, rows - about, columns, about);
    }

    private PlaceNode? Place => _list.ChosenRow?.Place;

    private int Outside => _list.Chosen < 0 ? -1 : _list.Tree.RowOutside(_list.Chosen);

    private bool IsOpen(PlaceNode place) => PlaceTree.CanOpen(place) && _list.Tree.IsOpen(place);

    private void Toggle() => _list.SetOpen(Place!, !_list.Tree.IsOpen(Place!));

    private void ShutOrOutside()
    {
        if (Place is { } place && IsOpen(place)) _list.SetOpen(place, false);
        else _list.Choose(Outside);
    }

    private void ShowAbout()
    {
        Card card = _list.ChosenRow switch
        {
            { Place: { } place } => OfPlace(place),
            { Container: { } container } => OfContainer(container),
            _ => new Card("No places yet", []),
        };
        _rule.Name(card.Title);
        _about.Show(columns => CardLines.Of(card, columns));
    }

    private static Card OfPlace(PlaceNode place)
    {
        CardLine[] about = [new("id", place.Id), new("kind", place.Kind), new("note", place.Note)];
        CardLine[] inside = [.. place.Containers.Select(c => new CardLine(c.Id, $"{c.Content}, {c.Amount}", WeightOf(c.Sign)))];
        return new Card(place.Name, inside.Length == 0 ? [new("", about)] : [new("", about), new("Stands here", inside)]);
    }

    private static Card OfContainer(HoldingRow row) => new($"{row.Id}  {row.Content}",
    [
        new("",
        [
            new("holds", row.Amount),
            new("loses a year", row.LossPerYear),
            new("stands in", row.Place),
            .. Sign(row.Sign),
        ]),
    ]);

    private static Attention WeightOf(string sign) => sign switch
    {
        "!" => Attention.Warning,
        "-" => Attention.Danger,
        "*" => Attention.Notice,
        _ => Attention.None,
    };

    private static IEnumerable<CardLine> Sign(string sign) => sign switch
    {
        "!" => [new("now", "wrong: Today says why", Attention.Danger)],
        "*" => [new("now", "due: Today says why", Attention.Notice)],
        "-" => [new("now", "hands off: do not move, open or weigh it", Attention.Danger)],
        _ => [],
    };
}
