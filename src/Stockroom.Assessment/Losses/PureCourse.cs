using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// A content of one part: how long it takes to fall from one amount to the next is the integral of 1/rate over the amount, taken by
/// Simpson's rule on a logarithmic scale. One pass serves every end of the band and every pace.
/// </summary>
internal sealed class PureCourse
{
    private const int Panels = 5;
    private const double Negligible = 0.01;

    private readonly double[] _kilograms;
    private readonly (double Weighable, double Transmuted)[,] _rates;

    private PureCourse(LossCourse course, int steps)
    {
        _kilograms = new double[steps + 1];
        _rates = new (double, double)[steps + 1, 3];
        for (var i = 0; i <= steps; i++)
        {
            _kilograms[i] = course.Start.Kilograms * Math.Pow(Trajectory.StopAt, (double)i / steps);
            course.Evaluate([_kilograms[i]]);
            for (var end = BandEnd.Low; end <= BandEnd.High; end++)
                _rates[i, (int)end] = course.Rates(0, end);

            // Where next to nothing goes within centuries there is no course to follow.
            if (i == 0 && Rate(0, BandEnd.High, 1000) * Trajectory.Horizon < Negligible * _kilograms[0])
            {
                _kilograms = [_kilograms[0]];
                return;
            }
        }
    }

    public static PureCourse Follow(LossCourse course, double fineness = 1) => new(course, 2 * (int)Math.Ceiling(Panels / fineness));

    public Trajectory At(BandEnd end, double pace)
    {
        var points = new List<Trajectory.Point>(_kilograms.Length) { new(0, _kilograms[0], Rate(0, end, pace)) };
        if (_kilograms.Length == 1 || points[0].Rate * Trajectory.Horizon < Negligible * _kilograms[0])
            return new Trajectory(points);
        var h = Math.Log(_kilograms[0] / _kilograms[^1]) / (_kilograms.Length - 1);
        var t = 0.0;
        for (var i = 2; i < _kilograms.Length; i += 2)
        {
            var (a, b, c) = (Slowness(i - 2, end, pace), Slowness(i - 1, end, pace), Slowness(i, end, pace));

            // The half panel by the parabola through the three points, so that every point lies on the curve.
            var half = h / 12 * ((5 * a) + (8 * b) - c);
            var whole = h / 3 * (a + (4 * b) + c);
            if (!double.IsFinite(whole) || !double.IsFinite(half))
                break;
            points.Add(new(t + half, _kilograms[i - 1], Rate(i - 1, end, pace)));
            points.Add(new(t += whole, _kilograms[i], Rate(i, end, pace)));
        }

        return new Trajectory(points);
    }

    private double Rate(int i, BandEnd end, double pace) => (pace * _rates[i, (int)end].Weighable) + _rates[i, (int)end].Transmuted;

    // Seconds for each e-fold of the amount.
    private double Slowness(int i, BandEnd end, double pace) => _kilograms[i] / Rate(i, end, pace);
}
