using System.Globalization;
using System.Runtime.CompilerServices;

namespace Stockroom.Assessment.Tests.Losses.Recorded;

/// <summary>
/// What was forecast for some hundred bottles when it was last looked at, in recorded-forecasts.txt. That a figure stands here does not make it
/// right: the worked examples, the published points and the simulated bottles are for that. It makes sure that no figure and no word changes
/// unseen. Where a change is meant: STOCKROOM_ACCEPT_GOLDEN=1, read the difference, commit it with the reason.
/// </summary>
public sealed class RecordedForecastTests
{
    private const double RelativeTolerance = 2e-4;

    [Fact]
    public void Forecasts_AreAsTheyWereLastLookedAt()
    {
        if (Environment.GetEnvironmentVariable("STOCKROOM_ACCEPT_GOLDEN") == "1")
            File.WriteAllLines(SourceFile(), Now());
        var then = Recorded();
        var (at, count) = ("", 0);

        // One bottle after the other: what differs at the first one is said at once.
        foreach (var line in Now())
        {
            at = line.StartsWith('#') ? line : at;
            Assert.True(count < then.Length && IsSame(then[count], line), $"line {count + 1}, {at}\n  was {(count < then.Length ? then[count] : "nothing")}\n  is  {line}");
            count++;
        }

        Assert.Equal(then.Length, count);
    }

    // What was said word for word before is not said again.
    private static IEnumerable<string> Now()
    {
        var said = new HashSet<string>(StringComparer.Ordinal);
        return RecordedCases.All.SelectMany(c => RecordedForecast.Lines(c.Situation, c.Days).Select(l => l.TrimEnd()).Where(said.Add).Prepend($"# {c.Name}, {c.Days} days on"));
    }

    [Theory]
    [InlineData("a 1.0000 b", "a 1.0001 b", true)]
    [InlineData("a 1.0000 b", "a 1.0003 b", false)]
    [InlineData("a 0", "a 1E-13", true)]
    [InlineData("on 2100-01-05,", "on 2100-01-10,", true)]
    [InlineData("on 2100-01-05,", "on 2101-01-05,", false)]
    [InlineData("a b", "a c", false)]
    [InlineData("a b", "a", false)]
    public void Lines_AreTheSame_ToTheLastRoundingOnly(string then, string now, bool same) => Assert.Equal(same, IsSame(then, now));

    private static bool IsSame(string then, string now)
    {
        var (a, b) = (then.Split(' '), now.Split(' '));
        return a.Length == b.Length && a.Zip(b).All(p => p.First == p.Second || (Figure(p.First) is { } x && Figure(p.Second) is { } y && Math.Abs(x - y) <= 1e-12 + (RelativeTolerance * Math.Abs(x))));
    }

    // Days count from the bench's first day.
    private static double? Figure(string word)
    {
        var bare = word.Trim('(', ')', ',', ';', ':', '%');
        return DateOnly.TryParseExact(bare, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? 5000 + day.DayNumber - Bench.Day.DayNumber
            : double.TryParse(bare, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    private static string[] Recorded()
    {
        using var stream = typeof(RecordedForecastTests).Assembly.GetManifestResourceStream("recorded-forecasts.txt")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string SourceFile([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "recorded-forecasts.txt");
}
