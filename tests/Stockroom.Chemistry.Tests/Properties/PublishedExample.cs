using System.Text.Json;

namespace Stockroom.Chemistry.Tests.Properties;

/// <summary>One worked example of a set outside the project: what goes in, what must come out and how near.</summary>
internal sealed record PublishedExample(string Id, string Model, JsonElement Inputs, JsonElement Expected, double Tolerance)
{
    public static IReadOnlyList<PublishedExample> All()
    {
        var folder = Environment.GetEnvironmentVariable("STOCKROOM_REFERENCE");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "STOCKROOM_REFERENCE does not name a folder of worked examples");
        return [.. File.ReadLines(Path.Combine(folder!, "physics", "worked_examples.jsonl")).Where(l => l.Length > 0).Select(Read)];
    }

    private static PublishedExample Read(string line)
    {
        var json = JsonDocument.Parse(line).RootElement;
        return new PublishedExample(
            json.GetProperty("id").GetString()!, json.GetProperty("model").GetString()!, json.GetProperty("inputs"), json.GetProperty("expected"), json.GetProperty("rel_tol").GetDouble());
    }

    public double this[string input] => Inputs.GetProperty(input).GetDouble();

    public string Text(string input) => Inputs.GetProperty(input).GetString()!;

    public double Or(string input, double otherwise) => Inputs.TryGetProperty(input, out var value) ? value.GetDouble() : otherwise;

    /// <summary>What is wrong with the figures computed; null where all expected ones come out.</summary>
    public string? Fault(IReadOnlyDictionary<string, double> computed)
    {
        foreach (var expected in Expected.EnumerateObject())
        {
            var published = expected.Value.GetDouble();
            if (!computed.TryGetValue(expected.Name, out var actual))
                return $"{Id}: nothing computes {expected.Name}";
            if (!(Math.Abs(actual - published) <= Tolerance * Math.Abs(published)))
                return $"{Id}: {expected.Name} {actual:G6} where {published:G6} within {Tolerance:P1} is published";
        }

        return null;
    }
}
