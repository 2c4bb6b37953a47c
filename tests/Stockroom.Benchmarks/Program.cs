using System.Diagnostics;
using BenchmarkDotNet.Running;
using Stockroom.Benchmarks;
using Stockroom.Benchmarks.Arrangement;

// "--once" times each benchmark a few times without the harness, for a quick look while working on the code.
if (args is ["--once"])
{
    var benchmark = new ClassificationBenchmark();
    benchmark.MakeMixtures();
    for (var i = 0; i < 5; i++)
    {
        var watch = Stopwatch.StartNew();
        var count = benchmark.ClassifyTenThousand();
        Console.WriteLine($"10,000 eight-part mixtures, {count} categories: {watch.ElapsedMilliseconds} ms");
    }

    return 0;
}

// "--arrange COUNT SEEDS SECONDS" compares plans with an exact solver, a line a store.
if (args is ["--arrange", var containers, var seeds, var seconds])
    return ArrangementComparison.Run(int.Parse(containers), int.Parse(seeds), double.Parse(seconds));

BenchmarkSwitcher.FromAssembly(typeof(ClassificationBenchmark).Assembly).Run(args);
return 0;
