namespace Stockroom.Verbs;

/// <summary>A request that is refused with one clear line; the exit code says whose fault it was.</summary>
internal sealed class RefusedException : Exception
{
    private RefusedException(string message, int exitCode)
        : base(message) => ExitCode = exitCode;

    public int ExitCode { get; }

    /// <summary>The words were wrong: exit 2.</summary>
    public static RefusedException Words(string message) => new(message, ExitCodes.Words);

    /// <summary>The input or the book was refused: exit 3.</summary>
    public static RefusedException Input(string message) => new(message, ExitCodes.Refused);
}
