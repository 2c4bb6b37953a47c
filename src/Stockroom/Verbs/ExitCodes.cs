namespace Stockroom.Verbs;

/// <summary>The exit codes that scripts rely on.</summary>
internal static class ExitCodes
{
    public const int Done = 0;

    /// <summary>Done, and something needs attention.</summary>
    public const int Attention = 1;

    /// <summary>The words were wrong.</summary>
    public const int Words = 2;

    /// <summary>The input or the book was refused.</summary>
    public const int Refused = 3;
}
