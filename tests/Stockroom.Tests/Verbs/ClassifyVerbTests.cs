using System.Text.Json;
using Stockroom.Verbs;

namespace Stockroom.Tests.Verbs;

public sealed class ClassifyVerbTests
{
    private static readonly string[] Keys =
    [
        "categories", "signal_word", "pictograms", "hazard_statements", "precautionary_statements", "ate_mix", "reasons", "unknown_share_percent", "notes",
    ];

    [Fact]
    public void Classify_Mix_GivesTheKeysOfTheContract()
    {
        var (code, json, _) = Run("", "classify", "--mix", "hydrochloric acid=10%; water=90%", "--json");
        var root = JsonDocument.Parse(json).RootElement;
        Assert.Equal(0, code);
        Assert.All(Keys, k => Assert.True(root.TryGetProperty(k, out _), k));
        Assert.Equal(["Skin Irrit. 2", "Eye Irrit. 2", "STOT SE 3"], root.GetProperty("categories").EnumerateArray().Select(e => e.GetString()));
        Assert.Equal(JsonValueKind.Null, root.GetProperty("ate_mix").GetProperty("oral_mg_kg").ValueKind);
        Assert.Equal("H315", root.GetProperty("hazard_statements")[0].GetProperty("code").GetString());
        Assert.Equal("Causes skin irritation", root.GetProperty("hazard_statements")[0].GetProperty("text").GetString());
        Assert.NotEqual("", root.GetProperty("reasons")[0].GetProperty("source").GetString());
        Assert.Equal(0, root.GetProperty("unknown_share_percent").GetProperty("inhalation").GetInt32());
    }

    [Theory]
    [InlineData("hydrogen peroxide 30%", "Eye Dam. 1")]
    [InlineData("sodium hydroxide 1 M", "Skin Corr. 1B")]
    [InlineData("sodium hydroxide 0.1 M", "")]
    [InlineData("H2SO4", "Skin Corr. 1A")]
    public void Classify_Name_MayBeAPreparation(string name, string category)
    {
        var (code, json, _) = Run("", "classify", name, "--json");
        Assert.Equal(0, code);
        var categories = JsonDocument.Parse(json).RootElement.GetProperty("categories").EnumerateArray().Select(e => e.GetString()).ToList();
        Assert.Equal(category.Length > 0, categories.Contains(category));
    }

    [Fact]
    public void Classify_EachLine_AnswersInOrderAndExitsOne()
    {
        var lines = "bromine\n--mix\tsodium hydroxide=1; water=99\nnotasubstance\n--mix\tsodium hydroxide=4 g/100 mL; water=rest\nethanol\t--rules\tun\n";
        var (code, output, _) = Run(lines, "classify", "--each", "-", "--json");
        var answers = output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement).ToList();
        Assert.Equal(1, code);
        Assert.Equal(5, answers.Count);
        Assert.Equal([false, false, true, true, false], answers.Select(a => a.TryGetProperty("error", out _)));
        Assert.Equal("un", answers[4].GetProperty("rules").GetString());
    }

    [Theory]
    [InlineData(2, "classify")]
    [InlineData(2, "classify", "bromine", "--mix", "water=100")]
    [InlineData(2, "classify", "--mix", "sodium hydroxide=4 g/100 mL")]
    [InlineData(2, "classify", "bromine", "--rules", "uk")]
    [InlineData(2, "classify", "bromine", "--ph", "acid")]
    [InlineData(2, "classify", "bromine", "--state", "slush")]
    [InlineData(3, "classify", "--mix-file", "no-such-file.json")]
    [InlineData(3, "classify", "--each", "no-such-file.txt")]
    public void Classify_WrongWords_AreRefusedInOneLine(int expected, params string[] args)
    {
        var (code, output, error) = Run("", args);
        Assert.Equal(expected, code);
        Assert.Empty(output);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void Classify_MixFile_UsesTheDataBrought()
    {
        var (code, json, _) = Run(
            """{"rules": "un", "ingredients": [{"name": "1", "percent": 16, "ate": {"oral_mg_kg": 1600}}, {"name": "2", "percent": 4, "ate": {"oral_mg_kg": 200}}, {"name": "3", "percent": 80, "ate": {"oral_mg_kg": 3450}}]}""",
            "classify", "--mix-file", "-", "--json");
        var root = JsonDocument.Parse(json).RootElement;
        Assert.Equal(0, code);
        Assert.Equal(1880, root.GetProperty("ate_mix").GetProperty("oral_mg_kg").GetDouble(), 1.0);
        Assert.Equal("Acute Tox. 4", root.GetProperty("categories")[0].GetString());
    }

    [Fact]
    public void Classify_Text_NamesLabelBeforeValueWithReasons()
    {
        var (_, output, _) = Run("", "classify", "--mix", "sulfuric acid=20; water=80");
        Assert.Contains("Signal word:  Danger", output, StringComparison.Ordinal);
        Assert.Contains("Annex VI Table 3", output, StringComparison.Ordinal);
    }

    private static (int Code, string Out, string Error) Run(string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new Surroundings
        {
            In = new StringReader(input),
            Out = output,
            Error = error,
            Clock = TimeProvider.System,
            Variable = _ => null,
            DataFolder = Path.GetTempPath(),
            User = "keeper",
            IsTerminal = false,
        };
        return (CommandLine.Run(args, around), output.ToString(), error.ToString());
    }
}
