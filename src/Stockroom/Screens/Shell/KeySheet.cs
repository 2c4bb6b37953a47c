using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Shell;

/// <summary>The keys that work now, and the signs, as lines of a text.</summary>
internal static class KeySheet
{
    public static IReadOnlyList<Line> Lines(string title, IEnumerable<KeyAction> here, IEnumerable<KeyAction> everywhere)
    {
        var lines = new List<Line> { Line.Of($" Keys that work now in {title}", Tone.Heading) };
        lines.AddRange(ToLines(here));
        lines.Add(Line.Of(" Everywhere", Tone.Heading));
        lines.AddRange(ToLines(everywhere));
        lines.Add(Line.Of(" Signs", Tone.Heading));
        lines.Add(ToLine("!  *  -", "in a list: wrong, due, hands off"));
        string margins = string.Join("  ", new[] { Attention.Danger, Attention.Warning, Attention.Notice }.Select(a => CardLines.Sign(a).Trim()));
        lines.Add(ToLine(margins, "on a card: danger, warning, notice"));
        return lines;
    }

    /// <summary>Keys that do the same, or the same in two directions, share a line.</summary>
    private static IEnumerable<Line> ToLines(IEnumerable<KeyAction> actions) => actions
        .Where(a => a.Works)
        .GroupBy(a => a.Help, StringComparer.Ordinal)
        .Select(g => ToLine(string.Join(" or ", g.Select(a => a.Name).Distinct(StringComparer.Ordinal)), g.Key));

    private static Line ToLine(string name, string help) =>
        new([new($"   {name.PadRight(22)} ", Tone.Plain), new(help, Tone.Quiet)]);
}
