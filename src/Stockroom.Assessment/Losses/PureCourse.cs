namespace Stockroom.Assessment.Losses;

/// <summary>
/// A content of one part: how long it takes to fall from one amount to the next is the integral of 1/rate over the amount, taken by
/// Simpson's rule on a logarithmic scale, panels split where a rate jumps (a gap that begins to breathe). One pass serves every end of the
/// band and every pace.
/// </summary>
internal sealed class PureCourse
{
    private const int Panels = 6;
    private const int MostSplits = 7;

    // As a logarithm of the amount: what a jump may put a panel off by.
    private const double Off = 0.004;
    private const double Negligible = 0.01;

    private readonly LossCourse _course;
    private readonly List<Node> _nodes = [];

    private PureCourse(LossCourse course, int panels)
    {
        _course = course;
        var start = course.Start.Kilograms;
        _nodes.Add(At(Math.Log(start)));

        // Where next to nothing goes within centuries there is no course to follow.
        if (_nodes[0].Rate(BandEnd.High, 1000) * Trajectory.Horizon < Negligible * start)
            return;
        var width = Math.Log(Trajectory.StopAt) / panels;
        for (var i = 0; i < panels; i++)
            Add(_nodes[^1], At(Math.Log(start) + ((i + 1) * width)), 0);
    }

    public static PureCourse Follow(LossCourse course, double fineness = 1) => new(course, (int)Math.Ceiling(Panels / fineness));

    public Trajectory At(BandEnd end, double pace)
    {
        var first = _nodes[0];
        var points = new List<Trajectory.Point>(_nodes.Count) { new(0, first.Kilograms, first.Rate(end, pace)) };
        if (_nodes.Count == 1 || points[0].Rate * Trajectory.Horizon < Negligible * first.Kilograms)
            return new Trajectory(points);
        var t = 0.0;
        for (var i = 2; i < _nodes.Count; i += 2)
        {
            var h = (_nodes[i - 2].Log - _nodes[i].Log) / 2;
            var (a, b, c) = (_nodes[i - 2].Slowness(end, pace), _nodes[i - 1].Slowness(end, pace), _nodes[i].Slowness(end, pace));

            // The half panel by the parabola through the three points, so that every point lies on the curve.
            var half = h / 12 * ((5 * a) + (8 * b) - c);
            var whole = h / 3 * (a + (4 * b) + c);
            if (!double.IsFinite(whole) || half <= 0 || half >= whole)
                (half, whole) = (h * (a + b) / 2, h * (a + (2 * b) + c) / 2);
            if (!double.IsFinite(whole))
                break;
            points.Add(new(t + half, _nodes[i - 1].Kilograms, _nodes[i - 1].Rate(end, pace)));
            points.Add(new(t += whole, _nodes[i].Kilograms, _nodes[i].Rate(end, pace)));
        }

        return new Trajectory(points);
    }

    private void Add(Node from, Node to, int splits)
    {
        var middle = At((from.Log + to.Log) / 2);
        if (splits < MostSplits && Jumps(from, middle, to))
        {
            Add(from, middle, splits + 1);
            Add(middle, to, splits + 1);
            return;
        }

        _nodes.Add(middle);
        _nodes.Add(to);
    }

    // A rate that goes by a power of the amount, as of what decays or of a gas under its own pressure, lies in the middle of both ends on the
    // scale of logarithms; one that jumps lies half the jump beside it.
    private static bool Jumps(Node from, Node middle, Node to)
    {
        for (var end = BandEnd.Low; end <= BandEnd.High; end++)
        {
            var (a, b, c) = (from.Rate(end, 1), middle.Rate(end, 1), to.Rate(end, 1));
            if (a > 0 && b > 0 && c > 0 && Math.Abs(Math.Log(b * b / (a * c))) / 2 * (from.Log - to.Log) > Off)
                return true;
        }

        return false;
    }

    private Node At(double log)
    {
        var kilograms = Math.Exp(log);
        _course.Evaluate([kilograms]);
        return new Node(log, kilograms, _course.Rates(0, BandEnd.Low), _course.Rates(0, BandEnd.Expected), _course.Rates(0, BandEnd.High));
    }

    private readonly record struct Node(
        double Log, double Kilograms, (double Weighable, double Transmuted) Low, (double Weighable, double Transmuted) Expected, (double Weighable, double Transmuted) High)
    {
        public double Rate(BandEnd end, double pace)
        {
            var (weighable, transmuted) = end switch { BandEnd.Low => Low, BandEnd.High => High, _ => Expected };
            return (pace * weighable) + transmuted;
        }

        /// <summary>Seconds for each e-fold of the amount.</summary>
        public double Slowness(BandEnd end, double pace) => Kilograms / Rate(end, pace);
    }
}
