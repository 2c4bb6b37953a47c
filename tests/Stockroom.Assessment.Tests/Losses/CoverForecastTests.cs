using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class CoverForecastTests
{
    [Fact]
    public void Cover_None_HasNoForecast() => Assert.Null(CoverForecast.Of(Bench.BromineUnder(null), Bench.Facts, Bench.Day));

    // Common practice: the water over phosphorus dries out and is topped up; under a loose cap within a year.
    [Fact]
    public void WaterCover_UnderALooseCap_FallsDueWithinAYear()
    {
        var situation = Bench.Of("phosphorus (white)", 20, "glass jar 125 mL", "loose cap", 20, "water", 30);
        var now = CoverForecast.Of(situation, Bench.Facts, Bench.Day)!;
        Assert.Equal(CoverVerdict.Sound, now.Verdict);
        Assert.Equal(15, now.LeastDepth!.Value.Millimetres, 1e-6);
        Assert.True(now.FailsLow <= now.FailsExpected && now.FailsExpected <= now.FailsHigh);
        Assert.True(now.FailsLow < Bench.Day.AddYears(1));
        Assert.Equal(CoverVerdict.Low, CoverForecast.Of(situation, Bench.Facts, now.FailsExpected!.Value)!.Verdict);
    }

    [Fact]
    public void WaterCover_UnderALinedCap_LastsLongerThanUnderALooseOne()
    {
        var loose = CoverForecast.Of(Bench.Of("phosphorus (white)", 20, "glass jar 125 mL", "loose cap", 20, "water", 30), Bench.Facts, Bench.Day)!;
        var lined = CoverForecast.Of(Bench.Of("phosphorus (white)", 20, "glass jar 125 mL", "screw cap, PTFE-faced liner", 20, "water", 30), Bench.Facts, Bench.Day)!;
        Assert.True(lined.FailsExpected is null || lined.FailsExpected > loose.FailsExpected);
    }

    [Fact]
    public void OilCover_MeasuredFalling_FailsOnTheLine()
    {
        var situation = Bench.Of("potassium", 20, "glass jar 125 mL", "screw cap, PTFE-faced liner", 20, "paraffin oil", 30) with
        {
            CoverDepths = [new DepthReading(Bench.Day, Length.FromMillimetres(30)), new DepthReading(Bench.Day.AddDays(200), Length.FromMillimetres(20))],
        };
        var cover = CoverForecast.Of(situation, Bench.Facts, Bench.Day.AddDays(200))!;
        Assert.Equal(Bench.Day.AddDays(300), cover.FailsExpected);
        Assert.Equal(CoverVerdict.Low, CoverForecast.Of(situation, Bench.Facts, Bench.Day.AddDays(280))!.Verdict);
    }

    [Theory]
    [InlineData(11, CoverVerdict.Sound)]
    [InlineData(10, CoverVerdict.Low)]
    [InlineData(9, CoverVerdict.Low)]
    public void OilCover_AgainstTheKeepersLeast_IsJudged(double millimetres, CoverVerdict verdict)
    {
        var situation = Bench.Of("sodium", 20, "glass jar 125 mL", "screw cap, PTFE-faced liner", 20, "paraffin oil", millimetres);
        Assert.Equal(verdict, CoverForecast.Of(situation, Bench.Facts, Bench.Day, Length.FromMillimetres(10))!.Verdict);
    }

    [Fact]
    public void Cover_NeverMeasured_IsUnknown()
    {
        var situation = Bench.Of("sodium", 20, "glass jar 125 mL", "screw cap, PTFE-faced liner", 20, "paraffin oil") with { CoverDepth = null };
        Assert.Equal(CoverVerdict.Unknown, CoverForecast.Of(situation, Bench.Facts, Bench.Day)!.Verdict);
    }
}
