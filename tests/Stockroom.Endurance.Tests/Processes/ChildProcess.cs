using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Plain;
using Stockroom.Storage;
using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Processes;

/// <summary>
/// Started once more with a variable set, the test program is a keeper's program: it opens the book named there and books
/// weigh-ins, printing each entry's number when, and only when, it is acknowledged.
/// </summary>
internal static class ChildProcess
{
    private const string BookVariable = "STOCKROOM_ENDURANCE_CHILD";
    private const string CountVariable = "STOCKROOM_ENDURANCE_CHILD_ENTRIES";

    private const string PlainVariable = "STOCKROOM_ENDURANCE_CHILD_PLAIN";

    public const int RefusedCode = 3;

    /// <summary>The same with LiteDB alone in a folder, which must be there.</summary>
    public static Process StartPlain(string folder) => Start(PlainVariable, folder);

    public static Process Start(string folder, int entries) => Start(BookVariable, folder, entries);

    private static Process Start(string variable, string folder, int entries = 0)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment[variable] = folder;
        start.Environment[CountVariable] = entries.ToString(CultureInfo.InvariantCulture);
        return Process.Start(start)!;
    }

    [ModuleInitializer]
    internal static void Begin()
    {
        if (Environment.GetEnvironmentVariable(BookVariable) is { } folder)
            Environment.Exit(Run(folder, int.Parse(Environment.GetEnvironmentVariable(CountVariable)!, CultureInfo.InvariantCulture)));
    }

    [ModuleInitializer]
    internal static void BeginPlain()
    {
        if (Environment.GetEnvironmentVariable(PlainVariable) is not { } folder)
            return;
        using var store = new PlainStore(LocalDisk.Instance, folder);
        for (var number = store.Read().Count + 1; ; number++)
        {
            store.Insert(number);
            Console.Out.WriteLine(number.ToString(CultureInfo.InvariantCulture));
            Console.Out.Flush();
        }
    }

    private static int Run(string folder, int entries)
    {
        try
        {
            using var book = StockBookFolder.Open(folder, clock: new StillClock());
            var container = book.Ledger.State.Present.First().Id;
            for (var i = 0; i < entries; i++)
            {
                var booked = book.Append(new Transaction("child", new Weighed { HappenedAt = StillClock.Now, Container = container, GrossGrams = i + 1 }));
                Console.Out.WriteLine(booked[0].Number.ToString(CultureInfo.InvariantCulture));
                Console.Out.Flush();
            }

            Console.Out.WriteLine("done");
            Console.Out.Flush();
            Console.In.ReadLine();
            return 0;
        }
        catch (BookUnavailableException e)
        {
            Console.Out.WriteLine("refused: " + e.Message);
            return RefusedCode;
        }
    }
}
