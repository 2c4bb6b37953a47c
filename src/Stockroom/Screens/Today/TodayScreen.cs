using System.Globalization;
using Stockroom.Screens.Drawing;
using Stockroom.Screens.Shell;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Today;

/// <summary>What is wrong and what is due, worst and oldest first, and why for the chosen one.</summary>
internal sealed class TodayScreen : Screen
{
    private const int WideFrom = 110;

    private readonly TextPane _headline;
    private readonly TodayList _list;
    private readonly RulePane _rule;
    private readonly TextPane _why;

    public TodayScreen(ScreenContext context)
        : base(context)
    {
        _headline = new TextPane(Theme);
        _list = new TodayList(Theme);
        _rule = new RulePane(Theme);
        _why = new TextPane(Theme);
        _list.ChosenChanged += (_, _) => ShowWhy();
        Add(_headline, _list, _rule, _why);
        Keys =
        [
            new("Enter", "the container, among the holdings", ToContainer, Key.Enter)
            {
                Brief = "to the container",
                Hindrance = () => Containers.Count == 0 ? "no container is chosen" : null,
            },
            .. ListKeys.Choosing(_list, static () => true),
            new("Shift-Down", "scroll the reasons", () => _why.Scroll(1), Key.CursorDown.WithShift) { Hindrance = WhyFits },
            new("Shift-Up", "scroll the reasons", () => _why.Scroll(-1), Key.CursorUp.WithShift) { Hindrance = WhyFits },
        ];
    }

    public override IReadOnlyList<KeyAction> Keys { get; }

    public override void Refresh()
    {
        TodayView today = Desk.Today();
        string date = today.Date.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);
        string counts = string.Create(null, $"{date}: {today.Containers} containers, {today.Wrong.Count} wrong, {today.Due.Count} due");
        _headline.Show(_ => [Line.Of(" " + counts)]);
        _list.Load(today);
    }

    protected override void Arrange(int columns, int rows)
    {
        _headline.Place(0, 0, columns, 1);
        if (columns >= WideFrom)
        {
            int left = columns * 55 / 100;
            _list.Place(0, 2, left, rows - 2);
            _rule.Place(left + 1, 2, columns - left - 1, 1);
            _why.Place(left + 1, 3, columns - left - 1, rows - 3);
            return;
        }

        int why = Math.Clamp(rows * 2 / 5, 5, 12);
        _list.Place(0, 1, columns, rows - why - 2);
        _rule.Place(0, rows - why - 1, columns, 1);
        _why.Place(0, rows - why, columns, why);
    }

    private IReadOnlyList<string> Containers =>
        _list.ChosenWrong?.Containers ?? (_list.ChosenDue is { } due ? [due.Container] : []);

    private string? WhyFits() => _why.Overflows ? null : "all of it is in sight";

    private void ToContainer() => Context.Go.ToContainer(Containers[0]);

    private void ShowWhy()
    {
        Card card = _list switch
        {
            { ChosenWrong: { } wrong } => OfWrong(wrong),
            { ChosenDue: { } due } => OfDue(due),
            _ => new Card("Nothing is wrong and nothing is due", []),
        };
        _rule.Name(card.Title);
        _why.Show(columns => CardLines.Of(card, columns));
    }

    private static Card OfWrong(WrongLine wrong) => new(TodayList.Word(wrong.Weight),
    [
        new("",
        [
            new("what", wrong.Title, wrong.Weight),
            new("because", wrong.Because),
            new("source", wrong.Source),
            new("containers", wrong.Containers.Count == 0 ? "none in particular" : string.Join(", ", wrong.Containers)),
        ]),
    ]);

    private static Card OfDue(DueLine due) => new("due",
    [
        new("",
        [
            new("what", $"{due.What}: {due.Content}, {due.Container}"),
            new("since", due.Since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            new("because", due.Because),
            new("source", due.Source),
            new("stands in", due.Place),
        ]),
    ]);
}
