using Stockroom.Screens.Drawing;
using Stockroom.Themes;
using Stockroom.Views;

namespace Stockroom.Screens.Shell;

/// <summary>The rule under the rooms; where something stands over every screen, it says that in the rule's place.</summary>
internal sealed class StandingRule(Theme theme, Func<Standing?> standing) : LinePane(theme)
{
    protected override Line Compose(int row, int columns) => standing() is { } said
        ? Line.Of($" {CardLines.Sign(said.Weight).Trim()} {TextFit.Clean(said.Text)}", Theme.ToneOf(said.Weight))
        : Line.Of(string.Concat(Enumerable.Repeat(Theme.Glyphs.Rule, Math.Max(0, columns))), Tone.Quiet);
}
