namespace Stockroom.Chemistry.Catalogue;

/// <summary>The outcome of looking a name up: the content it means, or why there is none and what is near.</summary>
public sealed record Resolution
{
    private Resolution(Content? content, string? problem, IReadOnlyList<string> nearest)
    {
        Content = content;
        Problem = problem;
        Nearest = nearest;
    }

    public Content? Content { get; }

    /// <summary>One line for the keeper, null where a content was found.</summary>
    public string? Problem { get; }

    public IReadOnlyList<string> Nearest { get; }

    public static Resolution Found(Content content) => new(content, null, []);

    public static Resolution Miss(string problem, IReadOnlyList<string> nearest) => new(null, problem, nearest);
}
