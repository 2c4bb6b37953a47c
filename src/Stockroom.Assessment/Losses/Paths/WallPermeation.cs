using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Losses.Paths;

/// <summary>Permeation of each volatile part through a sheet of one material; shared by wall and liner.</summary>
internal static class WallPermeation
{
    // Below this pressure a part that the tables do not list for the material is left out without a word.
    private const double NegligiblePascals = 0.1;

    /// <summary>What passes, what is not in the tables though it might pass, and which of that is known to be volatile.</summary>
    internal sealed record Finding(IReadOnlyList<Leaving> Leaves, IReadOnlyList<string> NotListed, IReadOnlyList<string> Volatile, Provenance? Source);

    public static Finding Through(LossState state, string material, Area area, Length thickness)
    {
        var leaves = new List<Leaving>();
        var missing = new List<string>();
        var isVolatile = new List<string>();
        Provenance? source = null;
        foreach (var v in state.Vapour)
        {
            var pressure = state.IsGas ? state.GasPressure(v.Gas) : v.Pressure.Value ?? default;
            var rows = state.Facts.Permeability(material, v.Gas);
            if (rows.Count == 0)
            {
                if (pressure.Pascals > NegligiblePascals || (!v.Pressure.IsKnown && !state.IsGas && Involatile.Reason(state) is null && !Involatile.IsIonic(v.Part) && v.Part.State != Chemistry.Catalogue.MatterState.Solid))
                    missing.Add(v.Gas.Name);
                if (pressure.Pascals > NegligiblePascals)
                    isVolatile.Add(v.Gas.Name);
                continue;
            }

            var row = state.IsGas ? rows.FirstOrDefault(r => r.Gas is not null) ?? rows[0] : rows.FirstOrDefault(r => r.Contact is not null) ?? rows[0];
            source ??= row.Provenance;
            var warm = Permeation.TemperatureFactor(row.Activation, row.At, state.Temperature).Value;
            leaves.Add(new Leaving(v.Part, row.Gas is { } gas ? OfGas(state, v, gas, pressure, area, thickness, warm) : OfContact(state, v, row.Contact!.Value, area, thickness, warm)));
        }

        return new Finding(leaves, missing, isVolatile, source);
    }

    /// <summary>How long the sheet takes until it lets each part through as it will.</summary>
    public static IReadOnlyList<SheetLag> Lags(LossState state, string material, Length thickness)
    {
        var lags = new List<SheetLag>();
        foreach (var v in state.Vapour)
        {
            if (state.Facts.Permeability(material, v.Gas).Count > 0)
                lags.Add(Lag(v, state.Facts.DiffusivityInWall(material, v.Gas), material, thickness, state.Temperature));
        }

        return lags;
    }

    private static SheetLag Lag(Vapour v, WallDiffusivity? row, string material, Length thickness, Temperature t) => row is null
        ? new SheetLag(v.Part, null, $"how fast {v.Gas.Name} diffuses in {material} is not in the tables: none is counted", null)
        : new SheetLag(
            v.Part,
            row.Lag(thickness, t),
            $"{v.Gas.Name} in {material}, {thickness.Millimetres:0.##} mm, D {row.AtTemperature(t).Expected.SquareMetresPerSecond:0.#E+0} m2/s{(row.Substance is null ? ", a range for any vapour in it" : "")}{(row.Activation is null ? ", as at room temperature" : "")}",
            row.Provenance);

    private static Band<MassRate> OfGas(LossState state, Vapour v, Band<Permeability> p, Pressure inside, Area area, Length thickness, double warm)
    {
        var outside = state.Outside(v.Gas);
        if (inside <= outside || state.Facts.MolarMass(v.Gas) is not { } molarMass)
            return default;
        return p.Select(x => new MassRate(
            Permeation.Gas(x, thickness, inside, outside).MolesPerSquareMetreSecond * warm * area.SquareMetres * molarMass.KilogramsPerMole));
    }

    private static Band<MassRate> OfContact(LossState state, Vapour v, Band<LiquidPermeation> k, Area area, Length thickness, double warm)
    {
        var activity = Activity(state, v);
        return k.Select(x => Permeation.Contact(x, area, thickness, activity) * warm);
    }

    // Activity: 1 for a pure content, the partial pressure over that of the pure part in a mixture, less what the room's air holds.
    private static Fraction Activity(LossState state, Vapour v)
    {
        var outside = v.Gas.Name == "water" ? state.Situation.Humidity.Value : 0;
        if (state.Content.Pure is not null)
            return new Fraction(Math.Max(0, 1 - outside));
        var pure = state.Facts.VapourPressure(v.Gas, state.Temperature).Value;
        if (pure is not { } p || v.Pressure.Value is not { } partial)
            return new Fraction(0);
        return new Fraction(Math.Clamp((partial / p) - outside, 0, 1));
    }
}
