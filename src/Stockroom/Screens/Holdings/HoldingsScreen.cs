using System.Drawing;
using System.Globalization;
using Stockroom.Screens.Drawing;
using Stockroom.Screens.Shell;
using Stockroom.Themes;
using Stockroom.Views;
using Terminal.Gui.Input;

namespace Stockroom.Screens.Holdings;

/// <summary>All containers, narrowed by what is typed, and the card of the chosen one.</summary>
internal sealed class HoldingsScreen : Screen, IFindsContainers
{
    private const int WideFrom = 110;

    private readonly FilterPane _filterPane;
    private readonly HoldingsList _list;
    private readonly RulePane _rule;
    private readonly TextPane _card;
    private readonly Dictionary<string, Card> _cards = new(StringComparer.Ordinal);
    private IReadOnlyList<HoldingRow> _all = [];
    private string _filter = "";
    private bool _onCard;

    public HoldingsScreen(ScreenContext context)
        : base(context)
    {
        _filterPane = new FilterPane(Theme);
        _list = new HoldingsList(Theme);
        _rule = new RulePane(Theme);
        _card = new TextPane(Theme);
        _list.ChosenChanged += (_, _) => ShowCard();
        Add(_filterPane, _list, _rule, _card);
        Keys =
        [
            new("Enter", "the card of the chosen container", Enter, Key.Enter, Key.CursorRight)
            {
                Brief = "to the card",
                Hindrance = () => _onCard ? "the keys go to the card already" : _list.Chosen < 0 && !ScannedCode.TryId(_filter, out _) ? "no container is chosen" : null,
            },
            new("Esc", "back to the list", () => GoTo(card: false), Key.Esc, Key.CursorLeft, Key.Enter)
            {
                Brief = "back to the list",
                Hindrance = () => _onCard ? null : "the keys go to the list already",
            },
            new("Esc", "clear the filter", () => SetFilter(""), Key.Esc)
            {
                Brief = "clears",
                Hindrance = () => _onCard ? "the keys go to the card" : _filter.Length == 0 ? "the filter is empty" : null,
            },
            new("Backspace", "take back a letter", TakeBack, Key.Backspace)
            {
                Hindrance = () => _filter.Length == 0 ? "the filter is empty" : null,
            },
            .. ListKeys.Choosing(_list, () => !_onCard),
            .. ListKeys.Scrolling(_card, () => _onCard),
        ];
    }

    public override IReadOnlyList<KeyAction> Keys { get; }

    public override bool TakesText => true;

    public override Point? Caret => _onCard ? null : new Point(_filterPane.CaretColumn, 0);

    public override void Refresh()
    {
        _cards.Clear();
        _all = Desk.Holdings();
        LoadList(_list.ChosenRow?.Id);
    }

    public override void Type(string text)
    {
        if (_filter.Length == 0 && string.IsNullOrWhiteSpace(text)) return;
        GoTo(card: false);
        SetFilter(_filter + text);
    }

    public bool ShowContainer(string id)
    {
        HoldingRow? row = _all.FirstOrDefault(r => string.Equals(r.Id, id, StringComparison.OrdinalIgnoreCase));
        if (row is null) return false;
        _filter = "";
        LoadList(row.Id);
        GoTo(card: true);
        return true;
    }

    protected override void Arrange(int columns, int rows)
    {
        _filterPane.Place(0, 0, columns, 1);
        if (columns >= WideFrom)
        {
            int left = columns * 55 / 100;
            _list.Place(0, 1, left, rows - 1);
            _rule.Place(left + 1, 1, columns - left - 1, 1);
            _card.Place(left + 1, 2, columns - left - 1, rows - 2);
            return;
        }

        int list = _onCard ? 4 : Math.Max(5, rows * 2 / 5);
        _list.Place(0, 1, columns, list);
        _rule.Place(0, list + 1, columns, 1);
        _card.Place(0, list + 2, columns, rows - list - 2);
    }

    private void Enter()
    {
        if (ScannedCode.TryId(_filter, out string id))
        {
            SetFilter("");
            Context.Go.ToScanned(id);
            return;
        }

        GoTo(card: true);
    }

    private void GoTo(bool card)
    {
        if (_onCard == card) return;
        _onCard = card;
        _list.HasKeys = !card;
        _list.SetNeedsDraw();
        TitleRule();
        SetNeedsLayout();
    }

    private void SetFilter(string filter)
    {
        _filter = filter;
        LoadList(_list.ChosenRow?.Id);
    }

    private void TakeBack()
    {
        GoTo(card: false);
        SetFilter(_filter[..^LastElement(_filter)]);
    }

    private static int LastElement(string text)
    {
        int[] starts = StringInfo.ParseCombiningCharacters(text);
        return text.Length - starts[^1];
    }

    private void LoadList(string? chosenId)
    {
        IReadOnlyList<HoldingRow> found = HoldingFilter.Apply(_all, _filter);
        _filterPane.Show(_filter, found.Count, _all.Count);
        _list.Load(found, chosenId);
    }

    private void ShowCard()
    {
        TitleRule();
        if (_list.ChosenRow is not { } row)
        {
            _card.Show(_ => [Line.Of(_all.Count == 0 ? " The book holds nothing yet." : " Nothing has all of these words. Esc clears them.")]);
            return;
        }

        Card card = CardOf(row.Id);
        _card.Show(columns => CardLines.Of(card, columns));
    }

    private void TitleRule()
    {
        string hand = _onCard ? Theme.Glyphs.Hand + " " : "";
        if (_list.ChosenRow is { } row) _rule.Name(hand + CardOf(row.Id).Title, string.Create(null, $"{_list.Chosen + 1} of {_list.Count}"));
        else _rule.Name("");
    }

    private Card CardOf(string id)
    {
        if (_cards.TryGetValue(id, out Card? known)) return known;
        return _cards[id] = Desk.CardOf(id);
    }
}
