using System.Globalization;

namespace Stockroom.Assessment.Tests.Losses.Simulation;

/// <summary>What a run of seeds came to.</summary>
internal sealed class BottleTally
{
    private BottleTally(string name, IReadOnlyList<BottleStory> stories) => (Name, Stories) = (name, stories);

    public string Name { get; }

    public IReadOnlyList<BottleStory> Stories { get; }

    public static BottleTally Of(string name, int first, int bottles, int weighings) =>
        new(name, [.. Enumerable.Range(first, bottles).AsParallel().AsOrdered().Select(seed => BottleStory.Of(seed, weighings))]);

    public BottleTally Only(Func<string, bool> kind) => new(Name, [.. Stories.Where(s => kind(s.Kind))]);

    public IEnumerable<(string Kind, BottleTally Tally)> ByKind() =>
        Stories.Select(s => s.Kind).Distinct().Select(kind => (kind, Only(k => k == kind)));

    public IReadOnlyList<Asked> Asked(Func<Asked, bool> which) => [.. Stories.SelectMany(s => s.Asked).Where(which)];

    /// <summary>One kind, or all of them, in a line.</summary>
    public string Line(string what)
    {
        var (clean, forgotten, slipped) = (Asked(a => !a.Forgotten && !a.Slipped), Asked(a => a.Forgotten && !a.Slipped), Asked(a => a.Slipped));
        var honest = Stories.Where(s => s.Honest).ToList();
        return $"{Name}, {what}: held {Held(clean)}, after a forgotten draw {Held(forgotten)}, after a slip of the pen {Held(slipped)}; "
            + $"left a year on {Words(clean.Count(a => a.LeftHeld), clean.Count)}; middle width {MiddleWidth(clean):0.0}; false alarms {Words(honest.Count(s => s.Alarmed), honest.Count)}"
            + $" ({string.Join(' ', honest.Where(s => s.Alarmed).Select(s => s.Seed).Take(10))})";
    }

    public static double MiddleWidth(IReadOnlyList<Asked> asked) => asked.Count == 0 ? 1 : asked.Select(a => a.Width).Order().ElementAt(asked.Count / 2);

    public static string Words(int part, int whole) =>
        string.Create(CultureInfo.InvariantCulture, $"{part}/{whole} ({100.0 * part / Math.Max(1, whole):0.0} %)");

    private static string Held(IReadOnlyList<Asked> asked) => Words(asked.Count(a => a.Held), asked.Count);
}
