using Stockroom.Labels.Drawings;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Layout;

/// <summary>Places of a label's pictograms relative to the cluster's top left corner.</summary>
internal sealed record PictogramCluster(IReadOnlyList<Position> Corners, double WidthMm, double HeightMm)
{
    /// <summary>White between two frames.</summary>
    private const double GapMm = 0.8;

    public static PictogramCluster Of(int count, double sideMm, Cluster shape)
    {
        var edge = Pictogram.DiagonalMm(sideMm);

        // In rows the points face each other; set into each other's gaps, the slanted sides keep the same distance.
        var pitch = edge + (shape is Cluster.Row or Cluster.Stack ? GapMm : GapMm * Math.Sqrt(2));
        var corners = new List<Position>();
        for (var i = 0; i < count; i++)
        {
            var (along, across) = shape is Cluster.Row or Cluster.Stack ? (i * pitch, 0.0) : (i * pitch / 2, i % 2 * pitch / 2);
            corners.Add(shape is Cluster.Row or Cluster.Quilt ? new Position(along, across) : new Position(across, along));
        }

        return new PictogramCluster(corners, corners.Max(c => c.X) + edge, corners.Max(c => c.Y) + edge);
    }
}
