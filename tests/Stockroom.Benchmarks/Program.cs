using System.Diagnostics;
using BenchmarkDotNet.Running;
using Stockroom.Benchmarks;

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

    var shelves = new ForecastBenchmark();
    shelves.FillTheShelves();
    for (var i = 0; i < 5; i++)
    {
        var watch = Stopwatch.StartNew();
        var left = shelves.ForecastAYear();
        Console.WriteLine($"20,000 forecasts of a year, {left / 1000:0} kg left: {watch.ElapsedMilliseconds} ms");
    }

    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ClassificationBenchmark).Assembly).Run(args);
