using Stockroom.Endurance.Tests.Disks;
using Stockroom.Storage.Disks;

namespace Stockroom.Endurance.Tests.Plain;

/// <summary>LiteDB alone with its files cut short, overwritten or exchanged.</summary>
public sealed class PlainDamageTests
{
    private const int Page = 8192;
    private const int Documents = 20;

    private delegate byte[] Damage(byte[] whole, Random random);

    [Fact]
    public void LiteDbAlone_Truncated_IsCounted() => Try("truncations, LiteDB alone", (whole, random) => whole[..random.Next(whole.Length)]);

    [Fact]
    public void LiteDbAlone_APageZeroed_IsCounted() => Try("zeroed pages, LiteDB alone", (whole, random) =>
    {
        whole.AsSpan(random.Next(whole.Length / Page) * Page, Page).Clear();
        return whole;
    });

    [Fact]
    public void LiteDbAlone_TwoPagesSwapped_IsCounted() => Try("swapped pages, LiteDB alone", (whole, random) =>
    {
        var (one, other) = (random.Next(whole.Length / Page) * Page, random.Next(whole.Length / Page) * Page);
        var kept = whole.AsSpan(one, Page).ToArray();
        whole.AsSpan(other, Page).CopyTo(whole.AsSpan(one));
        kept.CopyTo(whole.AsSpan(other));
        return whole;
    });

    [Fact]
    public void LiteDbAlone_GarbageBehind_IsCounted() => Try("garbage behind a file, LiteDB alone", (whole, random) =>
    {
        var garbage = new byte[random.Next(1, Page * 2)];
        random.NextBytes(garbage);
        return [.. whole, .. garbage];
    });

    [Fact]
    public void LiteDbAlone_ALogOfAnotherDay_IsCounted()
    {
        var tally = new Tally("logs of another day, LiteDB alone");
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var random = Counts.Trial(trial);
            var disk = new MemoryDisk();
            var logs = new List<byte[]>();
            for (var day = 0; day < 3; day++)
            {
                using var store = new PlainStore(disk);
                for (var i = 0; i < 4; i++)
                    store.Insert((day * 4) + i + 1);
                logs.Add(disk[PlainStore.Log]);
            }

            disk[PlainStore.Log] = logs[random.Next(logs.Count)];
            tally.Add(PlainStore.Answer(disk, 12));
        }

        tally.Print();
        Assert.Equal(Counts.Of(50, 200), tally.Total);
    }

    [Theory]
    [InlineData("every nth call failed once, LiteDB alone", 5, false)]
    [InlineData("disk full at each write, LiteDB alone", 28, true)]
    public void LiteDbAlone_TheDiskRefuses_IsCounted(string what, int error, bool writesOnly)
    {
        var tally = new Tally(what);
        for (var nth = 1; ; nth++)
        {
            var (calls, acknowledged) = (0, 0);
            var disk = new MemoryDisk { BytesThatGetThrough = Counts.Trial(nth).Next(300) };
            disk.Before = (call, _) =>
            {
                if (writesOnly && call is not (DiskCall.Write or DiskCall.SetLength))
                    return;
                calls++;
                if (writesOnly ? calls >= nth : calls == nth)
                    throw new IOException("rehearsed", error);
            };
            Live(disk, ref acknowledged);
            if (calls < nth)
                break;
            disk.Before = (_, _) => { };
            tally.Add(acknowledged == 0 ? "before there was anything" : PlainStore.Answer(disk, acknowledged));
        }

        tally.Print();
        Assert.True(tally.Total > Documents, $"only {tally.Total} calls");
    }

    private static void Live(IDisk disk, ref int acknowledged)
    {
        try
        {
            for (var session = 0; session < 4; session++)
            {
                using var store = new PlainStore(disk);
                for (var i = 0; i < 4; i++)
                {
                    store.Insert(acknowledged + 1);
                    acknowledged++;
                }
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // Whatever it throws, it has stopped; what it acknowledged is looked for afterwards.
        }
    }

    private static void Try(string what, Damage damage)
    {
        var disk = new MemoryDisk();
        using (var store = new PlainStore(disk))
        {
            for (var number = 1; number <= Documents; number++)
                store.Insert(number);
        }

        var tally = new Tally(what);
        for (var trial = 0; trial < Counts.Of(50, 200); trial++)
        {
            var damaged = disk.Copy();
            damaged[PlainStore.Data] = damage(damaged[PlainStore.Data], Counts.Trial(trial));
            tally.Add(PlainStore.Answer(damaged, Documents));
        }

        tally.Print();
        Assert.Equal(Counts.Of(50, 200), tally.Total);
    }
}
