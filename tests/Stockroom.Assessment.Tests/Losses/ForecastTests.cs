using System.Reflection;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class ForecastTests
{
    [Fact]
    public void Forecast_Orphan_ClaimsNothing()
    {
        var orphan = Bench.BromineUnder(null) with { Content = Content.Orphan("unknown corrosive liquid", MatterState.Liquid) };
        var forecast = Forecast.Of(orphan, Bench.Facts, Bench.Day.AddYears(1));
        Assert.Null(forecast.LossRate);
        Assert.Null(forecast.Remaining);
        Assert.Empty(forecast.Reaches);
        Assert.False(forecast.IsComplete);
        Assert.Contains(forecast.Warnings, w => w.Contains("not known", StringComparison.Ordinal));
    }

    [Fact]
    public void Forecast_EverySubstanceInABottle_SaysWhyOfEveryPath()
    {
        foreach (var content in Bench.Facts.Catalogue.Substances.Select(Content.Of).Concat(Bench.Facts.Catalogue.Preparations))
        {
            var situation = Bench.Of("water", 50, "HDPE bottle 250 mL", "screw cap, polyethylene cone liner") with { Content = content, DailySwing = new TemperatureChange(4) };
            var forecast = Forecast.Of(situation, Bench.Facts, Bench.Day.AddDays(200));
            Assert.All(forecast.Paths, p => Assert.False(string.IsNullOrWhiteSpace(p.Because), content.Name));
            Assert.All(forecast.Paths.Where(p => p.Rate.High.KilogramsPerSecond > 0), p => Assert.NotNull(p.Source));
            Assert.True(forecast.LossRate is { } r ? double.IsFinite(r.High.KilogramsPerSecond) && r.Low.KilogramsPerSecond >= 0 : !forecast.IsComplete, content.Name);
        }
    }

    [Fact]
    public void Forecast_SolutionWithAGasThatNoTableKnowsThroughTheWall_IsNotWhole()
    {
        var acid = Forecast.Of(Bench.Of("hydrochloric acid 37%", 250, "PP bottle 250 mL", "plain polypropylene screw cap"), Bench.Facts, Bench.Day);
        Assert.False(acid.IsComplete);
        Assert.Contains(acid.Warnings, w => w.StartsWith("through the wall: hydrogen chloride not counted", StringComparison.Ordinal));
    }

    // Neither a salt nor phosphoric acid leaves its solution as vapour: common practice.
    [Theory]
    [InlineData("sodium hypochlorite 12%")]
    [InlineData("phosphoric acid 85%")]
    [InlineData("sodium hydroxide 10%")]
    public void Forecast_SolutionOfWhatIsNotVolatile_InPlastic_IsWhole(string content)
    {
        var bottle = Forecast.Of(Bench.Of(content, 250, "HDPE bottle 250 mL", "HDPE screw cap"), Bench.Facts, Bench.Day);
        Assert.True(bottle.IsComplete, string.Join("; ", bottle.Warnings));
    }

    [Fact]
    public void Forecast_LiquidThatBoilsInThePlace_IsNotANumber()
    {
        var forecast = Forecast.Of(Bench.Of("acetaldehyde", 50, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 25), Bench.Facts, Bench.Day);
        Assert.Null(forecast.LossRate);
        Assert.Contains(forecast.Warnings, w => w.Contains("boils", StringComparison.Ordinal));
    }

    // Common practice: table salt and saltpetre do not evaporate; a dye that the tables do not know is not claimed either way.
    [Theory]
    [InlineData("potassium nitrate", true)]
    [InlineData("gold", true)]
    [InlineData("methylene blue", false)]
    public void Forecast_Solids_AreNilOrUnknown(string content, bool known)
    {
        var forecast = Forecast.Of(Bench.Of(content, 10, "glass vial 20 mL", "screw cap, PTFE-faced liner"), Bench.Facts, Bench.Day.AddYears(10));
        Assert.Equal(known, forecast.LossRate is not null);
        if (known)
            Assert.Equal(10, forecast.Remaining!.Value.Low.Grams, 1e-6);
    }

    [Fact]
    public void Forecast_SharesOfTheWaysOut_AddToOne()
    {
        var forecast = Forecast.Of(Bench.Of("toluene", 100, "HDPE bottle 250 mL", "HDPE screw cap"), Bench.Facts, Bench.Day);
        Assert.Equal(1, forecast.Paths.Sum(p => p.Share.Value), 1e-9);
    }

    // Published half-life of 12.5 trade per cent bleach at 80 degrees F: 5.95 of 12.5 after 180 days, so half is lost at about 160.
    [Fact]
    public void Strength_StrongBleachInAWarmRoom_IsHalvedWithinTheBand()
    {
        var bleach = Bench.Of("sodium hypochlorite 12%", 500, "HDPE bottle 500 mL", "vented cap", 26.7);
        var strength = Forecast.Of(bleach, Bench.Facts, Bench.Day.AddDays(160)).Strength!;
        Assert.True(strength.HalfLow <= Bench.Day.AddDays(160) && strength.HalfHigh >= Bench.Day.AddDays(160));
        Assert.True(strength.Left.Low <= strength.Left.Expected && strength.Left.Expected <= strength.Left.High);
    }

    // HSDB: under half of the original strength after 2 years at 24 degrees C.
    [Fact]
    public void Strength_StrongBleachAfterTwoYears_IsUnderHalf() =>
        Assert.True(Forecast.Of(Bench.Of("sodium hypochlorite 12%", 500, "HDPE bottle 500 mL", "vented cap", 24), Bench.Facts, Bench.Day.AddYears(2)).Strength!.Left.Expected.Value < 0.5);

    [Fact]
    public void Air_SteadyCabinet_IsTheBoxModel()
    {
        // 0.5 m3, 0.2 changes an hour, mixing 0.3: Q = 8.33e-6 m3/s.
        var air = new AirSpace(new Volume(0.5), new RateConstant(0.2 / 3600));
        var forecast = Forecast.Of(Bench.BromineUnder(null) with { Air = air }, Bench.Facts, Bench.Day);
        Assert.Equal(forecast.LossRate!.Value.Expected.KilogramsPerSecond / (0.3 * 0.5 * 0.2 / 3600), forecast.Air!.Concentration.Expected.KilogramsPerCubicMetre, 1e-12);
        Assert.True(forecast.Air.ShareOfLimit!.Value.Value > 1);
    }

    [Fact]
    public void PublicSignatures_CarryNoBareDouble()
    {
        var bare = typeof(Forecast).Assembly.GetExportedTypes()
            .Where(t => t.Namespace is { } n && (n.StartsWith("Stockroom.Assessment.Losses", StringComparison.Ordinal) || n == "Stockroom.Assessment" || n == "Stockroom.Assessment.Vessels"))
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => m switch
            {
                MethodBase b => b.GetParameters().Any(p => IsBare(p.ParameterType)) || (b is MethodInfo i && IsBare(i.ReturnType)),
                PropertyInfo p => IsBare(p.PropertyType),
                FieldInfo f => IsBare(f.FieldType),
                _ => false,
            })
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}");
        Assert.Equal([], bare);
    }

    private static bool IsBare(Type t) => t == typeof(double) || t == typeof(float) || t == typeof(double?);
}
