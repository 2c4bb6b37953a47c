using System.Globalization;
using Stockroom.Assessment.Holdings;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Desk;

/// <summary>Figures as the keeper reads them: three digits that count, a unit, a band.</summary>
internal static class Words
{
    public static string Grams(decimal? grams) => grams switch
    {
        null => "unknown",
        >= 1000m => $"{Number((double)grams / 1000)} kg",
        < 0.1m => $"{Number((double)grams * 1000)} mg",
        _ => $"{Number((double)grams)} g",
    };

    public static string Grams(Mass mass) => Grams((decimal)Math.Clamp(mass.Grams, 0, 1e12));

    /// <summary>Loss per year with its band; "none" where nothing leaves, "unknown" where it cannot be computed.</summary>
    public static string Loss(Holding holding)
    {
        if (holding.Forecast is not { LossRate: { } rate } forecast)
            return "unknown";
        if (rate.High.GramsPerYear < 1e-6)
            return forecast.IsComplete ? "none" : "unknown";
        return $"{Band(rate.Select(r => r.GramsPerYear), "g")}{(forecast.IsComplete ? "" : ", and more")}";
    }

    /// <summary>"4.5 g (0.45 to 45)"; grams below a tenth are said in milligrams or micrograms.</summary>
    public static string Band(Band<double> band, string unit)
    {
        if (unit == "g" && band.High is > 0 and < 1e-9)
            return "under 1 ng";
        var size = band.Expected > 0 ? band.Expected : band.High;
        if (unit == "g" && size < 1e-4)
            return Band(band.Select(v => v * 1e6), "µg");
        if (unit == "g" && size < 0.1)
            return Band(band.Select(v => v * 1e3), "mg");
        return $"{Number(band.Expected)} {unit} ({Number(band.Low)} to {Number(band.High)})";
    }

    /// <summary>Three digits that count, never in powers of ten.</summary>
    public static string Number(double value)
    {
        if (value == 0)
            return "0";
        var size = Math.Abs(value);
        if (size >= 100)
            return value.ToString("0", CultureInfo.InvariantCulture);
        if (size < 1e-6)
            return "under 0.000001";
        var digits = Math.Max(0, 2 - (int)Math.Floor(Math.Log10(size)));
        return Math.Round(value, Math.Min(15, digits)).ToString("0.###############", CultureInfo.InvariantCulture);
    }

    public static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "beyond 500 years";
}
