using System.Globalization;
using System.Text.Json;
using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>The demo's report finds every planted trouble and nothing else, whatever the day.</summary>
public sealed class DemoReportTests
{
    /// <summary>Kind of finding, content of the container to act on, and its place.</summary>
    private static readonly string[] PlantedWrong =
    [
        "hands off: diisopropyl ether in fire-lower",
        "ampoule: bromine in window-shelf",
        "neighbours: unknown corrosive liquid in salts-lower",
        "neighbours: ammonia solution 25% in acid-tray",
        "neighbours: ammonia solution 25% in acid-tray",
        "neighbours: sulfuric acid 37% in fire-upper",
        "seal: n-hexane in fire-lower",
        "material: bromine in bromine-tray",
        "orphan: unknown corrosive liquid in salts-lower",
    ];

    private static readonly string[] PlantedDue =
    [
        "replace it, or assay it: sodium hypochlorite 12% in oxidiser-lower",
        "test for peroxides: diethyl ether in fire-lower",
        "top up the water cover: phosphorus (white) in phosphorus-tray",
        "top up the paraffin oil cover: potassium in metals-lower",
    ];

    // Leap days and those around them, ends of years, ends of months that "months ago" cuts short, summer and winter.
    public static TheoryData<string> Days =>
    [
        "2026-06-15", "2024-02-29", "2028-02-29", "2028-03-01", "2027-02-28", "2026-12-31", "2027-01-01", "2026-08-31", "2029-10-30",
    ];

    [Theory]
    [MemberData(nameof(Days))]
    public void Report_OnAnyDay_FindsWhatWasPlantedAndNothingElse(string day)
    {
        using var keeper = Keeper.WithDemo(DateOnly.Parse(day, CultureInfo.InvariantCulture));
        var found = Findings.Of(keeper);
        Assert.Equal(PlantedWrong.Order(StringComparer.Ordinal), found.Wrong.Select(w => w.Words).Order(StringComparer.Ordinal));
        Assert.Equal(PlantedDue.Order(StringComparer.Ordinal), found.Due.Select(w => w.Words).Order(StringComparer.Ordinal));
        Assert.All(found.Wrong.Concat(found.Due), f => Assert.True(f.Because.Length > 10 && f.Source.Length > 10, f.Words));
        ReportSaysTheSame(DemoBooks.Report(keeper.Today).Done(), found);
    }

    [Fact]
    public void Report_AmmoniaBesideHydrochloricAcid_IsOneOfItsFindings()
    {
        using var keeper = Keeper.WithDemo();
        var (ammonia, acid) = (keeper.IdOf("ammonia solution 25%"), keeper.IdOf("hydrochloric acid 37%"));
        Assert.Contains(Findings.Of(keeper).Wrong, w => w.Ids[0] == ammonia && w.Ids.Contains(acid));
    }

    [Fact]
    public void Report_AcidAboveSolvents_NamesEverySolventBelow()
    {
        using var keeper = Keeper.WithDemo();
        var finding = Findings.Of(keeper).Wrong.Single(w => w.Words.StartsWith("neighbours: sulfuric acid 37%", StringComparison.Ordinal));
        var below = keeper.Run("list", "--place", "fire-lower", "--json").Done().Json.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("id").GetString()!);
        Assert.Equal(below.Order(StringComparer.Ordinal), finding.Ids.Skip(1).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Report_Twice_IsTheSame()
    {
        using var keeper = new Keeper();
        var again = keeper.Run("demo", "--report", "--book", keeper.Book).Done();
        Assert.Equal(
            DemoBooks.Report(keeper.Today).OutLines.Where(l => !l.Contains(".stockbook", StringComparison.Ordinal)),
            again.OutLines.Where(l => !l.Contains(".stockbook", StringComparison.Ordinal)));
    }

    [Fact]
    public void Book_OfTheDemo_IsAsLargeAsPromised()
    {
        using var keeper = Keeper.WithDemo();
        Assert.True(keeper.Run("list", "--json").Done().Json.GetProperty("containers").GetArrayLength() >= 60);
        var kinds = keeper.Run("places", "--json").Done().Json.GetProperty("places").EnumerateArray().Select(p => p.GetProperty("kind").GetString()).ToList();
        Assert.Equal(2, kinds.Count(k => k == "room"));
        Assert.True(kinds.Count(k => k is not ("room" or "shelf" or "tray")) >= 5);
        Assert.True(kinds.Count(k => k == "shelf") >= 10);
        keeper.Run("verify").Done();
    }

    [Fact]
    public void Book_OfTheDemo_HoldsTheLabelsOfAll()
    {
        using var keeper = Keeper.WithDemo();
        Assert.True(new FileInfo(Path.Combine(keeper.Book, "labels.pdf")).Length > 50_000);
        Assert.Contains("labels: 74 in ", DemoBooks.Report(keeper.Today).Out, StringComparison.Ordinal);
    }

    private static void ReportSaysTheSame(Answer report, Findings found)
    {
        Assert.EndsWith(string.Create(CultureInfo.InvariantCulture, $"{found.Wrong.Count} wrong, {found.Due.Count} due"), report.OutLines[0], StringComparison.Ordinal);
        foreach (var finding in found.Wrong.Concat(found.Due))
        {
            Assert.Contains("  because: " + finding.Because, report.OutLines);
            Assert.Contains("  source: " + finding.Source, report.OutLines);
        }
    }
}
