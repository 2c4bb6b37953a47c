using Stockroom.Verbs;

namespace Stockroom.Tests.Verbs;

public sealed class VerbListTests
{
    public static TheoryData<string> Names => [.. VerbList.All.Select(v => v.Name)];

    [Fact]
    public void Assembly_EveryVerb_StandsInTheList()
    {
        var written = typeof(IVerb).Assembly.GetTypes().Where(t => t.IsAssignableTo(typeof(IVerb)) && !t.IsAbstract);
        Assert.Empty(written.Except(VerbList.All.Select(v => v.GetType())).Select(t => t.Name));
    }

    [Fact]
    public void List_Names_AreUniqueLowerCaseWordsWithASummary()
    {
        Assert.Equal(VerbList.All.Count, VerbList.All.Select(v => v.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(VerbList.All, v => Assert.Matches("^[a-z]+$", v.Name));
        Assert.All(VerbList.All, v => Assert.Matches("^[A-Z].{8,}[^.]$", v.Summary));
    }

    // The verbs that the first version of the program has by its contract.
    [Theory]
    [InlineData("demo open today list show add move weigh correct undo ledger place facts forecast pair neighbours label stocks export verify")]
    [InlineData("rounds places vessels closures covers classify completions")]
    public void List_OfTheContract_IsThere(string names) =>
        Assert.Empty(names.Split(' ').Except(VerbList.All.Select(v => v.Name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Help_OfAVerb_PrintsItsSummaryAndExitsZero(string verb)
    {
        using var keeper = new Keeper();
        var answer = keeper.Run(verb, "--help").Done();
        Assert.Contains(VerbList.All.Single(v => v.Name == verb).Summary, answer.Out, StringComparison.Ordinal);
        Assert.Contains("stockroom", answer.Out, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("add")]
    [InlineData("list")]
    [InlineData("limit")]
    public void Help_OfAPlaceVerb_ExitsZero(string verb)
    {
        using var keeper = new Keeper();
        Assert.Contains("--book", keeper.Run("place", verb, "--help").Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_OfTheProgram_ListsEveryVerb()
    {
        using var keeper = new Keeper();
        var answer = keeper.Run("--help").Done();
        Assert.All(VerbList.All, v => Assert.Contains(v.Summary, answer.Out, StringComparison.Ordinal));
    }

    // Every verb that reads answers as JSON; what it needs besides is looked up in its help.
    [Theory]
    [InlineData("today", "rounds", "list", "show", "places", "ledger", "facts", "classify", "forecast", "vessels", "closures", "covers")]
    [InlineData("pair", "neighbours", "stocks", "verify", "add", "move", "weigh", "correct", "undo", "label")]
    public void Help_OfAReadingOrWritingVerb_OffersJson(params string[] verbs)
    {
        using var keeper = new Keeper();
        Assert.All(verbs, v => Assert.Contains("--json", keeper.Run(v, "--help").Done().Out, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("bash", "complete -F")]
    [InlineData("zsh", "compdef")]
    [InlineData("fish", "complete -f -c stockroom")]
    [InlineData("powershell", "Register-ArgumentCompleter")]
    public void Completions_OfAShell_AskTheProgramItself(string shell, string words)
    {
        using var keeper = new Keeper();
        var script = keeper.Run("completions", shell).Done().Out;
        Assert.Contains(words, script, StringComparison.Ordinal);
        Assert.Contains("[suggest:", script, StringComparison.Ordinal);
    }

    [Fact]
    public void Suggest_BeginOfAVerb_OffersItsWholeName()
    {
        using var keeper = new Keeper();
        Assert.Contains("neighbours", keeper.Run("[suggest:13]", "stockroom nei").OutLines);
        Assert.Contains("--place", keeper.Run("[suggest:15]", "stockroom add --").OutLines);
    }
}
