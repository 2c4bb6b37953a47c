using CsCheck;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Properties;

public sealed class TimeLagTests
{
    private static readonly PropertyFacts Facts = PropertyFacts.Default;

    // Time in units of l^2/D, so that the lag is a sixth.
    private static readonly Span Lag = new(1.0 / 6);

    private static double Through(double x) => x - Permeation.StillMissing(new Span(x), Lag).Seconds;

    private static double Share(double x) => Permeation.FlowShare(new Span(x), Lag).Value;

    // Crank, The Mathematics of Diffusion, 2nd ed., section 4.3.3 and figure 4.3: steady within the accuracy of the plot from D t/l^2 = 0.45 on,
    // and then Q/(l c) = D t/l^2 - 1/6.
    [Theory]
    [InlineData(0.45, 0.0024)]
    [InlineData(0.6, 0.0006)]
    [InlineData(1, 0.00002)]
    [InlineData(50, 1e-12)]
    public void Through_LateTimes_IsTheAsymptote(double x, double within)
    {
        Assert.InRange(Through(x) - (x - (1.0 / 6)), 0, within);
        Assert.InRange(Share(x), 0.97, 1);
    }

    // Ziegel, Frensdorff, Blair, J. Polym. Sci. A-2, 7 (1969) 809: half of the steady rate at t = l^2/(7.199 D); the whole series gives 0.5006 there.
    [Fact]
    public void Flow_AtTheHalfTime_IsHalf() => Assert.Equal(0.5, Share(1 / 7.199), 1e-3);

    // Rogers, Buritz, Alpert, J. Appl. Phys. 25 (1954) 868: the series for short times, flow = 2 (l^2/(pi D t))^0.5 sum exp(-(2m+1)^2 l^2/(4 D t)).
    [Fact]
    public void Flow_AnyTime_AgreesWithTheSeriesForShortTimes() =>
        Gen.Double[0.004, 2].Sample(x => Math.Abs(Share(x) - ShortTimes(x)) < 1e-12, iter: 500);

    // What went through is the integral of the flow; Simpson's rule on the other series.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(1.0 / 6)]
    [InlineData(0.3)]
    [InlineData(1)]
    public void Through_AnyTime_IsTheIntegralOfTheFlow(double x)
    {
        const int Panels = 2000;
        var sum = 0.0;
        for (var i = 0; i <= Panels; i++)
            sum += (i is 0 or Panels ? 1 : i % 2 == 1 ? 4 : 2) * (i == 0 ? 0 : ShortTimes(x * i / Panels));
        Assert.Equal(sum * x / Panels / 3, Through(x), 1e-9);
    }

    [Fact]
    public void Missing_Always_GrowsUpToTheLag() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 3], Gen.Double[1, 1e8]).Sample((a, b, lag) =>
        {
            var (x, y) = (Permeation.StillMissing(new Span(Math.Min(a, b) * 6 * lag), new Span(lag)), Permeation.StillMissing(new Span(Math.Max(a, b) * 6 * lag), new Span(lag)));
            return x.Seconds >= 0 && x.Seconds <= y.Seconds + (1e-9 * lag) && y.Seconds <= lag && x.Seconds <= Math.Min(a, b) * 6 * lag;
        });

    [Fact]
    public void Missing_BeforeAndWithoutALag_IsNothing()
    {
        Assert.Equal(0, Permeation.StillMissing(new Span(-5), Lag).Seconds);
        Assert.Equal(0, Permeation.StillMissing(new Span(5), default).Seconds);
        Assert.Equal(1, Permeation.FlowShare(new Span(5), default).Value);
        Assert.Equal(0, Permeation.FlowShare(new Span(0), Lag).Value);
    }

    // By hand: 1.2 mm of HDPE and oxygen, 1.7e-11 m2/s: 1.44e-6/1.02e-10 s. Of a vapour without a row, the band of two decades; of a gas none.
    [Fact]
    public void Lag_OfAWall_FollowsItsRow()
    {
        var oxygen = Facts.DiffusivityInWall("HDPE", Facts.Catalogue["oxygen"])!;
        Assert.Equal(14_118, oxygen.Lag(Length.FromMillimetres(1.2), oxygen.At).Expected.Seconds, 1.0);
        Assert.True(oxygen.Lag(Length.FromMillimetres(1.2), Temperature.FromCelsius(5)).Expected.Seconds > 14_118);
        var toluene = Facts.DiffusivityInWall("HDPE", Facts.Catalogue["toluene"])!;
        Assert.Null(toluene.Activation);
        Assert.Equal(100, toluene.Diffusivity.High / toluene.Diffusivity.Low, 1e-9);
        var lag = toluene.Lag(Length.FromMillimetres(1), toluene.At);
        Assert.True(lag.Low < lag.Expected && lag.Expected < lag.High);
        Assert.Null(Facts.DiffusivityInWall("HDPE", Facts.Catalogue["chlorine"]));
        Assert.Null(Facts.DiffusivityInWall("oak", Facts.Catalogue["toluene"]));
    }

    // Incropera, Table A.8: helium in fused silica 0.4e-13 m2/s at 293 K.
    [Fact]
    public void Diffusivity_HeliumInSilica_HoldsThePublished() =>
        Assert.Equal(0.4e-13, Facts.DiffusivityInWall("fused silica", Facts.Catalogue["helium"])!.Diffusivity.Low.SquareMetresPerSecond, 1e-18);

    private static double ShortTimes(double x)
    {
        var sum = 0.0;
        for (var m = 0; m < 40; m++)
            sum += Math.Exp(-Math.Pow((2 * m) + 1, 2) / (4 * x));
        return 2 * Math.Sqrt(1 / (Math.PI * x)) * sum;
    }
}
