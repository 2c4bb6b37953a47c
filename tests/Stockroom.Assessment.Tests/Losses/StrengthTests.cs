using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>The strength of solutions whose parts leave at different paces, take up moisture, or decompose as well.</summary>
public sealed class StrengthTests
{
    // Without the tincture of iodine, which passes half water on its way: there the law of its vapours changes at one blow.
    private static readonly Gen<Situation> Bottles = Gen.Select(
        Bench.Any("hydrochloric acid 37%", "ammonia solution 25%", "formalin", "bromine water", "chlorine water", "nitric acid 65%", "hydrofluoric acid 48%", "hydrogen peroxide 30%", "ethanol 70%"),
        Bench.Any("ground-glass stopper, dry", "screw cap, PTFE-faced liner", "loose cap", "none", "vented cap"),
        Gen.Double[5, 25],
        Gen.Double[0, 6],
        Gen.Double[0.2, 0.7]).Select((content, closure, celsius, swing, humidity) => Bench.Of(content, 150, "glass reagent bottle 250 mL", closure, celsius) with
        {
            DailySwing = new TemperatureChange(swing), SeasonalSwing = new TemperatureChange(swing), Humidity = new Fraction(humidity),
        });

    private static StrengthForecast? Strength(Situation s, int days = 0) => Forecast.Of(s, Bench.Facts, Bench.Day.AddDays(days)).Strength;

    private static Situation Open(string content, double celsius = 20, double humidity = 0.5) =>
        Bench.Of(content, 200, "glass reagent bottle 250 mL", "loose cap", celsius) with { Humidity = new Fraction(humidity) };

    private static Content Weak(string solute, decimal percent) => new()
    {
        Name = $"weak {solute}", State = MatterState.Liquid, Parts = [new Part(Bench.Facts.Catalogue[solute], percent), new Part(Bench.Facts.Catalogue["water"], 100 - percent)],
    };

    // Per cent at which a solution ends: what leaves is as strong as what stays.
    private static double Settles(Situation s)
    {
        var course = Course(s).Expected;
        return course.Strength(new Span(course.Last.Seconds)).Value * (double)s.Content.Parts[0].Percent;
    }

    private static Band<Trajectory> Course(Situation s, double fineness = 1) => Trajectory.Follow(
        new LossCourse(s, Bench.Facts, YearNetwork.Of(s, Bench.Facts), moisture: MoistureUptake.Of(s, Bench.Facts)) { Deciding = DecidingPart.Of(s.Content, Bench.Facts) }, fineness);

    // Hydrochloric acid boils unchanged at 20.2 % at 1 atm, and at 23 to 24 % under 50 mmHg (CRC Handbook of Chemistry and Physics; from memory
    // the latter): the colder, the stronger. In still air the lighter water also diffuses faster. Common practice: strong acid fumes down to about 20 %.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.5)]
    public void HydrochloricAcid_FromAboveAndBelow_SettlesAtOneStrength(double humidity)
    {
        var (above, below) = (Settles(Open("hydrochloric acid 37%", 20, humidity)), Settles(Open("hydrochloric acid 10%", 20, humidity)));
        Assert.Equal(above, below, 0.7);
        Assert.InRange(above, 20, 26);
    }

    // Weighings may have thinned the content and then leave nothing to follow it by: the strength stays as they left it.
    [Fact]
    public void Strength_ThinnedByTheWeighings_WithNoCourseFromThere_IsAsTheyLeftIt()
    {
        var filled = Open("ammonia solution 25%");
        var thinned = filled with { AmountOn = Bench.Day.AddDays(90), Content = filled.Content with { Parts = Weak("ammonia", 20).Parts } };
        var still = new Trajectory([new Trajectory.Point(0, 0.2, 0)]);
        var strength = StrengthForecasts.Of(
            filled, thinned, Bench.Facts, Bench.Day.AddDays(200), YearNetwork.Of(filled, Bench.Facts), new Band<Trajectory>(still, still, still))!;
        Assert.Equal(0.8, strength.Left.Expected.Value, 6);
        Assert.Null(strength.HalfLow);
        Assert.DoesNotContain("leaves", strength.Because, StringComparison.Ordinal);
    }

    // Nitric acid boils unchanged at 68.4 % at 1 atm (CRC Handbook of Chemistry and Physics).
    [Fact]
    public void NitricAcid_WeakerAndStronger_GoTowardsTheConstantBoilingAcid()
    {
        Assert.InRange(Settles(Open("nitric acid 65%")), 65.5, 72);
        Assert.True(Strength(Open("nitric acid 90%"), 400)!.Left.Expected.Value < 0.98);
    }

    [Fact]
    public void LimitBelowTheConstantBoilingAcid_IsNeverReachedAndSaysWhy()
    {
        var strength = Strength(Open("hydrochloric acid 37%") with { LeastStrength = Fraction.FromPercent(15) })!;
        Assert.Null(strength.BelowUse!.Low);
        Assert.Contains("never below use: near 2", strength.Because, StringComparison.Ordinal);
        Assert.NotNull(Strength(Open("hydrochloric acid 37%") with { LeastStrength = Fraction.FromPercent(30) })!.BelowUse!.High);
    }

    // A tenth of it, and of what settles far below that or not at all: where a strength settles shifts with the warmth either way (hydrofluoric
    // acid settles higher in a warm room), and with it what is never reached.
    [Fact]
    public void Strength_Hotter_IsNeverLostLater() =>
        Gen.Select(Bottles.Where(b => b.Content.Name is "hydrochloric acid 37%" or "ammonia solution 25%" or "bromine water" or "chlorine water"), Gen.Double[1, 8]).Sample((bottle, warmer) =>
        {
            var tenth = bottle with { LeastStrength = Fraction.FromPercent(0.9 * (double)bottle.Content.Parts[0].Percent) };
            var (cool, warm) = (Strength(tenth)?.BelowUse, Strength(tenth with { Temperature = new Temperature(bottle.Temperature.Kelvin + warmer) })?.BelowUse);
            return Never(cool?.Expected) >= Never(warm?.Expected) && Never(cool?.Low) >= Never(warm?.Low);
        }, iter: 60);

    private static DateOnly Never(DateOnly? day) => day ?? DateOnly.MaxValue;

    [Fact]
    public void Strength_HoldsItsExpected() =>
        Gen.Select(Bottles, Gen.Int[0, 4000]).Sample((bottle, days) => Strength(bottle, days) is not { } s
            || (s.Left.Low <= s.Left.Expected && s.Left.Expected <= s.Left.High && Never(s.HalfLow) <= Never(s.HalfExpected) && Never(s.HalfExpected) <= Never(s.HalfHigh)), iter: 60);

    [Theory]
    [InlineData("hydrochloric acid 37%")]
    [InlineData("ammonia solution 25%")]
    [InlineData("sulfuric acid 98%")]
    public void Strength_ClosedInTheFlame_HasNoDate(string content) =>
        Assert.Null(Strength(Bench.Of(content, 5, "glass ampoule 10 mL", "flame seal"), 10_000));

    // First the ethanol goes, and the iodine grows stronger; then the iodine goes too (common practice: an old tincture in a loose cap has lost its colour).
    [Fact]
    public void TinctureOfIodine_GrowsStrongerThenFades()
    {
        Assert.True(Strength(Open("tincture of iodine"), 60)!.Left.Expected.Value > 1);
        Assert.True(Strength(Open("tincture of iodine"), 2000)!.Left.Expected.Value < 0.2);
    }

    // What does not leave is all still there: strength times what is left of the whole stays.
    [Theory]
    [InlineData("salt solution 10%")]
    [InlineData("copper(II) sulfate 1 M")]
    public void SoluteThatStays_IsConserved(string content)
    {
        var solution = Open(content);
        for (var days = 100; days < 3000; days += 100)
        {
            var forecast = Forecast.Of(solution, Bench.Facts, Bench.Day.AddDays(days));
            if (forecast.Remaining!.Value.Expected.Grams > 20)
                Assert.Equal(200, forecast.Strength!.Left.Expected.Value * forecast.Remaining.Value.Expected.Grams, 0.5);
        }
    }

    // Half the step moves a date by less than 0.5 %, or by hours, or the strength on that day by less than 0.5 % of the start where it hardly falls.
    // Compared as far as both are followed: each ends with its first step below 9 % of the whole.
    [Fact]
    public void HalfOfTheStep_MovesNoDate() =>
        Bottles.Sample(bottle =>
        {
            var (whole, half) = (Course(bottle).Expected, Course(bottle, 0.5).Expected);
            return new[] { 0.9, 0.7, 0.5, 0.3 }.All(left =>
            {
                var (a, b) = (new StrengthOverTime(whole, default, null, default).TimeTo(new(left)), new StrengthOverTime(half, default, null, default).TimeTo(new(left)));
                if ((a ?? b) is not { } then)
                    return true;
                var near = a is { } one && b is { } two && (Math.Abs((one / two) - 1) < 0.005 || Math.Abs((one - two).Days) < 0.1);
                var followed = new Span(Math.Min(then.Seconds, Math.Min(whole.Last.Seconds, half.Last.Seconds)));
                return near || Math.Abs((whole.Strength(followed) - half.Strength(followed)).Value) < 0.005;
            });
        }, iter: 60);

    // A gas so weak that Henry's law holds leaves in proportion to itself: half after ln 2 of its mass over its rate, as long as the water is all but all there.
    [Theory]
    [InlineData("bromine")]
    [InlineData("hydrogen sulfide")]
    public void WeakSolutionOfAGas_FadesExponentially(string gas)
    {
        var bottle = Open("water", humidity: 1) with { Content = Weak(gas, 0.01m) };
        var rate = Forecast.Of(bottle, Bench.Facts, Bench.Day).LossRate!.Value.Expected.KilogramsPerSecond;
        var half = Course(bottle).Expected;
        var time = new StrengthOverTime(half, default, null, default).TimeTo(new(0.5))!.Value;
        Assert.Equal(Math.Log(2) * bottle.Amount.Kilograms * 1e-4 / rate, time.Seconds, 0.01 * time.Seconds);
    }

    // Both read the same gap: what the ways in bring to sulfuric acid in a year is what thins it.
    [Fact]
    public void SulfuricAcid_IsThinnedByWhatTheWaysInBring()
    {
        var acid = Open("sulfuric acid 98%");
        var inAYear = Assessment.Losses.Ingress.IngressForecasts.Of(acid, Bench.Facts).First(i => i.Gas == "water").Rate!.Value.Expected.GramsPerYear;
        Assert.Equal(200 / (200 + inAYear), Strength(acid, 365)!.Left.Expected.Value, 0.01);
    }

    // Wilson, Ind. Eng. Chem. 13 (1921) 326: air of 46.8 % humidity stands over acid of 45 %, air of 56.8 % over acid of 40 % (from memory).
    [Fact]
    public void SulfuricAcid_EndsInBalanceWithTheRoom()
    {
        var acid = Open("sulfuric acid 98%", 25);
        var (early, late) = (Strength(acid, 365)!, Strength(acid with { Amount = Mass.FromGrams(20) }, 150_000)!);
        Assert.True(late.Left.Expected < early.Left.Expected);
        Assert.InRange(late.Left.Expected.Value * 98, 43, 46);
        Assert.Contains("moisture it takes up from the room", late.Because, StringComparison.Ordinal);
    }

    // Stokes and Robinson 1949: lye of 9.79 mol/kg, 28.1 %, stands under air of 50 % humidity (from memory); strong lye thins to it, weak lye dries to it.
    [Theory]
    [InlineData("sodium hydroxide 50%", 50)]
    [InlineData("sodium hydroxide 10%", 10)]
    public void Lye_EndsInBalanceWithTheRoom_FromEitherSide(string content, double percent)
    {
        var late = Strength(Open(content, 25) with { Amount = Mass.FromGrams(20) }, 150_000)!;
        Assert.InRange(late.Left.Expected.Value * percent, 27, 29.5);
    }

    // Potassium is radioactive by its K-40, and a century of that changes nothing in its lye.
    [Fact]
    public void PotashLye_HasAStrength_AndItsMoistureIsPartOfIt()
    {
        var lye = Open("potassium hydroxide 40%", 25);
        Assert.True(Strength(lye, 365)!.Left.Expected.Value < 1);
        var moisture = Assessment.Losses.Ingress.IngressForecasts.Of(lye, Bench.Facts).First(i => i.Gas == "water");
        Assert.Equal(PathVerdict.Absent, moisture.Verdict);
        Assert.Contains("changes its strength", moisture.Because, StringComparison.Ordinal);
        Assert.Contains("vapour pressure 1.2", Forecast.Of(lye, Bench.Facts, Bench.Day).Paths.Single(p => p.Path == "past the closure").Because, StringComparison.Ordinal);
    }

    [Fact]
    public void MoistureThatNoTableKnows_IsSaidNotToCount() =>
        Assert.Contains("moisture it may take up is not counted", Strength(Open("ethanol 96%"))!.Because, StringComparison.Ordinal);

    // The water of an open peroxide leaves first; that is not set against what decomposes.
    [Fact]
    public void DecompositionAndEvaporation_NeverEndLaterThanDecompositionAlone()
    {
        foreach (var content in (string[])["hydrogen peroxide 30%", "hydrogen peroxide 3%", "sodium hypochlorite 12%", "bleach"])
        {
            var sealedIn = Strength(Bench.Of(content, 5, "glass ampoule 10 mL", "flame seal"))!;
            var open = Strength(Bench.Of(content, 5, "glass ampoule 10 mL", "none"))!;
            Assert.True(Never(open.HalfExpected) <= Never(sealedIn.HalfExpected) && Never(open.HalfLow) <= Never(sealedIn.HalfLow));
            Assert.NotNull(sealedIn.HalfExpected);
        }
    }

    // A gap three times as leaky as expected, by the balance, loses the strength in a third of the time.
    [Fact]
    public void Strength_WeighedToLeakFaster_IsLostSooner()
    {
        var bottle = Bench.Of("ammonia solution 25%", 200, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 20);
        var aDay = 3 * Forecast.Of(bottle, Bench.Facts, Bench.Day).LossRate!.Value.Expected.KilogramsPerSecond * 86400;
        var weighed = bottle with
        {
            Weighings = [.. new[] { 0, 20, 40, 60 }.Select(d => new WeighIn(Bench.Day.AddDays(d), new Mass(0.4 - (d * aDay)), Mass.FromGrams(0.001)))],
        };
        double Days(Situation s) => Strength(s with { LeastStrength = Fraction.FromPercent(20) }, 60)!.BelowUse!.Expected!.Value.DayNumber - Bench.Day.DayNumber;
        Assert.InRange(Days(bottle) / Days(weighed), 2.4, 3.6);
        var (before, after) = (Strength(bottle, 60)!.Left, Strength(weighed, 60)!.Left);
        Assert.True(after.High.Value - after.Low.Value < before.High.Value - before.Low.Value);
    }

    // On the day of the last weighing it is what the weighings made of the content by then, and it falls on from there: nothing is lost twice.
    [Fact]
    public void Strength_Weighed_GoesOnFromTheLastWeighing()
    {
        var weighed = Bench.Of("ammonia solution 25%", 200, "ground-joint bottle 250 mL", "ground-glass stopper, dry", 20) with
        {
            Weighings = [.. new[] { (0, 410.0), (180, 404), (365, 398.6), (550, 393.8) }.Select(w => new WeighIn(Bench.Day.AddDays(w.Item1), Mass.FromGrams(w.Item2), Mass.FromGrams(0.01)))],
        };
        var then = (double)Forecast.Of(weighed, Bench.Facts, Bench.Day.AddDays(550)).Weighed!.Start.Content.PercentOf("ammonia solution");
        Assert.Equal(then / 25, Strength(weighed, 550)!.Left.Expected.Value, 1e-6);
        Assert.InRange(Strength(weighed, 275)!.Left.Expected.Value, then / 25, 1);
        Assert.True(Strength(weighed, 900)!.Left.Expected.Value < then / 25);
        Assert.Contains($"by the weighings {then:0.##} % on 2027-07-05", Strength(weighed, 900)!.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("formalin", "formaldehyde solution")]
    [InlineData("bleach", "sodium hypochlorite")]
    [InlineData("tincture of iodine", "iodine")]
    [InlineData("ammonia buffer pH 10", "ammonia solution")]
    [InlineData("bromine", null)]
    [InlineData("picric acid (wet)", null)]
    public void DecidingPart_IsTheOneItIsNamedFor(string content, string? part)
    {
        var parts = Bench.Content(content).Parts;
        Assert.Equal(part, DecidingPart.Of(Bench.Content(content), Bench.Facts) is { } i ? parts[i].Substance.Name : null);
    }

    [Fact]
    public void Strength_FilledEarlier_IsCountedFromThenAndSaysSo()
    {
        var old = Open("ammonia solution 25%") with { Filled = Bench.Day.AddDays(-100) };
        Assert.Equal(Bench.Day.AddDays(-100), Strength(old)!.Since);
        Assert.True(Strength(old)!.Left.Expected < Strength(Open("ammonia solution 25%"))!.Left.Expected);
        Assert.Contains("as if 200 g had been in it from the start", Strength(old)!.Because, StringComparison.Ordinal);
    }
}
