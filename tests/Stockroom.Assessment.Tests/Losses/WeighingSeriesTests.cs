using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>Which weighings compare: nothing was done by hand between them. Common practice.</summary>
public sealed class WeighingSeriesTests
{
    private static WeighIn Weighed(int day, long order, double grams = 400) => new(Bench.Day.AddDays(day), Mass.FromGrams(grams), Mass.FromGrams(0.01)) { Order = order };

    private static WeighingSeries Series(IReadOnlyList<WeighIn> weighings, params Draw[] draws) => WeighingSeries.Of(weighings, draws, default, default);

    // Weighed on day 10 (or as said) and on day 20; order 0 where nobody knows it. What was done by hand on the day of a weighing came before it,
    // unless the order of booking says otherwise.
    [Theory]
    [InlineData(10, 0, 9, 0, 20, 0, true)]
    [InlineData(10, 0, 15, 0, 20, 0, false)]
    [InlineData(10, 0, 21, 0, 20, 0, true)]
    [InlineData(10, 1, 21, 3, 20, 2, true)]
    [InlineData(10, 1, 9, 3, 20, 2, true)]
    [InlineData(10, 0, 10, 0, 20, 0, true)]
    [InlineData(10, 5, 10, 0, 20, 9, true)]
    [InlineData(10, 0, 10, 5, 20, 9, true)]
    [InlineData(10, 5, 10, 4, 20, 9, true)]
    [InlineData(10, 5, 10, 5, 20, 9, true)]
    [InlineData(10, 5, 10, 6, 20, 9, false)]
    [InlineData(10, 0, 20, 0, 20, 0, false)]
    [InlineData(10, 5, 20, 0, 20, 9, false)]
    [InlineData(10, 5, 20, 8, 20, 0, false)]
    [InlineData(10, 5, 20, 8, 20, 9, false)]
    [InlineData(10, 5, 20, 9, 20, 9, false)]
    [InlineData(10, 5, 20, 10, 20, 9, true)]
    [InlineData(20, 1, 20, 2, 20, 3, false)]
    [InlineData(20, 2, 20, 1, 20, 3, true)]
    [InlineData(20, 1, 20, 3, 20, 2, true)]
    public void TwoWeighings_Compare_UnlessSomethingWasDoneBetween(int before, long beforeOrder, int draw, long drawOrder, int after, long afterOrder, bool compare)
    {
        var series = Series([Weighed(before, beforeOrder), Weighed(after, afterOrder)], new Draw(Bench.Day.AddDays(draw), null) { Order = drawOrder });
        Assert.True(series.Points[0].Begins);
        Assert.Equal(!compare, series.Points[1].Begins);
        Assert.Equal(compare, series.HasInterval);
    }

    // The first always begins anew; one pair that compares is enough.
    [Fact]
    public void Weighings_WithOneDrawAmongThem_StillHaveAnInterval() =>
        Assert.True(Series([Weighed(0, 0), Weighed(10, 0), Weighed(20, 0)], new Draw(Bench.Day.AddDays(15), null)).HasInterval);

    [Fact]
    public void Weighings_AreReadInTheOrderTheyWereDone()
    {
        var series = Series([Weighed(20, 4, 398), Weighed(0, 1, 400), Weighed(20, 3, 399)]);
        Assert.Equal([0.4, 0.399, 0.398], series.Points.Select(p => Math.Round(p.Kilograms, 6)));
    }

    [Fact]
    public void Latest_KeepsTheLast_AndBeginsWithThem()
    {
        var all = Series([Weighed(0, 0, 400), Weighed(10, 0, 399), Weighed(20, 0, 398)]);
        Assert.Same(all, all.Latest(3));
        var two = all.Latest(2).Points;
        Assert.Equal([0.399, 0.398], two.Select(p => Math.Round(p.Kilograms, 6)));
        Assert.Equal([true, false], two.Select(p => p.Begins));
    }

    // Readability and calibration are independent: their squares add (JCGM 100:2008, 5.1.2). A calibration of 0.03 g beside a step of 0.04 g is 0.05 g;
    // what the air does to 50 cm3 of brass and glass (400 g of masses of 8000 kg/m3) is 0.03 kg/m3 of it.
    [Fact]
    public void Variance_IsTheSumOfSquares()
    {
        var weighing = new WeighIn(Bench.Day, Mass.FromGrams(400), Mass.FromGrams(0.04)) { Calibration = Mass.FromGrams(0.03) };
        var point = WeighingSeries.Of([weighing], [], Volume.FromMillilitres(50), default).Points[0];
        Assert.Equal(0.05e-3, Math.Sqrt(point.Variance), 1e-12);
    }
}
