namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>
/// The shortest series of moves that brings a few things to their spots when none can go there straight: breadth first through all that
/// they may do, given up after a set amount of work.
/// </summary>
internal static class RoundAbout
{
    private const int MostTried = 200_000;

    /// <summary>The moves, by number of the thing; null where none was found. The things stand where they stood, whatever was tried.</summary>
    /// <param name="from">Of each thing: its spot.</param>
    /// <param name="to">Of each thing: the spot it is to reach.</param>
    /// <param name="offered">Spots that a thing may be put in.</param>
    /// <param name="put">Puts a thing in a spot, or nowhere.</param>
    /// <param name="mayGo">Whether a thing may be moved to a spot as all stands.</param>
    public static IReadOnlyList<(int Thing, int Spot)>? Find(int[] from, int[] to, Func<int, int[]> offered, Action<int, int> put, Func<int, int, bool> mayGo)
    {
        List<(int[] At, int Before, int Thing)> met = [(from, -1, -1)];
        var known = new HashSet<string>(StringComparer.Ordinal) { Key(from) };
        var tried = 0;
        var end = -1;
        for (var n = 0; n < met.Count && end < 0 && tried < MostTried; n++)
        {
            var at = met[n].At;
            PutAll(at);
            for (var i = 0; i < at.Length && end < 0; i++)
            {
                foreach (var spot in offered(i))
                {
                    tried++;
                    if (spot == at[i] || !mayGo(i, spot))
                        continue;
                    int[] next = [.. at];
                    next[i] = spot;
                    if (!known.Add(Key(next)))
                        continue;
                    met.Add((next, n, i));
                    if (!next.AsSpan().SequenceEqual(to))
                        continue;
                    end = met.Count - 1;
                    break;
                }
            }
        }

        PutAll(from);
        return end < 0 ? null : Way();

        void PutAll(int[] at)
        {
            for (var i = 0; i < at.Length; i++)
                put(i, at[i]);
        }

        List<(int Thing, int Spot)> Way()
        {
            var way = new List<(int Thing, int Spot)>();
            for (var n = end; n > 0; n = met[n].Before)
                way.Add((met[n].Thing, met[n].At[met[n].Thing]));
            way.Reverse();
            return way;
        }
    }

    private static string Key(int[] at) => string.Join(',', at);
}
