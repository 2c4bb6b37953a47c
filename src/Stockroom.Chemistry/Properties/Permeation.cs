using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Steady permeation through a wall: N = P (p1 - p2)/l for a gas, m = K a A/l for a content at activity a; both rise with temperature by Arrhenius.
/// Source: Geankoplis, 3rd ed., section 6.5; Incropera, chapter 14.
/// Worked example: oxygen through 0.15 mm polyethylene, 4.17e-12 m3(STP) m/(s m2 atm), 0.21 to 0.01 atm: 2.48e-7 mol/(m2 s) (Geankoplis 6.5-2).
/// </summary>
public static class Permeation
{
    public static MolarFlux Gas(Permeability p, Length wall, Pressure inside, Pressure outside) =>
        new(p.MolePerMetreSecondPascal * (inside.Pascals - outside.Pascals) / wall.Metres);

    public static MassRate Contact(LiquidPermeation k, Area area, Length wall, Fraction activity) =>
        new(k.KilogramMetrePerSquareMetreSecond * area.SquareMetres * activity.Value / wall.Metres);

    /// <summary>How much faster at one temperature than at the one of the table.</summary>
    public static Fraction TemperatureFactor(MolarEnergy activation, Temperature at, Temperature to) =>
        new(Math.Exp(activation.JoulesPerMole / PhysicalConstants.GasConstant * ((1 / at.Kelvin) - (1 / to.Kelvin))));

    /// <summary>Permeability from a diffusion coefficient and a solubility.</summary>
    public static Permeability Of(Diffusivity d, HenryConstant solubility) =>
        new(d.SquareMetresPerSecond * solubility.MolesPerCubicMetrePascal);

    /// <summary>Through a sheet between two known concentrations of what passes in it (Fick); also through a film of liquid.</summary>
    /// <remarks>Worked example: 7.27e-10 m2/s, 200 mol/m3 over 40 mm of film: 3.635e-6 mol/(m2 s) (Geankoplis 6.4-2).</remarks>
    public static MolarFlux Between(Diffusivity d, Length thickness, MolarConcentration inside, MolarConcentration outside) =>
        new(d.SquareMetresPerSecond * (inside.MolesPerCubicMetre - outside.MolesPerCubicMetre) / thickness.Metres);

    /// <summary>How long a sheet takes before it lets through what it will: l^2/(6 D).</summary>
    /// <remarks>Source: Daynes, Proc. Roy. Soc. A 97 (1920) 286; Crank, The Mathematics of Diffusion, 2nd ed., section 4.3.3.</remarks>
    public static Span TimeLag(Diffusivity d, Length thickness) => new(thickness.Metres * thickness.Metres / (6 * d.SquareMetresPerSecond));

    /// <summary>
    /// How much time at the steady rate a sheet is short of, that was clean when one face was wetted: elapsed less what went through over the
    /// steady rate, from nought up to the lag. What went through is the steady rate times (elapsed - this).
    /// </summary>
    /// <remarks>
    /// Q/(l c) = D t/l^2 - 1/6 - (2/pi^2) sum over n of (-1)^n/n^2 exp(-n^2 pi^2 D t/l^2); with L = l^2/(6 D) the time it is short of is
    /// L (1 + (12/pi^2) sum of (-1)^n/n^2 exp(-n^2 pi^2 t/(6 L))). Source: Crank, The Mathematics of Diffusion, 2nd ed., eq. 4.24.
    /// </remarks>
    public static Span StillMissing(Span elapsed, Span lag)
    {
        if (elapsed.Seconds <= 0 || lag.Seconds <= 0)
            return default;
        var x = elapsed / lag / 6;
        if (x < NothingYet)
            return elapsed;
        var sum = Series(x, n => 1.0 / (n * n));
        return new Span(Math.Clamp(lag.Seconds * (1 + (12 / (Math.PI * Math.PI) * sum)), 0, Math.Min(lag.Seconds, elapsed.Seconds)));
    }

    /// <summary>The rate at which a sheet lets through, as a share of the steady one: 1 + 2 sum over n of (-1)^n exp(-n^2 pi^2 D t/l^2).</summary>
    /// <remarks>Source: eq. 4.24 differentiated. Half of the steady rate at D t/l^2 = 1/7.199 (Ziegel, Frensdorff, Blair, J. Polym. Sci. A-2, 7 (1969) 809).</remarks>
    public static Fraction FlowShare(Span elapsed, Span lag)
    {
        if (lag.Seconds <= 0)
            return new Fraction(elapsed.Seconds > 0 ? 1 : 0);
        var x = elapsed / lag / 6;
        return new Fraction(x < NothingYet ? 0 : Math.Clamp(1 + (2 * Series(x, _ => 1)), 0, 1));
    }

    // Below this D t/l^2 less than exp(-100) of the steady rate comes through.
    private const double NothingYet = 0.0025;

    private static double Series(double x, Func<int, double> weight)
    {
        var sum = 0.0;
        for (var n = 1; n < 60; n++)
        {
            var fades = Math.Exp(-n * n * Math.PI * Math.PI * x);
            if (fades < 1e-17)
                break;
            sum += (n % 2 == 0 ? fades : -fades) * weight(n);
        }

        return sum;
    }

    /// <summary>Vapour through resistances in series, or through any one of them between the pressures at its own faces.</summary>
    /// <remarks>Worked example: 1404 to 234 Pa over 0.0124 Pa m2 s/ng: 94355 ng/(m2 s) (Cengel 14.6).</remarks>
    public static MassFlux Through(Pressure inside, Pressure outside, VapourResistance resistance) =>
        new((inside.Pascals - outside.Pascals) / resistance.PascalSquareMetreSecondsPerKilogram);
}
