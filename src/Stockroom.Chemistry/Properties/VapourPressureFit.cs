using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>One published fit with its range. Outside it, ln p runs on linearly in 1/T and the band widens 1.1 times per 10 K.</summary>
internal sealed record VapourPressureFit(
    Func<VapourPressureFit, Temperature, Pressure> Form,
    FitCoefficients Coefficients,
    Temperature? Critical,
    Pressure? CriticalPressure,
    Temperature From,
    Temperature To,
    Spread Spread,
    Provenance Provenance)
{
    private const double Slack = 0.5;

    public Fact<Pressure> At(Temperature t)
    {
        if (t.Kelvin >= From.Kelvin - Slack && t.Kelvin <= To.Kelvin + Slack)
            return Fact<Pressure>.Of(Form(this, t), Spread, Provenance);
        var end = t < From ? From : To;
        var beyond = Math.Abs(t.Kelvin - end.Kelvin);
        var p = ClausiusClapeyron.Extrapolate(Form(this, end), end, EnthalpyAt(end), t);
        var widened = Spread.And(Spread.Of(Math.Pow(1.1, beyond / 10)));
        return Fact<Pressure>.Of(p, widened, Provenance, $"{beyond:0} K outside the fit ({From.Celsius:0} to {To.Celsius:0} degrees C); extrapolated, band widened");
    }

    /// <summary>Enthalpy of vaporisation that the fit's slope implies.</summary>
    public MolarEnergy EnthalpyAt(Temperature t)
    {
        var low = new Temperature(Math.Max(t.Kelvin - 0.25, From.Kelvin));
        var high = new Temperature(Math.Min(low.Kelvin + 0.5, To.Kelvin));
        low = new Temperature(high.Kelvin - 0.5);
        var slope = Math.Log(Form(this, high) / Form(this, low)) / ((1 / low.Kelvin) - (1 / high.Kelvin));
        return new MolarEnergy(slope * PhysicalConstants.GasConstant);
    }
}
