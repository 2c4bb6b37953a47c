using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Pressure that a glass tube may hold across its wall. EN 1595: p = 20 (K/S) W/(OD - W) bar with K/S = 7 N/mm2 for borosilicate 3.3.
/// Lame: hoop stress at the inner face = p (ro^2 + ri^2)/(ro^2 - ri^2). Long, open-ended, unscratched tube free of stress.
/// Source: EN 1595 in data of glass makers; Timoshenko, Strength of Materials, part II.
/// Worked examples: 12 mm by 1 mm: 12.73 bar; ri 200 mm, ro 300 mm, 80 MPa: 208 MPa.
/// </summary>
public static class GlassTubeStrength
{
    /// <summary>Allowable stress of borosilicate 3.3 glass, 7 N/mm2.</summary>
    public static readonly Pressure BorosilicateStress = Pressure.FromBar(70);

    public static Pressure En1595(Length outside, Length wall, Pressure allowableStress) =>
        allowableStress * (2 * wall.Metres / (outside.Metres - wall.Metres));

    public static Length WallFor(Length outside, Pressure load, Pressure allowableStress) =>
        outside * (load.Pascals / ((2 * allowableStress.Pascals) + load.Pascals));

    public static Pressure LameHoopStress(Length innerRadius, Length outerRadius, Pressure load)
    {
        var (i, o) = (innerRadius.Metres * innerRadius.Metres, outerRadius.Metres * outerRadius.Metres);
        return load * ((o + i) / (o - i));
    }

    public static Pressure LameAllowable(Length innerRadius, Length outerRadius, Pressure allowableStress)
    {
        var (i, o) = (innerRadius.Metres * innerRadius.Metres, outerRadius.Metres * outerRadius.Metres);
        return allowableStress * ((o - i) / (o + i));
    }
}
