using Stockroom.Endurance.Tests.Disks;

namespace Stockroom.Endurance.Tests.Plain;

/// <summary>The same faults with LiteDB alone: what the journal, the syncs and the hashes are for. A clean run here would make them needless.</summary>
public sealed class PlainTests
{
    [Fact]
    public void LiteDbAlone_PowerCut_LosesWhatItAcknowledged()
    {
        var tally = new Tally($"power cuts, LiteDB alone, blocks of {Counts.BlockSize} B");
        for (var life = 0; tally.Total < Counts.Of(100, 1000); life++)
        {
            var random = Counts.Trial(life);
            var cuts = new List<(MemoryDisk Left, int Acknowledged)>();
            var acknowledged = 0;
            var disk = new MemoryDisk(Counts.BlockSize);
            Begin(disk);
            disk.After = (_, _) =>
            {
                if (random.Next(20) == 0 && cuts.Count < 5)
                    cuts.Add((disk.AfterPowerCut(random), acknowledged));
            };
            var store = new PlainStore(disk);
            for (var number = 1; number <= 20; number++)
            {
                store.Insert(number);
                acknowledged = number;
                if (random.Next(6) != 0)
                    continue;
                store.Dispose();
                store = new PlainStore(disk);
            }

            store.Dispose();
            foreach (var (left, count) in cuts)
                tally.Add(PlainStore.Answer(left, count));
        }

        tally.Print();
        Assert.True(tally["whole"] < tally.Total, "LiteDB alone came through every power cut");
    }

    [Fact]
    public void LiteDbAlone_OneBitFlipped_AnswersWronglyInSilence()
    {
        var disk = new MemoryDisk();
        using (var store = new PlainStore(disk))
        {
            for (var number = 1; number <= 20; number++)
                store.Insert(number);
        }

        var whole = disk[PlainStore.Data];
        var tally = new Tally("bit flips, LiteDB alone");
        for (var trial = 0; trial < Counts.Of(150, 600); trial++)
        {
            var bit = Counts.Trial(trial).Next(whole.Length * 8);
            var flipped = (byte[])whole.Clone();
            flipped[bit / 8] ^= (byte)(1 << (bit % 8));
            var damaged = disk.Copy();
            damaged[PlainStore.Data] = flipped;
            tally.Add(PlainStore.Answer(damaged, 20));
        }

        tally.Print();
        Assert.True(tally["wrong in silence"] > 0, "LiteDB alone noticed every flip");
    }

    // The empty store and its names are safe before the first cut.
    private static void Begin(MemoryDisk disk)
    {
        new PlainStore(disk).Dispose();
        disk.SyncFolder("/plain");
        var safe = disk.Copy();
        disk[PlainStore.Data] = safe[PlainStore.Data];
        disk[PlainStore.Log] = safe[PlainStore.Log];
    }
}
