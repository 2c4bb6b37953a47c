using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>How a path stands in the network of ways out.</summary>
public enum PathRole
{
    /// <summary>Out of the vapour over the content; a cover slows it, and so does a packing.</summary>
    Leak = 0,

    /// <summary>Out of the content itself through the vessel's body; a cover does not matter, a packing slows it.</summary>
    Direct,

    /// <summary>In series before the leaks, or before all that leaves the vessel.</summary>
    Barrier,

    /// <summary>Strength is lost, mass stays.</summary>
    Strength,

    /// <summary>The content turns into something else that stays in the vessel: gone as content, still there for a balance.</summary>
    Transmuted,
}

/// <summary>Whether a path takes part.</summary>
public enum PathVerdict
{
    /// <summary>It does, with a rate (which may be nothing).</summary>
    Applies = 0,

    /// <summary>It does not, for the reason given.</summary>
    Absent,

    /// <summary>It may, but what is needed to say how much is not known.</summary>
    Unknown,
}

/// <summary>A part of the content and how fast it leaves.</summary>
public sealed record Leaving(Substance Part, Band<MassRate> Rate);

/// <summary>The finding of one path. The reason is put into words only when read.</summary>
public sealed class PathLoss
{
    private readonly Func<string> _because;
    private readonly Func<IReadOnlyList<SheetLag>>? _lags;

    private PathLoss(PathVerdict verdict, PathRole role, IReadOnlyList<Leaving> leaves, Func<string> because, Provenance? source, Func<IReadOnlyList<SheetLag>>? lags = null)
    {
        Verdict = verdict;
        Role = role;
        Leaves = leaves;
        _because = because;
        Source = source;
        _lags = lags;
    }

    public PathVerdict Verdict { get; }

    public PathRole Role { get; }

    public IReadOnlyList<Leaving> Leaves { get; }

    public string Because => _because();

    public Provenance? Source { get; }

    /// <summary>For a barrier: the share of the leaks' rate that it leaves, given the leaks as conductance.</summary>
    public IBarrier? Barrier { get; private init; }

    /// <summary>Volatile parts that may go this way too, and of which the tables do not say how fast.</summary>
    public IReadOnlyList<string> NotCounted { get; private init; } = [];

    /// <summary>True for a wall or liner, which does not let through at once what it will.</summary>
    public bool HasLags => _lags is not null;

    /// <summary>Of a wall or liner, part by part; empty else.</summary>
    public IReadOnlyList<SheetLag> Lags => _lags?.Invoke() ?? [];

    public static PathLoss Of(PathRole role, IReadOnlyList<Leaving> leaves, Func<string> because, Provenance? source) =>
        new(PathVerdict.Applies, role, leaves, because, source);

    /// <summary>Through a sheet that has first to be soaked.</summary>
    public static PathLoss Through(
        PathRole role, IReadOnlyList<Leaving> leaves, IReadOnlyList<string> notCounted, Func<IReadOnlyList<SheetLag>> lags, Func<string> because, Provenance? source) =>
        new(PathVerdict.Applies, role, leaves, because, source, lags) { NotCounted = notCounted };

    public static PathLoss ByBarrier(IBarrier barrier, Func<string> because, Provenance? source) =>
        new(PathVerdict.Applies, PathRole.Barrier, [], because, source) { Barrier = barrier };

    public static PathLoss Absent(string because) => new(PathVerdict.Absent, PathRole.Leak, [], () => because, null);

    public static PathLoss Unknown(string because) => new(PathVerdict.Unknown, PathRole.Leak, [], () => because, null);
}
