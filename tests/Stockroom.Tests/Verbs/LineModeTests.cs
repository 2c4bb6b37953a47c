namespace Stockroom.Tests.Verbs;

/// <summary>"--journal -": one command a line, acknowledged in turn; and "--each": one question a line.</summary>
public sealed class LineModeTests
{
    private const string Lines = """
        add acetone --place left-shelf --amount "20 g"
        acetonne --place left-shelf

        add	water	--place	left-shelf	--note	tabs part the words
        add "propan-2-ol" --place "store > right cabinet" --amount "-1 g"
        add ethanol --place right-shelf --journal -
        add ethanol --place right-shelf
        """;

    [Fact]
    public void Add_LineByLine_AcknowledgesEachAndGoesOnAfterARefusedOne()
    {
        using var keeper = Keeper.WithSmallBook();
        var answer = keeper.RunWith(Lines, "add", "--journal", "-", "--json");
        Assert.Equal(1, answer.Code);
        Assert.Empty(answer.Error);
        Assert.Equal(["entry", "error", "entry", "error", "entry", "entry"], answer.JsonLines.Select(l => l.EnumerateObject().First().Name));
        Assert.Contains("nearest: acetone", answer.JsonLines[1].GetProperty("error").GetString(), StringComparison.Ordinal);
        Assert.Equal([6, 7, 8, 9], answer.JsonLines.Where(l => l.TryGetProperty("entry", out _)).Select(l => l.GetProperty("entry").GetInt32()));
        Assert.Equal(4, keeper.Run("list", "--json").Done().Json.GetProperty("containers").GetArrayLength());
    }

    [Fact]
    public void Add_LineByLine_WithoutJson_AnswersALineEach()
    {
        using var keeper = Keeper.WithSmallBook();
        var answer = keeper.RunWith(Lines, "add", "--journal", "-");
        Assert.Equal(1, answer.Code);
        Assert.Equal(["entry 6:", "refused:", "entry 7:", "refused:", "entry 8:", "entry 9:"], answer.OutLines.Select(l => l[..8]));
    }

    [Fact]
    public void MoveAndWeigh_LineByLine_AreBooked()
    {
        using var keeper = Keeper.WithDemo();
        var sugar = keeper.IdOf("sucrose");
        Assert.Equal(2, keeper.RunWith($"{sugar} sink-shelf\nmove MM451 sink-shelf\n{sugar} salts-upper\n", "move", "--journal", "-").OutLines.Count(l => l.StartsWith("entry ", StringComparison.Ordinal)));
        var weighed = keeper.RunWith($"{sugar} 560.5 --readability 0.1\n{sugar} 560.4\n", "weigh", "--journal", "-").Done();
        Assert.Equal(2, weighed.OutLines.Count);
    }

    [Fact]
    public void Add_LineWithAControlCharacter_IsRefused()
    {
        using var keeper = Keeper.WithSmallBook();
        var answer = keeper.RunWith("acetone --place left-shelf --note a\u001bb\n", "add", "--journal", "-");
        Assert.Equal(1, answer.Code);
        Assert.Contains("U+001B", answer.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', answer.Out);
    }

    [Fact]
    public void Facts_Each_AnswersInOrderOneDocumentALine()
    {
        using var keeper = new Keeper();
        var answer = keeper.RunWith("bromine\t--at\t40\n\nacetonne\nwater\n7664-93-9\n", "facts", "--each", "-", "--json");
        Assert.Equal(1, answer.Code);
        Assert.Empty(answer.Error);
        Assert.Equal(4, answer.JsonLines.Count);
        Assert.Equal(40, answer.JsonLines[0].GetProperty("at_c").GetDouble());
        Assert.Contains("acetone", answer.JsonLines[1].GetProperty("error").GetString(), StringComparison.Ordinal);
        Assert.Equal(["water", "sulfuric acid"], answer.JsonLines.Skip(2).Select(l => l.GetProperty("name").GetString()));
    }

    [Fact]
    public void Pair_Each_FromAFile_ExitsZeroWhenNothingIsRefused()
    {
        using var keeper = new Keeper();
        var file = Path.Combine(keeper.Folder, "pairs.txt");
        File.WriteAllText(file, "acetone\tnitric acid 65%\r\nwater\tsucrose\r\n");
        var answer = keeper.Run("pair", "--each", file, "--json").Done();
        Assert.Equal(["own cabinet", "same tray"], answer.JsonLines.Select(l => l.GetProperty("separation").GetString()));
    }

    [Fact]
    public void Pair_Each_LineThatIsNone_AnswersAnErrorInItsPlace()
    {
        using var keeper = new Keeper();
        var answer = keeper.RunWith("acetone\nacetone\twater\tbromine\nwater\tsucrose\n", "pair", "--each", "-");
        Assert.Equal(1, answer.Code);
        Assert.Equal([true, true, false], answer.JsonLines.Select(l => l.TryGetProperty("error", out _)));
    }
}
