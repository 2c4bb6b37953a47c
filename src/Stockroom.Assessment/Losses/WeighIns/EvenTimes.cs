namespace Stockroom.Assessment.Losses.WeighIns;

/// <summary>Seconds of even time, by which loss goes on as in the mean of a year, for the content, for its cover, and for moisture that comes in.</summary>
internal readonly record struct EvenTimes(double Content, double Cover, double Moisture)
{
    /// <summary>Counted so many times until another, and so many times from then on.</summary>
    public EvenTimes Paced(double before, EvenTimes until, double after) =>
        new(Paced(Content, before, until.Content, after), Paced(Cover, before, until.Cover, after), Paced(Moisture, before, until.Moisture, after));

    private static double Paced(double seconds, double before, double until, double after) =>
        (before * Math.Min(seconds, until)) + (after * Math.Max(0, seconds - until));
}
