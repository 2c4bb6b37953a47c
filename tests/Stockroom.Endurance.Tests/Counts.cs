using System.Globalization;

namespace Stockroom.Endurance.Tests;

/// <summary>How often each fault is tried, and from which seed. STOCKROOM_ENDURANCE=full asks for the larger counts.</summary>
internal static class Counts
{
    public static bool IsFull { get; } = Environment.GetEnvironmentVariable("STOCKROOM_ENDURANCE") == "full";

    /// <summary>STOCKROOM_ENDURANCE_SEED repeats a run; otherwise each run draws its own.</summary>
    public static int Seed { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("STOCKROOM_ENDURANCE_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : Random.Shared.Next(1, 1_000_000);

    /// <summary>STOCKROOM_ENDURANCE_BLOCK sets the block that survives or not in a power cut: 4096, 512 or 8192 bytes.</summary>
    public static int BlockSize { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("STOCKROOM_ENDURANCE_BLOCK"), CultureInfo.InvariantCulture, out var size) ? size : Disks.MemoryDisk.UsualBlock;

    public static int Of(int small, int full) => IsFull ? full : small;

    /// <summary>The random numbers of one trial, the same for the same seed.</summary>
    public static Random Trial(int number) => new(unchecked((Seed * 7919) + number));
}
