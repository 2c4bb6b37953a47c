using Stockroom.Endurance.Tests.Books;
using Stockroom.Endurance.Tests.Disks;

namespace Stockroom.Endurance.Tests;

/// <summary>Files of a book cut short, overwritten with zeros, their pages exchanged, or a file of another book or day in their place.</summary>
public sealed class DamageTests
{
    private const int Page = 8192;

    private delegate byte[] Damage(byte[] whole, Random random);

    [Fact]
    public void Book_AFileTruncated_IsRefusedRepairedAndToldOrHarmless() =>
        Try("truncations", BookInMemory.Files, (whole, random) => whole[..random.Next(whole.Length)]);

    [Fact]
    public void Book_APageZeroed_IsRefusedRepairedAndToldOrHarmless() =>
        Try("zeroed pages", BookInMemory.Files, (whole, random) =>
        {
            var size = Math.Min(Page, whole.Length / 4);
            whole.AsSpan(random.Next((whole.Length - 1) / size) * size, size).Clear();
            return whole;
        });

    [Fact]
    public void Book_TwoPagesSwapped_IsRefusedRepairedAndToldOrHarmless() =>
        Try("swapped pages", [BookInMemory.Journal, BookInMemory.Lite, BookInMemory.LiteLog, BookInMemory.Snapshot], (whole, random) =>
        {
            var size = Math.Min(Page, whole.Length / 8);
            var (one, other) = (random.Next(whole.Length / size) * size, random.Next(whole.Length / size) * size);
            var kept = whole.AsSpan(one, size).ToArray();
            whole.AsSpan(other, size).CopyTo(whole.AsSpan(one));
            kept.CopyTo(whole.AsSpan(other));
            return whole;
        });

    [Fact]
    public void Book_GarbageBehindAFile_IsRefusedRepairedAndToldOrHarmless() =>
        Try("garbage behind a file", BookInMemory.Files, (whole, random) =>
        {
            var garbage = new byte[random.Next(1, Page * 2)];
            random.NextBytes(garbage);
            return [.. whole, .. garbage];
        });

    [Fact]
    public void Book_AFileOfAnotherBook_IsRefusedRepairedAndToldOrHarmless()
    {
        var (other, _) = BookInMemory.Filled(Counts.Trial(77), transactions: 14, killed: true);
        var paths = new Queue<string>();
        Try("files of another book", BookInMemory.Files, (_, random) => other[paths.Dequeue()], paths.Enqueue);
    }

    [Fact]
    public void Book_LiteDbsLogOfAnotherDay_IsRefusedRepairedAndToldOrHarmless()
    {
        var tally = new Tally("logs of another day of the same book");
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var random = Counts.Trial(trial);
            var disk = new MemoryDisk();
            var days = new List<byte[]>();
            using (var book = BookInMemory.Make(disk))
                Steps.Begin(book);
            for (var day = 0; day < 3; day++)
            {
                using var book = BookInMemory.Open(disk);
                for (var i = 0; i < 4; i++)
                    Steps.Next(book, random);
                days.Add(disk[BookInMemory.LiteLog]);
            }

            var judgement = Judgement.Of(disk);
            disk[BookInMemory.LiteLog] = days[random.Next(days.Count)];
            tally.Add(judgement.On(disk, $"seed {Counts.Seed}, trial {trial}"));
        }

        tally.Print();
        Assert.True(tally.Total > 0);
    }

    [Fact]
    public void Book_SnapshotOfAnotherDay_IsNeverBelievedBeyondTheJournal()
    {
        var tally = new Tally("snapshots of another day of the same book");
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var random = Counts.Trial(trial);
            var disk = new MemoryDisk();
            using (var book = BookInMemory.Make(disk))
                Steps.Begin(book);
            var days = new List<(byte[] Snapshot, byte[] Journal, byte[] Lite)>();
            for (var day = 0; day < 4; day++)
            {
                using (var book = BookInMemory.Open(disk))
                {
                    for (var i = 0; i < 3; i++)
                        Steps.Next(book, random);
                }

                days.Add((disk[BookInMemory.Snapshot], disk[BookInMemory.Journal], disk[BookInMemory.Lite]));
            }

            var (of, at) = (random.Next(days.Count), random.Next(days.Count));
            (disk[BookInMemory.Journal], disk[BookInMemory.Lite], disk[BookInMemory.Snapshot]) = (days[of].Journal, days[of].Lite, days[of].Snapshot);
            var judgement = Judgement.Of(disk);
            disk[BookInMemory.Snapshot] = days[at].Snapshot;
            var answer = judgement.On(disk, $"seed {Counts.Seed}, trial {trial}");
            Assert.Equal(at > of ? "refused" : "harmless", answer);
            tally.Add(at > of ? "newer than the journal: refused, for the journal was cut short" : "as old or older: used as far as it goes");
        }

        tally.Print();
        Assert.Equal(Counts.Of(50, 200), tally.Total);
    }

    private static void Try(string what, IReadOnlyList<string> files, Damage damage, Action<string>? tell = null)
    {
        var tally = new Tally(what);
        var (killed, _) = BookInMemory.Filled(Counts.Trial(3), transactions: 14, killed: true);
        var (closed, _) = BookInMemory.Filled(Counts.Trial(4), transactions: 14, killed: false);
        var judgements = new Dictionary<MemoryDisk, Judgement> { [killed] = Judgement.Of(killed), [closed] = Judgement.Of(closed) };
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var random = Counts.Trial(trial);
            var path = files[random.Next(files.Count)];
            var disk = path == BookInMemory.LiteLog || random.Next(2) == 0 ? killed : closed;
            tell?.Invoke(path);
            var damaged = disk.Copy();
            damaged[path] = damage(damaged[path], random);
            tally.Add(judgements[disk].On(damaged, $"seed {Counts.Seed}, {what}, trial {trial}, {Path.GetFileName(path)}"));
        }

        tally.Print();
        Assert.True(tally["refused"] + tally["repaired from the journal and told"] > 0, "nothing was noticed");
    }
}
