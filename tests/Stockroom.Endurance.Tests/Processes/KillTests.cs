using System.Globalization;
using Stockroom.Endurance.Tests.Plain;
using Stockroom.Storage;
using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Processes;

/// <summary>A program is killed in the middle of a stream of acknowledged entries.</summary>
public sealed class KillTests
{
    [Fact]
    public async Task Kill_InAStreamOfEntries_LosesNoneThatWasAcknowledged()
    {
        var tally = new Tally("kills in a stream of entries");
        using var disk = new BookOnDisk();
        for (var trial = 0; trial < Counts.Of(10, 100); trial++)
        {
            var (acknowledged, random) = (0L, Counts.Trial(trial));
            using (var child = ChildProcess.Start(disk.Folder, int.MaxValue))
            {
                var stopAfter = random.Next(1, 120);
                for (var n = 0; n < stopAfter; n++)
                    acknowledged = long.Parse((await child.StandardOutput.ReadLineAsync())!, CultureInfo.InvariantCulture);
                await Task.Delay(random.Next(4));
                child.Kill();
                foreach (var line in (await child.StandardOutput.ReadToEndAsync()).Split('\n')[..^1])
                    acknowledged = long.Parse(line, CultureInfo.InvariantCulture);
                await child.WaitForExitAsync();
            }

            Assert.True(StockBookFolder.Verify(disk.Folder).Holds);
            using var book = StockBookFolder.Open(disk.Folder);
            var there = book.Ledger.Entries.Count;
            Assert.True(there == acknowledged || there == acknowledged + 1, $"seed {Counts.Seed}, trial {trial}: {acknowledged} acknowledged, {there} there");
            Assert.True(book.Verify().Holds);
            tally.Add(there == acknowledged ? "all there" : "all there and one that was not acknowledged");
        }

        tally.Print();
        Assert.Equal(Counts.Of(10, 100), tally.Total);
    }

    [Fact]
    public async Task Kill_LiteDbAlone_IsCountedForComparison()
    {
        var tally = new Tally("kills in a stream of entries, LiteDB alone");
        var folder = Directory.CreateTempSubdirectory("stockroom-endurance-").FullName;
        for (var trial = 0; trial < Counts.Of(10, 100); trial++)
        {
            var (acknowledged, random) = (0, Counts.Trial(trial));
            using var child = ChildProcess.StartPlain(folder);
            var stopAfter = random.Next(1, 120);
            for (var n = 0; n < stopAfter && await child.StandardOutput.ReadLineAsync() is { } line; n++)
                acknowledged = int.Parse(line, CultureInfo.InvariantCulture);
            await Task.Delay(random.Next(4));
            child.Kill();
            foreach (var line in (await child.StandardOutput.ReadToEndAsync()).Split('\n')[..^1])
                acknowledged = int.Parse(line, CultureInfo.InvariantCulture);
            await child.WaitForExitAsync();
            tally.Add(PlainStore.Answer(LocalDisk.Instance, acknowledged, folder));
        }

        Directory.Delete(folder, recursive: true);
        tally.Print();
        Assert.Equal(Counts.Of(10, 100), tally.Total);
    }
}
