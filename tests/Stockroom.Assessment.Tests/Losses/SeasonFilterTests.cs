using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Stockroom.Assessment.Losses.WeighIns;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class SeasonFilterTests
{
    // The readings are jointly normal: start anywhere near the first, losses with two common waves and a stray of each. The density of the
    // second and later ones given the first is that of the normal law with the covariance written out, by the library's Cholesky.
    [Fact]
    public void Filter_AnyReadings_AgreesWithTheJointNormalLaw() =>
        Gen.Select(Gen.Double[-2, 2].Array[5], Gen.Double[-0.5, 0.5].Array[5].Array[2], Gen.Double[0.05, 0.5].Array[5], Gen.Double[0.1, 2].Array[5]).Sample((readings, waves, own, variances) =>
        {
            var filter = SeasonFilter.At(readings[0], variances[0]);
            var density = 0.0;
            for (var j = 1; j < 5; j++)
                density += filter.Step(0.3, waves[0][j], waves[1][j], own[j], readings[j], variances[j]);
            double Wave(int w, int j) => Enumerable.Range(1, j).Sum(i => waves[w][i]);
            var covariance = Matrix<double>.Build.Dense(4, 4, (i, j) =>
                variances[0] + (Wave(0, i + 1) * Wave(0, j + 1)) + (Wave(1, i + 1) * Wave(1, j + 1)) + Enumerable.Range(1, Math.Min(i, j) + 1).Sum(k => own[k] * own[k]) + (i == j ? variances[i + 1] : 0));
            var off = Vector<double>.Build.Dense(4, j => readings[j + 1] - readings[0] + (0.3 * (j + 1)));
            var cholesky = covariance.Cholesky();
            var expected = -0.5 * ((4 * Math.Log(2 * Math.PI)) + cholesky.DeterminantLn + off.DotProduct(cholesky.Solve(off)));
            return Math.Abs(density - expected) < 1e-9 * (1 + Math.Abs(expected));
        }, iter: 200);

    // A wrong season cancels over a year and shows most over a short while; spells average out as the root of the time (both by arithmetic).
    [Fact]
    public void Stray_OverAYear_LeavesTheSeasonOut()
    {
        var stray = new SeasonStray(0.2, 0.1, 0.03);
        var (year, month, decade) = (stray.Over(0, Span.SecondsPerYear), stray.Over(0, 30 * 86400), stray.Over(0, 10 * Span.SecondsPerYear));
        Assert.Equal(0, Math.Sqrt((year.Cosine * year.Cosine) + (year.Sine * year.Sine)), 1e-9);
        Assert.InRange(Math.Sqrt((month.Cosine * month.Cosine) + (month.Sine * month.Sine)), 0.19, 0.2);
        Assert.Equal(0.1 * Math.Sqrt(2 * 20 / 3652.5), decade.Own, 0.0005);
        Assert.Equal(default, stray.Over(5, 5));
    }
}
