using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>What a verb gave back: its exit code and both streams.</summary>
internal sealed record Answer(int Code, string Out, string Error)
{
    /// <summary>The one JSON document on standard output; anything beside it fails to parse.</summary>
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    /// <summary>One JSON document a line, in order.</summary>
    public IReadOnlyList<JsonElement> JsonLines => [.. Lines(Out).Select(l => JsonDocument.Parse(l).RootElement)];

    public IReadOnlyList<string> OutLines => Lines(Out);

    /// <summary>The only line on standard error.</summary>
    public string ErrorLine => Assert.Single(Lines(Error));

    /// <summary>Done, with nothing to attend to and no word on standard error.</summary>
    public Answer Done()
    {
        Assert.True(Code == 0 && Error.Length == 0, $"exit {Code}: {Error}{Out}");
        return this;
    }

    /// <summary>Refused: this exit code, exactly one line on standard error, no stack trace, nothing on standard output.</summary>
    public string Refused(int code)
    {
        Assert.True(Code == code, $"exit {Code} in place of {code}: {Error}{Out}");
        Assert.Empty(Out);
        Assert.DoesNotContain("   at ", Error, StringComparison.Ordinal);
        Assert.EndsWith("\n", Error, StringComparison.Ordinal);
        Assert.StartsWith("stockroom: ", ErrorLine, StringComparison.Ordinal);
        return ErrorLine["stockroom: ".Length..];
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
