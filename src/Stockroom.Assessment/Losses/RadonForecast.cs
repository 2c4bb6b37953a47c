using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// Radon-222 that radium gives to the air. Of what is made a share leaves the grains (emanation), of that a share passes the closure
/// before it decays, and in the air it decays and is carried off: C = lambda A e f/((lambda + n) V), n the air changes.
/// </summary>
/// <remarks>Source: UNSCEAR 2000 report, annex B (emanation); reference level 300 Bq/m3: Council Directive 2013/59/Euratom, Art. 74.</remarks>
public sealed record RadonForecast(Band<ActivityConcentration> Inner, Band<ActivityConcentration>? Room, string Because)
{
    /// <summary>Reference level for rooms, as a yearly mean.</summary>
    public static readonly ActivityConcentration Reference = new(300);

    // Dry salts and paints let out some 1 to 30 per cent of the radon that they make.
    private static readonly Band<double> Emanation = new(0.01, 0.1, 0.3);

    /// <summary>Share of the reference level in the air that is breathed: the room's where there is one.</summary>
    public Band<Fraction> ShareOfReference => (Room ?? Inner).Select(c => new Fraction(c / Reference));

    /// <summary>Null where the content holds no radium-226, or no air is described.</summary>
    public static RadonForecast? Of(Situation situation, PropertyFacts facts)
    {
        if (situation.Air is not { } air || facts.Nuclide("Rn-222") is not { } radon)
            return null;
        var becquerels = Radium(situation, facts);
        if (becquerels <= 0)
            return null;
        var lambda = radon.DecayConstant.PerSecond;
        var (leaves, why) = Passes(situation, facts, lambda);
        Band<ActivityConcentration> In(AirSpace space) => new(
            At(Emanation.Low * leaves.Low, space), At(Emanation.Expected * leaves.Expected, space), At(Emanation.High * leaves.High, space));
        ActivityConcentration At(double share, AirSpace space) => new(lambda * becquerels * share / ((lambda + (space.Mixing.Value * space.AirChange.PerSecond)) * space.Volume.CubicMetres));
        return new RadonForecast(In(air), situation.RoomAir is { } room ? In(room) : null, $"{Words(becquerels)} of radium-226; {why}");
    }

    private static double Radium(Situation situation, PropertyFacts facts)
    {
        var sum = 0.0;
        foreach (var part in situation.Content.Parts)
        {
            foreach (var share in facts.Nuclides(part.Substance).Where(n => n.Nuclide.Name == "Ra-226"))
                sum += situation.Amount.Kilograms * (double)part.Percent / 100 * share.MassShare.Value * share.Nuclide.SpecificActivity.BecquerelsPerKilogram;
        }

        return sum;
    }

    private static (Band<double> Share, string Why) Passes(Situation situation, PropertyFacts facts, double lambda)
    {
        if (situation.Closure.Mechanism is ClosureMechanism.Fused or ClosureMechanism.Valve)
            return (new Band<double>(0, 0, 0), "flame-sealed: its radon stays and decays inside");
        var state = new LossState(situation, facts);
        var d = facts.DiffusivityInAir(facts.Catalogue["radon"], situation.Temperature).Value ?? new Diffusivity(1.2e-5);
        var rate = d.SquareMetresPerSecond / ClosureGeometry.LengthOverArea(state) / state.Headspace.CubicMetres;
        var (down, up) = ClosureGeometry.Uncertainty(situation.Closure);
        double Share(double k) => k / (k + lambda);
        return (new Band<double>(Share(rate / down.Factor), Share(rate), Share(rate * up.Factor)), $"about {100 * Share(rate):0.#} % of the free radon passes the closure before it decays");
    }

    private static string Words(double becquerels) => becquerels switch
    {
        >= 1e9 => $"{becquerels / 1e9:0.#} GBq",
        >= 1e6 => $"{becquerels / 1e6:0.#} MBq",
        >= 1e3 => $"{becquerels / 1e3:0.#} kBq",
        _ => $"{becquerels:0.#} Bq",
    };
}
