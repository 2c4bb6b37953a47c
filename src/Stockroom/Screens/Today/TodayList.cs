using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Today;

/// <summary>What is wrong, then what is due, under two headings.</summary>
internal sealed class TodayList(Theme theme) : ListPane(theme)
{
    private readonly List<Entry> _entries = [];
    private DateOnly _date;

    public override int Count => _entries.Count;

    /// <summary>The finding that is chosen; null where nothing is wrong.</summary>
    public WrongLine? ChosenWrong => Chosen < 0 ? null : _entries[Chosen].Wrong;

    /// <summary>The task that is chosen; null where nothing is due.</summary>
    public DueLine? ChosenDue => Chosen < 0 ? null : _entries[Chosen].Due;

    public void Load(TodayView today)
    {
        int at = Chosen;
        _date = today.Date;
        _entries.Clear();
        _entries.Add(new Entry(today.Wrong.Count == 0 ? "Nothing is wrong" : "Wrong", null, null));
        _entries.AddRange(today.Wrong.Select(w => new Entry("", w, null)));
        _entries.Add(new Entry("", null, null));
        _entries.Add(new Entry(today.Due.Count == 0 ? "Nothing is due" : "Due", null, null));
        _entries.AddRange(today.Due.Select(d => new Entry("", null, d)));
        Reset(Math.Max(0, at));
    }

    public static string Word(Attention weight) => weight switch
    {
        Attention.Danger => "danger",
        Attention.Warning => "warning",
        _ => "notice",
    };

    protected override bool CanChoose(int index) => _entries[index].Wrong is not null || _entries[index].Due is not null;

    protected override Line ComposeRow(int index, int columns, bool chosen)
    {
        Entry entry = _entries[index];
        if (entry.Wrong is { } wrong) return ComposeWrong(wrong, columns, chosen);
        if (entry.Due is { } due) return ComposeDue(due, columns, chosen);
        return Line.Of(" " + entry.Heading, Tone.Heading);
    }

    private Line ComposeWrong(WrongLine wrong, int columns, bool chosen)
    {
        string sign = CardLines.Sign(wrong.Weight);
        string word = Word(wrong.Weight).PadRight(8);
        string id = (wrong.Containers.Count == 0 ? "" : wrong.Containers[0]).PadRight(7);
        return Row(sign, word, Theme.ToneOf(wrong.Weight), id, wrong.Title, "", columns, chosen);
    }

    private Line ComposeDue(DueLine due, int columns, bool chosen)
    {
        int days = _date.DayNumber - due.Since.DayNumber;
        string late = days switch { <= 0 => "today", 1 => "since 1 day", _ => string.Create(null, $"since {days} days") };
        return Row(" * ", "due     ", Tone.Notice, due.Container.PadRight(7), $"{due.What}: {due.Content}", late, columns, chosen);
    }

    private Line Row(string sign, string word, Tone tone, string id, string text, string right, int columns, bool chosen)
    {
        string hand = chosen ? Theme.Glyphs.Hand : " ";
        int room = columns - 1 - sign.Length - word.Length - id.Length - 1 - (right.Length == 0 ? 0 : right.Length + 2);
        string middle = id + TextFit.Pad(Theme.Show(TextFit.Clean(text)), room, Theme.Glyphs.Cut);
        string end = right.Length == 0 ? "" : "  " + right;
        if (chosen) return Line.Chosen(hand + sign + word + middle + end);
        return new Line([new(hand, Tone.Plain), new(sign + word, tone), new(middle, Tone.Plain), new(end, Tone.Quiet)]);
    }

    private sealed record Entry(string Heading, WrongLine? Wrong, DueLine? Due);
}
