namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>How good a safe placement is: fewest left, then fewest moved, then the best suited spots.</summary>
internal readonly record struct Score(int Left, int Moved, int Misfit) : IComparable<Score>
{
    public static readonly Score Worst = new(int.MaxValue, int.MaxValue, int.MaxValue);

    public static Score Of(Placement placement) => new(placement.LeftCount, placement.MovedCount, placement.Misfit);

    public int CompareTo(Score other)
    {
        if (Left != other.Left)
            return Left.CompareTo(other.Left);
        return Moved != other.Moved ? Moved.CompareTo(other.Moved) : Misfit.CompareTo(other.Misfit);
    }

    public static bool operator <(Score a, Score b) => a.CompareTo(b) < 0;

    public static bool operator >(Score a, Score b) => a.CompareTo(b) > 0;
}
