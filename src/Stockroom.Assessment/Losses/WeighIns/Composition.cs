using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>
/// What a mixture is made of after a time: its volatile part goes ahead of the rest. Stepped by the midpoint over the logarithms of the
/// masses, a twentieth of the fastest part at a time.
/// </summary>
internal static class Composition
{
    private const double MostOfAPart = 0.05;
    private const int MostSteps = 200;

    /// <summary>
    /// The content after so much effective time, all ways out that a balance can show so many times faster than computed; or as it was when
    /// the most that was seen to go had gone: a leak that began of late has not leaked all the time.
    /// </summary>
    public static Content After(Content content, LossCourse course, Span effective, double pace, Mass mostLost)
    {
        if (course.IsPure || course.IsStill || effective.Seconds <= 0)
            return content;
        var parts = course.Parts;
        var (now, half) = (new double[parts.Count], new double[parts.Count]);
        for (var i = 0; i < now.Length; i++)
            now[i] = course.Start.Kilograms * (double)parts[i].Percent / 100;
        var (left, goes) = (effective.Seconds, mostLost.Kilograms);
        for (var step = 0; step < MostSteps && left > 0 && goes > 0; step++)
        {
            course.Evaluate(now);
            var (fastest, rate) = (0.0, 0.0);
            for (var i = 0; i < now.Length; i++)
            {
                var share = Share(course, now, i, pace);
                (fastest, rate) = (Math.Max(fastest, share), rate + (share * now[i]));
            }

            if (fastest <= 0)
                break;
            var dt = Math.Min(Math.Min(left, goes / rate), MostOfAPart / fastest);
            goes -= rate * dt;
            for (var i = 0; i < now.Length; i++)
                half[i] = now[i] * Math.Exp(-Share(course, now, i, pace) * dt / 2);
            course.Evaluate(half);
            for (var i = 0; i < now.Length; i++)
                now[i] *= Math.Exp(-Share(course, half, i, pace) * dt);
            left -= dt;
        }

        var whole = now.Sum();
        return whole > 0 ? content with { Parts = [.. parts.Select((p, i) => p with { Percent = (decimal)(100 * now[i] / whole) })] } : content;
    }

    private static double Share(LossCourse course, double[] kilograms, int part, double pace) =>
        kilograms[part] > 0 ? Math.Max(0, course.Rate(part, BandEnd.Expected, pace)) / kilograms[part] : 0;
}
