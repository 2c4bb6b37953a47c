namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>The limits in numbers. A limit counts for every spot within its place.</summary>
internal sealed class LimitTable
{
    private readonly bool[][] _within;
    private readonly long[][] _use;

    public LimitTable(Shelving shelving, int[] home)
    {
        Count = shelving.Limits.Count;
        Most = [.. shelving.Limits.Select(l => l.Most)];
        _within = [.. shelving.Limits.Select(l => shelving.Spots.Select(s => s.Within.Contains(l.Place, StringComparer.Ordinal)).ToArray())];
        var byMeasure = Enum.GetValues<Measure>().ToDictionary(m => m, m => shelving.Things.Select(t => t.Burden.Of(m) ?? 0).ToArray());
        _use = [.. shelving.Limits.Select(l => byMeasure[l.Measure])];
        OfSpot = [.. Enumerable.Range(0, shelving.Spots.Count).Select(q => Enumerable.Range(0, Count).Where(c => _within[c][q]).ToArray())];
        AtHome = new long[Count];
        for (var i = 0; i < home.Length; i++)
        {
            foreach (var c in At(home[i]))
                AtHome[c] += _use[c][i];
        }
    }

    public int Count { get; }

    /// <summary>Of each limit: the most.</summary>
    public long[] Most { get; }

    /// <summary>Of each spot: the limits that count for it.</summary>
    public int[][] OfSpot { get; }

    /// <summary>Of each limit: what it carries before anything is moved.</summary>
    public long[] AtHome { get; }

    /// <summary>Limits that count for a spot; none for no spot.</summary>
    public int[] At(int spot) => spot < 0 ? [] : OfSpot[spot];

    public long Use(int limit, int thing) => _use[limit][thing];

    public bool Covers(int limit, int spot) => spot >= 0 && _within[limit][spot];
}
