using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>
/// Radon that radium gives to the air: radon-222 of radium-226, or thoron, radon-220, of radium-224. Of what is made a share leaves the
/// grains (emanation), of that a share passes the closure before it decays, and in the air it decays and is carried off:
/// C = lambda A e f/((lambda + n) V), n the air changes. Thoron lives a minute: it stays near where it comes out, so the mean of a room
/// says less of it than of radon.
/// </summary>
/// <remarks>
/// Source: UNSCEAR 2000 report, annex B (emanation); reference level 300 Bq/m3 for radon-222, none for thoron: Council Directive
/// 2013/59/Euratom, Art. 4 and 74.
/// </remarks>
public sealed record RadonForecast(Nuclide Gas, Band<ActivityConcentration> Inner, Band<ActivityConcentration>? Room, string Because)
{
    /// <summary>Reference level for rooms, as a yearly mean.</summary>
    public static readonly ActivityConcentration Reference = new(300);

    // Dry salts and paints let out some 1 to 30 per cent of the radon that they make.
    private static readonly Band<double> Emanation = new(0.01, 0.1, 0.3);

    /// <summary>Share of the reference level in the air that is breathed: the room's where there is one; null for thoron, which has none.</summary>
    public Band<Fraction>? ShareOfReference => Gas.Name == "Rn-222" ? (Room ?? Inner).Select(c => new Fraction(c / Reference)) : null;

    /// <summary>Radon-222 and thoron on a day; null where the content holds no radium-226, no radium-224, or no air is described.</summary>
    public static (RadonForecast? Radon, RadonForecast? Thoron) Of(Situation situation, PropertyFacts facts, DateOnly on) =>
        situation.Air is { } air && DecayForecast.Of(situation, facts, GrownIn(situation, on)) is { } decay
            ? (Of(situation, facts, air, decay, "radon", "Rn-222", "Ra-226", "radium-226"), Of(situation, facts, air, decay, "thoron", "Rn-220", "Ra-224", "radium-224"))
            : default;

    private static RadonForecast? Of(Situation situation, PropertyFacts facts, AirSpace air, DecayForecast decay, string called, string gas, string parent, string from)
    {
        if (facts.Nuclide(gas) is not { } nuclide)
            return null;
        var becquerels = decay.Members.Where(m => m.Nuclide.Name == parent).Sum(m => m.Activity.Becquerels);
        if (becquerels <= 0)
            return null;
        var lambda = nuclide.DecayConstant.PerSecond;
        var (leaves, why) = Passes(situation, facts, lambda, called);
        Band<ActivityConcentration> In(AirSpace space) => new(
            At(Emanation.Low * leaves.Low, space), At(Emanation.Expected * leaves.Expected, space), At(Emanation.High * leaves.High, space));
        ActivityConcentration At(double share, AirSpace space) => new(lambda * becquerels * share / ((lambda + (space.Mixing.Value * space.AirChange.PerSecond)) * space.Volume.CubicMetres));
        return new RadonForecast(nuclide, In(air), situation.RoomAir is { } room ? In(room) : null, $"{Words(becquerels)} of {from}; {why}");
    }

    // Radium-224 grows into fresh thorium within days; what it will give by then counts from the first day.
    private static DateOnly GrownIn(Situation situation, DateOnly on)
    {
        var month = (situation.Filled ?? situation.AmountOn).AddDays(30);
        return on > month ? on : month;
    }

    private static (Band<double> Share, string Why) Passes(Situation situation, PropertyFacts facts, double lambda, string called)
    {
        if (situation.Closure.Mechanism is ClosureMechanism.Fused or ClosureMechanism.Valve)
            return (new Band<double>(0, 0, 0), $"flame-sealed: its {called} stays and decays inside");
        var state = new LossState(situation, facts);
        var d = facts.DiffusivityInAir(facts.Catalogue["radon"], situation.Temperature).Value ?? new Diffusivity(1.2e-5);
        var rate = d.SquareMetresPerSecond / ClosureGeometry.LengthOverArea(state) / state.Headspace.CubicMetres;
        var (down, up) = ClosureGeometry.Uncertainty(situation.Closure);
        double Share(double k) => k / (k + lambda);
        return (new Band<double>(Share(rate / down.Factor), Share(rate), Share(rate * up.Factor)), $"{(Share(rate) < 0.001 ? "less than 0.1" : $"about {100 * Share(rate):0.#}")} % of the free {called} passes the closure before it decays");
    }

    private static string Words(double becquerels) => becquerels switch
    {
        >= 1e9 => $"{becquerels / 1e9:0.#} GBq",
        >= 1e6 => $"{becquerels / 1e6:0.#} MBq",
        >= 1e3 => $"{becquerels / 1e3:0.#} kBq",
        _ => $"{becquerels:0.#} Bq",
    };
}
