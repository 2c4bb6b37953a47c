using System.Diagnostics;
using Stockroom.Storage;

namespace Stockroom.Endurance.Tests.Processes;

/// <summary>Two programs open one book at the same moment.</summary>
public sealed class PairTests
{
    private const int Pairs = 20;
    private const int EntriesEach = 5;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Open_TwoProgramsAtOnce_OneWritesAndTheOtherIsToldWho()
    {
        var tally = new Tally("pairs of processes on one book");
        using var disk = new BookOnDisk();
        for (var pair = 0; pair < Pairs; pair++)
        {
            using var one = ChildProcess.Start(disk.Folder, EntriesEach);
            using var other = ChildProcess.Start(disk.Folder, EntriesEach);
            var answers = await Task.WhenAll(Answer(one), Answer(other)).WaitAsync(Patience);
            var refusal = Assert.Single(answers, a => a.StartsWith("refused: ", StringComparison.Ordinal));
            var (refused, holder) = answers[0] == refusal ? (one, other) : (other, one);
            Assert.Contains($"is open in process {holder.Id} on {Environment.MachineName} since", refusal, StringComparison.Ordinal);
            await refused.WaitForExitAsync();
            Assert.Equal(ChildProcess.RefusedCode, refused.ExitCode);
            await holder.StandardInput.WriteLineAsync();
            await holder.WaitForExitAsync();
            Assert.Equal(0, holder.ExitCode);
            using var book = StockBookFolder.Open(disk.Folder);
            Assert.Equal(BookOnDisk.FirstEntries + ((pair + 1) * EntriesEach), book.Ledger.Entries.Count);
            Assert.True(book.Verify().Holds);
            tally.Add("one wrote, the other was refused");
        }

        tally.Print();
    }

    // Reads on to the last line that matters: "done", or a refusal.
    private static async Task<string> Answer(Process child)
    {
        while (await child.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line == "done" || line.StartsWith("refused: ", StringComparison.Ordinal))
                return line;
        }

        return "nothing";
    }
}
