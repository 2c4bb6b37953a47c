using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Losses;

/// <summary>Whether a vessel can hold what it is said to hold.</summary>
internal static class Overfull
{
    // Densities and typed volumes are right to a few per cent.
    private const double Allowed = 1.05;
    private static readonly Pressure GlassAtMost = Pressure.FromBar(3);

    /// <summary>Null where it can, or where that cannot be told.</summary>
    public static string? Why(Situation situation, PropertyFacts facts)
    {
        var (content, vessel) = (situation.Content, situation.Vessel);
        if (content.IsUnknown)
            return null;
        var state = new LossState(situation, facts);
        if (state.IsGas)
        {
            if (content.Pure is not { MolarMass: not null } gas || vessel.Kind == "cylinder")
                return null;
            var pressure = state.GasPressure(gas);
            return pressure > GlassAtMost ? $"{situation.Amount.Grams:0.##} g of {content.Name} would stand at {pressure.Bar:0.#} bar in a {vessel.Name}: amount or vessel is wrong, or it is a liquid under pressure" : null;
        }

        var density = content.Density ?? (content.Pure is { } pure ? facts.RoomDensity(pure, situation.Temperature) : null);
        if (density is not { } known)
            return null;
        var volume = new Volume(situation.Amount.Kilograms / known.KilogramsPerCubicMetre);
        if (volume <= vessel.Volume * Allowed && volume + situation.CoverVolume > vessel.Volume * Allowed)
            return $"{volume.Millilitres:0.#} mL of {content.Name} and {situation.CoverVolume.Millilitres:0.#} mL of {situation.Cover!.Name} are more than a {vessel.Name} holds: amount, cover or vessel is wrong, and so is this forecast";
        return volume > vessel.Volume * Allowed ? $"{situation.Amount.Grams:0.#} g of {content.Name} is about {volume.Millilitres:0.#} mL, more than a {vessel.Name} holds: amount or vessel is wrong, and so is this forecast" : null;
    }
}
