using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses;

/// <summary>The law of each way out, in the symbols of its source.</summary>
public static class LossEquations
{
    /// <summary>What has gone through a wall or liner since it was first wetted.</summary>
    public const string Lag = "gone = m (t - L (1 + (12/pi^2) sum of (-1)^n/n^2 exp(-n^2 pi^2 t/(6 L)))), soon m (t - L); L = l^2/(6 D)";

    /// <summary>Where the law of the lag stands.</summary>
    public static readonly Provenance LagSource = new("Crank, The Mathematics of Diffusion, 2nd ed.", "section 4.3.3, eq. 4.24", "1975");

    private static readonly Dictionary<Type, string> ByPath = new()
    {
        [typeof(PastClosure)] = "m = D p M f/(R T sum(L/A)), f = ln(1/(1 - y))/y, y = p/P; sum over headspace, neck and gap",
        [typeof(Breathing)] = "m = c(Tmax) V (dT/T + (p(Tmax) - p(Tmin))/(P - p(Tmax)) + 0.02) a day",
        [typeof(ThroughLiner)] = "m = K a A/l, or P (p1 - p2) A M/l; K and P with exp(-(E/R)(1/T - 1/T0))",
        [typeof(ThroughWall)] = "m = K a A/l, or P (p1 - p2) A M/l; K and P with exp(-(E/R)(1/T - 1/T0))",
        [typeof(ThroughCover)] = "m = c/(1/G + c L/(s D A)), G the leaks, s the solubility in the cover, c the saturated vapour",
        [typeof(ThroughPacking)] = "m = 1/(1/m(without) + 1/(c G)), m(without) leaks and wall together, G = D A/L of its gap and P R T A/l of its film beside each other",
        [typeof(FlameSeal)] = "m = 0",
        [typeof(RadioactiveDecayPath)] = "m = ln 2/T x mass of the nuclide",
        [typeof(Decomposition)] = "dc/dt = -k c, or -k c^2 with log k rising with the ionic strength",
    };

    /// <summary>Null for a way out whose law does not stand here.</summary>
    public static string? Of(ILossPath path) => ByPath.GetValueOrDefault(path.GetType());
}
