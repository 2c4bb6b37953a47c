using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Endurance.Tests.Books;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests.Processes;

/// <summary>
/// Started once more with a variable set, the test program is a keeper's program: it opens the book named there and books
/// weigh-ins, printing each entry's number when, and only when, it is acknowledged.
/// </summary>
internal static class ChildProcess
{
    private const string BookVariable = "STOCKROOM_ENDURANCE_CHILD";
    private const string CountVariable = "STOCKROOM_ENDURANCE_CHILD_ENTRIES";

    public const int RefusedCode = 3;

    public static Process Start(string folder, int entries)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment[BookVariable] = folder;
        start.Environment[CountVariable] = entries.ToString(CultureInfo.InvariantCulture);
        return Process.Start(start)!;
    }

    [ModuleInitializer]
    internal static void Begin()
    {
        if (Environment.GetEnvironmentVariable(BookVariable) is { } folder)
            Environment.Exit(Run(folder, int.Parse(Environment.GetEnvironmentVariable(CountVariable)!, CultureInfo.InvariantCulture)));
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
