using Stockroom.Assessment.Neighbours;

namespace Stockroom.Assessment.Arrangement.Search;

/// <summary>How far it is from spot to spot: 0 on one shelf, 1 in one cabinet, 2 in one room, 5 beyond.</summary>
internal static class DistanceTable
{
    public static byte[] Of(IReadOnlyList<Spot> spots)
    {
        var distances = new byte[spots.Count * spots.Count];
        for (var p = 0; p < spots.Count; p++)
        {
            for (var q = 0; q < spots.Count; q++)
                distances[(p * spots.Count) + q] = Between(spots[p].Stand, spots[q].Stand);
        }

        return distances;
    }

    private static byte Between(Stand a, Stand b)
    {
        if (!Nearness.SharesCabinet(a, b))
            return (byte)(a.Room is not null && a.Room.Id == b.Room?.Id ? 2 : 5);
        return (byte)(a.Shelf?.Id == b.Shelf?.Id ? 0 : 1);
    }
}
