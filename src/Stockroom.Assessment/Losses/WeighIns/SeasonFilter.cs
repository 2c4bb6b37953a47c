namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What is thought of the mass at the last weighing, and of the two waves (cosine and sine of the year, each of one standard deviation to
/// begin with) by which the loss runs beside its course; the filter of Kalman. Source: Kalman, J. Basic Eng. 82 (1960) 35.
/// </summary>
internal struct SeasonFilter
{
    private double _mass;
    private double _cosine;
    private double _sine;

    // Covariances, by the first letters of mass, cosine, sine.
    private double _mm;
    private double _mc;
    private double _ms;
    private double _cc;
    private double _cs;
    private double _ss;

    /// <summary>A start: the reading, and nothing known of the waves.</summary>
    public static SeasonFilter At(double reading, double variance) => new() { _mass = reading, _mm = variance, _cc = 1, _ss = 1 };

    /// <summary>Goes on to the next reading; the logarithm of its density as foreseen.</summary>
    /// <param name="loss">Kilograms by the course.</param>
    /// <param name="cosine">Kilograms more for a cosine wave of one standard deviation.</param>
    /// <param name="sine">The same for the sine wave.</param>
    /// <param name="own">Standard deviation of the interval's own stray, kilograms.</param>
    /// <param name="reading">The next.</param>
    /// <param name="variance">Of that reading.</param>
    public double Step(double loss, double cosine, double sine, double own, double reading, double variance)
    {
        var mm = _mm + (cosine * ((cosine * _cc) - (2 * _mc))) + (sine * ((sine * _ss) - (2 * _ms))) + (2 * cosine * sine * _cs) + (own * own);
        var mc = _mc - (cosine * _cc) - (sine * _cs);
        var ms = _ms - (cosine * _cs) - (sine * _ss);
        var foreseen = _mass - loss - (cosine * _cosine) - (sine * _sine);
        var (off, whole) = (reading - foreseen, mm + variance);
        _mass = foreseen + (mm / whole * off);
        _cosine += mc / whole * off;
        _sine += ms / whole * off;
        _mm = mm * variance / whole;
        _mc = mc * variance / whole;
        _ms = ms * variance / whole;
        _cc -= mc * mc / whole;
        _cs -= mc * ms / whole;
        _ss -= ms * ms / whole;
        return -0.5 * (Math.Log(2 * Math.PI * whole) + (off * off / whole));
    }
}
