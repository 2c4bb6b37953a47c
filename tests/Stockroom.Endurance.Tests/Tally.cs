using System.Globalization;

namespace Stockroom.Endurance.Tests;

/// <summary>Counts how trials ended and prints one line with the seed; STOCKROOM_ENDURANCE_REPORT names a file that gets it too.</summary>
internal sealed class Tally(string what)
{
    private static readonly Lock Gate = new();
    private readonly SortedDictionary<string, int> _ends = new(StringComparer.Ordinal);

    public int this[string end] => _ends.GetValueOrDefault(end);

    public int Total => _ends.Values.Sum();

    public void Add(string end) => _ends[end] = _ends.GetValueOrDefault(end) + 1;

    public void Print()
    {
        var line = string.Create(CultureInfo.InvariantCulture, $"{what}: {Total} tried, {string.Join(", ", _ends.Select(e => $"{e.Value} {e.Key}"))} (seed {Counts.Seed})");
        TestContext.Current.TestOutputHelper?.WriteLine(line);
        if (Environment.GetEnvironmentVariable("STOCKROOM_ENDURANCE_REPORT") is not { Length: > 0 } report)
            return;
        lock (Gate)
            File.AppendAllText(report, line + "\n");
    }
}
