using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>
/// Decay of the radioactive nuclides that an element has by nature or is usually made of. What decays stays behind as daughters,
/// or leaves as radon and helium; here it counts as gone.
/// </summary>
public sealed class RadioactiveDecayPath : ILossPath
{
    public string Name => "radioactive decay";

    public PathLoss Assess(LossState state)
    {
        var leaves = new List<Leaving>();
        var (leading, most) = ((Chemistry.Properties.NuclideShare?)null, 0.0);
        foreach (var part in state.Content.Parts)
        {
            foreach (var share in state.Facts.Nuclides(part.Substance))
            {
                var mass = state.Amount.Kilograms * (double)part.Percent / 100 * share.MassShare.Value;
                var rate = new MassRate(share.Nuclide.DecayConstant.PerSecond * mass);
                leaves.Add(new Leaving(part.Substance, Band.Around(rate, share.Nuclide.Spread)));
                if (rate.KilogramsPerSecond > most)
                    (leading, most) = (share, rate.KilogramsPerSecond);
            }
        }

        if (leading is null)
            return PathLoss.Absent("no radioactive nuclide is listed for it");
        var made = leading.Natural ? "natural composition" : "taken as the nuclide usually met";
        return PathLoss.Of(
            PathRole.Transmuted, leaves, () => $"{leading.Nuclide.Name}, half-life {Years(leading.Nuclide.HalfLife)}, {made}", leading.Nuclide.Provenance);
    }

    private static string Years(Span halfLife) => halfLife.Years switch
    {
        >= 1e9 => $"{halfLife.Years / 1e9:0.###} billion years",
        >= 1e6 => $"{halfLife.Years / 1e6:0.###} million years",
        >= 1000 => $"{halfLife.Years:0} years",
        >= 1 => $"{halfLife.Years:G4} years",
        _ => $"{halfLife.Days:G4} days",
    };
}
