namespace Stockroom.Verbs;

/// <summary>What a verb may touch of the world outside: streams, clock, environment, terminal. Tests bring their own.</summary>
internal sealed record Surroundings
{
    public required TextReader In { get; init; }

    public required TextWriter Out { get; init; }

    public required TextWriter Error { get; init; }

    public required TimeProvider Clock { get; init; }

    /// <summary>Looks an environment variable up; null where it is not set.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>The folder for the keeper's own data.</summary>
    public required string DataFolder { get; init; }

    /// <summary>Name of whoever types, written into each entry.</summary>
    public required string User { get; init; }

    /// <summary>True where both input and output are a terminal.</summary>
    public required bool IsTerminal { get; init; }

    /// <summary>The books this run had to do with.</summary>
    public BooksSeen Seen { get; } = new();

    /// <summary>Today where the keeper is.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    public static Surroundings OfThisProcess() => new()
    {
        In = Console.In,
        Out = Console.Out,
        Error = Console.Error,
        Clock = TimeProvider.System,
        Variable = Environment.GetEnvironmentVariable,
        DataFolder = Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "stockroom"),
        User = Environment.UserName,
        IsTerminal = !Console.IsInputRedirected && !Console.IsOutputRedirected,
    };
}
