using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>What may be sealed in which tube, and which material stands what; no book is needed.</summary>
public sealed class VesselVerbTests : IDisposable
{
    private readonly Keeper _keeper = new();

    public void Dispose() => _keeper.Dispose();

    private JsonElement Ampoule(string content, string fill, params string[] more) =>
        _keeper.Run(["ampoule", "--content", content, "--bore", "10", "--wall", "1", "--length", "80", "--fill", fill, "--json", .. more]).Done().Json;

    [Fact]
    public void Ampoule_Json_HasTheFieldsOfTheContract()
    {
        var json = Ampoule("bromine", "6 g");
        foreach (var name in "volume_ml liquid_ml ullage_percent liquid_full_at_c pressure_bar_abs strength_bar margin verdict because".Split(' '))
            Assert.True(json.TryGetProperty(name, out _), name);
        Assert.Equal(Math.PI / 4 * 8, json.GetProperty("volume_ml").GetDouble(), 1e-4); // a cylinder of 10 mm by 80 mm
        Assert.Equal(6 / 3.1215, json.GetProperty("liquid_ml").GetDouble(), 0.01); // Perry: bromine 3.12 g/mL at 20 C
        Assert.Equal("sound", json.GetProperty("verdict").GetString());
        var strength = json.GetProperty("strength_bar");
        Assert.Equal(12.62 / 3, strength.GetProperty("expected").GetDouble(), 0.01); // 12 mm by 1 mm by Lame, a third
        Assert.InRange(json.GetProperty("pressure_bar_abs").GetProperty("max").GetDouble(), json.GetProperty("pressure_bar_abs").GetProperty("at").GetDouble(), strength.GetProperty("low").GetDouble());
        Assert.True(json.GetProperty("margin").GetProperty("low").GetDouble() < json.GetProperty("margin").GetProperty("high").GetDouble());
    }

    [Theory]
    [InlineData("bromine", "99%", "unsafe")]
    [InlineData("bromine", "95%", "marginal")]
    [InlineData("hydrogen peroxide 30%", "2 mL", "never seal")]
    [InlineData("nitric acid 65%", "2 mL", "never seal")]
    public void Ampoule_Verdict_IsOneOfTheWords(string content, string fill, string verdict)
    {
        var json = Ampoule(content, fill);
        Assert.Equal(verdict, json.GetProperty("verdict").GetString());
        Assert.NotEqual(0, json.GetProperty("because").GetArrayLength());
    }

    [Fact]
    public void Ampoule_Options_AreHeard()
    {
        double Max(params string[] more) => Ampoule("bromine", "50%", more).GetProperty("pressure_bar_abs").GetProperty("max").GetDouble();
        Assert.True(Max("--gas", "vacuum") < Max("--sealed-pressure", "0.5") && Max("--sealed-pressure", "0.5") < Max());
        Assert.True(Max("--sealed-at", "200") < Max());
        Assert.True(Max("--max", "60") > Max());
        double Strength(string glass) => Ampoule("bromine", "50%", "--glass", glass).GetProperty("strength_bar").GetProperty("expected").GetDouble();
        Assert.Equal(1.4, Strength("borosilicate") / Strength("soda-lime"), 1e-4);
        Assert.Equal("unsafe", Ampoule("water", "96%", "--min", "-10").GetProperty("verdict").GetString());
        Assert.Equal("never seal", Ampoule("potassium", "1 g", "--damp").GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("an ampoule needs --bore", "ampoule", "--content", "bromine")]
    [InlineData("'glas' is not a glass; write borosilicate, soda-lime, silica", "ampoule", "--content", "bromine", "--bore", "10", "--wall", "1", "--length", "80", "--fill", "1 g", "--glass", "glas")]
    [InlineData("it lies above 0 and up to 100 %", "ampoule", "--content", "bromine", "--bore", "10", "--wall", "1", "--length", "80", "--fill", "120%")]
    [InlineData("--bore 5000 cannot be", "ampoule", "--content", "bromine", "--bore", "5000", "--wall", "1", "--length", "80", "--fill", "1 g")]
    [InlineData("temperatures go --min <= --at <= --max", "ampoule", "--content", "bromine", "--bore", "10", "--wall", "1", "--length", "80", "--fill", "1 g", "--max", "10")]
    [InlineData("give the fill in grams", "ampoule", "--content", "argon", "--bore", "10", "--wall", "1", "--length", "80", "--fill", "50%")]
    [InlineData("a material and a content are needed", "resists", "PTFE")]
    [InlineData("not in the catalogue", "resists", "PTFE", "brommine")]
    public void Words_Wrong_AreRefusedInOneLine(string words, params string[] typed)
    {
        Assert.Contains(words, _keeper.Run(typed).Refused(2), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("PP", "bromine", "poor")]
    [InlineData("PTFE", "nitric acid 65%", "good")]
    [InlineData("PVC_U", "sodium hydroxide 40%", "good")]
    [InlineData("SS316", "sodium hypochlorite 12%", "limited")]
    [InlineData("stainless steel", "sulfuric acid 80%", "poor")]
    public void Resists_Json_RatesWithReasonAndSource(string material, string content, string rating)
    {
        var json = _keeper.Run("resists", material, content, "--json").Done().Json;
        Assert.Equal(rating, json.GetProperty("rating").GetString());
        Assert.False(string.IsNullOrEmpty(json.GetProperty("because").GetString()));
        Assert.False(string.IsNullOrEmpty(json.GetProperty("source").GetString()));
        Assert.Equal(rating != "good", json.GetProperty("would_do").GetArrayLength() > 0);
    }

    [Theory]
    [InlineData("unobtainium", "bromine")]
    [InlineData("PTFE", "methylene blue")]
    [InlineData("PTFE", "orphan brown liquid")]
    public void Resists_Unknown_IsNullWithAReasonAndNeverGood(string material, string content)
    {
        var json = _keeper.Run("resists", material, content, "--json").Done().Json;
        Assert.Equal(JsonValueKind.Null, json.GetProperty("rating").ValueKind);
        Assert.False(string.IsNullOrEmpty(json.GetProperty("because").GetString()));
    }

    [Fact]
    public void Resists_Each_AnswersLineByLine()
    {
        var answer = _keeper.RunWith("HDPE\tacetone\nglass\thydrofluoric acid 48%\nPP\tnothing known\n", "resists", "--each", "-");
        Assert.Equal(1, answer.Code);
        Assert.Equal(["good", "poor"], answer.JsonLines.Take(2).Select(l => l.GetProperty("rating").GetString()));
        Assert.True(answer.JsonLines[2].TryGetProperty("error", out _));
    }
}
