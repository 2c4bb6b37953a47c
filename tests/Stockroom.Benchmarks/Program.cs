using System.Diagnostics;
using BenchmarkDotNet.Running;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Benchmarks;
using Stockroom.Benchmarks.Arrangement;

// "--once" times each benchmark a few times without the harness, for a quick look while working on the code; with a word after
// it, such as "--once neighbours", only those it names.
if (args is ["--once", ..])
{
    var only = args.Length > 1 ? args[1] : "";
    if (only is "" or "mixtures")
        Mixtures();
    if (only is "" or "neighbours")
        Neighbours();
    if (only is "" or "forecasts")
        Forecasts();
    if (only is "" or "labels")
        Printing();
    return 0;
}

// "--arrange COUNT SEEDS SECONDS SHARE" compares plans of stores of which that share stands anywhere with an exact solver, a line a store.
if (args is ["--arrange", var containers, var seeds, var seconds, var share])
    return ArrangementComparison.Run(int.Parse(containers), int.Parse(seeds), double.Parse(seconds), double.Parse(share));

BenchmarkSwitcher.FromAssembly(typeof(ClassificationBenchmark).Assembly).Run(args);
return 0;

static void Mixtures()
{
    var benchmark = new ClassificationBenchmark();
    benchmark.MakeMixtures();
    for (var i = 0; i < 5; i++)
    {
        var watch = Stopwatch.StartNew();
        var count = benchmark.ClassifyTenThousand();
        Console.WriteLine($"10,000 eight-part mixtures, {count} categories: {watch.ElapsedMilliseconds} ms");
    }
}

static void Forecasts()
{
    var shelves = new ForecastBenchmark();
    shelves.FillTheShelves();
    for (var i = 0; i < 5; i++)
    {
        var watch = Stopwatch.StartNew();
        var before = Environment.CpuUsage.TotalTime;
        var left = shelves.ForecastAYear();
        Console.WriteLine($"20,000 forecasts of a year, {left / 1000:0} kg left: {watch.ElapsedMilliseconds} ms, {(Environment.CpuUsage.TotalTime - before).TotalMilliseconds:0} ms of processor on {Environment.ProcessorCount} cores");
    }
}

static void Neighbours()
{
    foreach (var (table, mixed) in (IEnumerable<(ClassTable, bool)>)[(ClassTable.None, false), (ClassTable.Sea, false), (ClassTable.None, true)])
    {
        foreach (var count in (int[])[1_000, 5_000, 20_000, 100_000])
        {
            var benchmark = new NeighbourBenchmark { Containers = count, Table = table, Mixed = mixed };
            benchmark.MakeStore();
            for (var i = 0; i < 3; i++)
            {
                var watch = Stopwatch.StartNew();
                var wrong = benchmark.FindAll();
                var elapsed = watch.Elapsed;
                Console.WriteLine($"{count:N0} containers in {count / 100:N0} cabinets{(mixed ? ", all mixed" : "")}, table {ClassTableWords.Of(table)}, {wrong:N0} pairs wrong: {elapsed.TotalMilliseconds:0} ms, {elapsed.TotalMicroseconds / count:0.0} us a container");
            }
        }
    }
}

static void Printing()
{
    foreach (var stock in new[] { "a4-2x4", "a4-3x8", "a4-4x12" })
    {
        var labels = new LabelPrinting { Stock = stock };
        labels.ThousandLabels();
        for (var i = 0; i < 3; i++)
        {
            var (watch, before) = (Stopwatch.StartNew(), Process.GetCurrentProcess().TotalProcessorTime);
            var bytes = labels.ThousandLabels();
            Console.WriteLine($"1,000 labels on {stock}: {watch.ElapsedMilliseconds} ms, {(Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds:0} ms of processor, {bytes / 1e6:0.00} MB");
        }
    }
}
