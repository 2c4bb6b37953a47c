using System.Text.Json;

namespace Stockroom.Tests.Verbs;

/// <summary>A printed label that is no longer true asks for a new one; one never printed is no more than a line.</summary>
public sealed class LabelDueTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithSmallBook();

    public void Dispose() => _keeper.Dispose();

    [Fact]
    public void NeverPrinted_IsNotDue_ButCountedInALine()
    {
        _keeper.Add("acetone", "--amount", "100 mL", "--place", "left-shelf");

        Assert.Empty(Due());
        Assert.Equal(1, Today().GetProperty("labels_never_printed").GetInt32());
        Assert.Contains("No label printed yet for 1 of 1: 'stockroom label --all-due' prints them.", _keeper.Run("today").Done().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void JustPrinted_IsTrue_AndAllDuePrintsNothingTwice()
    {
        var id = Printed();

        Assert.Empty(Due());
        Assert.Equal(0, Today().GetProperty("labels_never_printed").GetInt32());
        Assert.Contains("no label is due", _keeper.Run("label", "--all-due", "--out", InFolder("again.pdf")).Refused(2), StringComparison.Ordinal);
        Assert.NotEmpty(id);
    }

    [Fact]
    public void Moved_IsDue_AndPrintingSettlesIt()
    {
        var id = Printed();
        _keeper.Clock.Advance(TimeSpan.FromDays(1));
        _keeper.Run("move", id, "right-shelf").Done();
        var due = Assert.Single(Due());

        Assert.Equal((id, "print a new label", "2026-06-15"), (due.GetProperty("id").GetString(), due.GetProperty("what").GetString(), due.GetProperty("since").GetString()));
        Assert.Equal(
            "since its label was printed on 2026-06-15: moved from store > left cabinet > left shelf to store > right cabinet > right shelf",
            due.GetProperty("because").GetString());
        _keeper.Run("label", "--all-due", "--out", InFolder("new.pdf"));
        Assert.Empty(Due());
    }

    [Fact]
    public void Drawn_IsNotDue()
    {
        var id = Printed();
        _keeper.Run("weigh", id, "200").Done();

        Assert.Empty(Due());
    }

    [Theory]
    [InlineData("eu", "H350 is new")]
    [InlineData("us", "H350 is new")]
    public void Reclassified_ByTheKeepersOwnFacts_IsDue_InTheEditionItWasPrintedBy(string rules, string expected)
    {
        Printed("--rules", rules);
        Assert.Empty(Due());
        _keeper.Run("substances", "add", "acetone", "--state", "liquid", "--hazards", "Flam. Liq. 2 H225; Carc. 1B H350", "--source", "a test", "--as-of", "2026").Done();

        Assert.Contains(expected, Assert.Single(Due()).GetProperty("because").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Correction_OfTheCover_IsDue()
    {
        var id = _keeper.Add("sodium", "--amount", "20 g", "--place", "left-shelf", "--cover", "paraffin oil");
        _keeper.Run("label", id, "--out", InFolder("x.pdf"));
        Assert.DoesNotContain(Due(), d => d.GetProperty("what").GetString() == "print a new label");
        var entry = _keeper.Run("ledger", id, "--json").Done().Json.GetProperty("entries")[0].GetProperty("number").GetInt64();
        _keeper.Run("correct", $"{entry}", "cover=argon", "--because", "read wrongly").Done();

        Assert.Contains("cover changed from paraffin oil to argon", Due().Select(d => d.GetProperty("because").GetString()).Single(b => b!.StartsWith("since its label", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Printing_KeepsWhatWasPrinted_InTheLedger()
    {
        var id = Printed();
        var journal = File.ReadAllText(_keeper.Journal);

        Assert.Contains("\"kind\":\"label printed\",\"container\":\"" + id, journal, StringComparison.Ordinal);
        Assert.Contains("\"rules\":\"eu\",\"says\":[{\"part\":\"name\",\"text\":\"acetone\"}", journal, StringComparison.Ordinal);
        Assert.Contains("{\"part\":\"hazards\",\"text\":\"Danger GHS02 GHS07 H225 H319 H336 EUH066", journal, StringComparison.Ordinal);
        _keeper.Run("verify").Done();
    }

    private string Printed(params string[] words)
    {
        var id = _keeper.Add("acetone", "--amount", "100 mL", "--place", "left-shelf");
        Assert.InRange(_keeper.Run(["label", id, "--out", InFolder("x.pdf"), .. words]).Code, 0, 1);
        return id;
    }

    private JsonElement Today() => _keeper.Run("today", "--json").Done().Json;

    private List<JsonElement> Due() => [.. Today().GetProperty("due").EnumerateArray()];

    private string InFolder(string name) => Path.Combine(_keeper.Folder, name);
}
