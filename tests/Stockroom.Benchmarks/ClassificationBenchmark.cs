using BenchmarkDotNet.Attributes;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Benchmarks;

/// <summary>Ten thousand random mixtures of eight substances of the catalogue, the same ones every time.</summary>
[InProcess]
[MemoryDiagnoser]
public class ClassificationBenchmark
{
    private const int Mixtures = 10_000;
    private const int Parts = 8;

    private Content[] _contents = [];

    [GlobalSetup]
    public void MakeMixtures()
    {
        var random = new Random(20260101);
        var substances = SubstanceCatalogue.Default.Substances.Where(s => s.State is MatterState.Liquid or MatterState.Solid).ToArray();
        _contents = [.. Enumerable.Range(0, Mixtures).Select(i => Make(i, random, substances))];
        _ = HazardFacts.Default;
    }

    [Benchmark]
    public int ClassifyTenThousand()
    {
        var categories = 0;
        foreach (var content in _contents)
            categories += Classifier.Classify(content, HazardFacts.Default, RuleSet.Eu).Categories.Count;
        return categories;
    }

    // Every second one in water; shares of a hundredth of a per cent, all above zero.
    private static Content Make(int number, Random random, Substance[] substances)
    {
        var chosen = new Substance[Parts];
        for (var i = 0; i < Parts; i++)
            chosen[i] = i == 0 && number % 2 == 0 ? SubstanceCatalogue.Default["water"] : substances[random.Next(substances.Length)];
        var weights = chosen.Select(_ => random.Next(1, 1000)).ToArray();
        var whole = weights.Sum();
        var percents = weights.Select(w => Math.Max(0.01m, Math.Round(w * 100m / whole, 2))).ToArray();
        percents[^1] += 100m - percents.Sum();
        return new Content
        {
            Name = $"mixture {number}",
            State = MatterState.Liquid,
            Parts = [.. chosen.Zip(percents, (s, p) => new Part(s, p > 0 ? p : 0.01m))],
        };
    }
}
