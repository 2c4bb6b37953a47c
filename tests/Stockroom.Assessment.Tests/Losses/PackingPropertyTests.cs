using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>An outer packing stands in series behind all that leaves the vessel: closure, liner and body.</summary>
public sealed class PackingPropertyTests
{
    private static readonly Gen<Situation> Bottles = Gen.Select(
        Bench.Any("bromine", "iodine", "acetone", "toluene", "water", "ethanol 70%", "hydrochloric acid 37%", "mercury", "diethyl ether", "hydrogen peroxide 30%"),
        Bench.Any("ground-joint bottle 250 mL", "HDPE bottle 250 mL", "LDPE bottle 125 mL", "PP bottle 250 mL", "PFA bottle 250 mL"),
        Bench.Any("ground-glass stopper, dry", "screw cap, PTFE-faced liner", "HDPE screw cap", "loose cap", "rubber bung"),
        Gen.Double[0, 35]).Select(b => Bench.Of(b.Item1, 20, b.Item2, b.Item3, b.Item4) with { DailySwing = new TemperatureChange(4), SeasonalSwing = new TemperatureChange(8) });

    // Words of a keeper, one for each row.
    private static readonly string[] Words = ["capped tube", "can with absorbent", "packing jar", "sealed bag", "zip bag", "foil bag"];

    private static readonly Gen<string> Packings = Bench.Any(Words);

    private static Band<MassRate>? Loss(Situation situation) => Forecast.Of(situation, Bench.Facts, Bench.Day).LossRate;

    [Fact]
    public void Words_EveryRow_IsAmongThem() => Assert.Equal(OuterPackings.All.Select(p => p.Name).Order(), Words.Select(w => OuterPackings.Find(w)!.Name).Order());

    [Fact]
    public void Packing_Any_NeverRaisesTheLoss() =>
        Gen.Select(Bottles, Packings).Sample((bottle, packing) =>
        {
            if (Loss(bottle) is not { } bare)
                return true;
            var packed = Loss(bottle with { OuterPacking = packing })!.Value;
            bool NoMore(MassRate a, MassRate b) => a.KilogramsPerSecond <= b.KilogramsPerSecond * (1 + 1e-9);
            return NoMore(packed.Low, bare.Low) && NoMore(packed.Expected, bare.Expected) && NoMore(packed.High, bare.High);
        }, iter: 300);

    // However leaky the bottle, no more leaves than the packing passes when the air in it is full of vapour: c G.
    [Fact]
    public void Packing_Any_PassesNoMoreThanItsOwnWall() =>
        Gen.Select(Bottles, Packings).Sample((bottle, packing) =>
        {
            var explained = LossExplanation.Of(bottle with { OuterPacking = packing }, Bench.Facts);
            return explained.Vapour is not { } c || explained.Paths.SingleOrDefault(p => p.Joined == "in series with all") is not { Resistance: { } r }
                || explained.Total.Expected.KilogramsPerSecond <= c.KilogramsPerCubicMetre / r.SecondsPerCubicMetre * (1 + 1e-9);
        }, iter: 200);

    // By hand: foil bag, 0.03 um round 100 mm over 5 mm; what permeates 1 mm of LDPE is far more than it passes.
    [Fact]
    public void FoilBag_RoundAPlasticBottle_LetsGoWhatItPassesItself()
    {
        var bottle = Bench.Of("toluene", 80, "LDPE bottle 125 mL", "screw cap, PTFE-faced liner", 25);
        var bare = Loss(bottle)!.Value.Expected;
        var packed = LossExplanation.Of(bottle with { OuterPacking = "foil bag" }, Bench.Facts);
        var state = new LossState(bottle, Bench.Facts);
        var passes = Bench.Facts.DiffusivityInAir(bottle.Content.Pure!, bottle.Temperature).Value!.Value.SquareMetresPerSecond
            * Math.PI * 0.1 * 0.03e-6 / 5e-3 * state.Vapour[0].Pressure.Value!.Value.Pascals * 0.09214 / (8.314463 * 298.15);
        Assert.True(bare.KilogramsPerSecond > 1000 * passes);
        Assert.Equal(1, packed.Total.Expected.KilogramsPerSecond / passes, 2e-3);
    }

    // Resistances of the explanation, put together as its words say, give the total: leaks in parallel, the wall beside, the packing behind both.
    [Theory]
    [InlineData("toluene", "can with absorbent")]
    [InlineData("toluene", "foil bag")]
    [InlineData("acetone", "packing jar")]
    [InlineData("iodine", "sealed bag")]
    [InlineData("water", "zip bag")]
    public void Network_OfAPackedPlasticBottle_GivesTheTotal(string content, string packing)
    {
        var explained = LossExplanation.Of(Bench.Of(content, 50, "HDPE bottle 250 mL", "HDPE screw cap") with { OuterPacking = packing }, Bench.Facts);
        var ways = explained.Paths.Where(p => p.Joined is "in parallel" or "beside" && p.Resistance is not null).ToList();
        Assert.Contains(ways, p => p.Joined == "beside");
        var outer = Assert.Single(explained.Paths, p => p.Joined == "in series with all").Resistance!.Value.SecondsPerCubicMetre;
        var rate = explained.Vapour!.Value.KilogramsPerCubicMetre / (outer + (1 / ways.Sum(p => 1 / p.Resistance!.Value.SecondsPerCubicMetre)));
        Assert.Equal(1, explained.Total.Expected.KilogramsPerSecond / rate, 1e-6);
    }

    // What the network of a moment says and what the course starts with are the same.
    [Fact]
    public void Course_OfAPackedBottle_StartsAtTheRateOfItsNetwork() =>
        Gen.Select(Bottles, Packings).Where(x => x.Item1.Content.Pure is not null).Sample((bottle, packing) =>
        {
            var packed = bottle with { OuterPacking = packing };
            var network = YearNetwork.Of(packed, Bench.Facts);
            if (!network.Year.IsKnown)
                return true;
            var course = new LossCourse(packed, Bench.Facts, network);
            course.Evaluate([packed.Amount.Kilograms]);
            return Math.Abs(course.Rate(0, BandEnd.Expected, 1) - network.Year.Total.Expected.KilogramsPerSecond) <= 2e-3 * network.Year.Total.Expected.KilogramsPerSecond;
        }, iter: 100);

    [Fact]
    public void SealedAmpouleAndDecay_InAPacking_AreNotTouched()
    {
        foreach (var packing in Words)
        {
            foreach (var bare in new[] { Bench.Of("bromine", 1, "glass ampoule 10 mL", "flame seal"), Bench.Of("helium", 0.002, "quartz ampoule 10 mL", "flame seal") })
                Assert.Equal(Loss(bare), Loss(bare with { OuterPacking = packing }));
            var radium = Bench.Of("radium bromide", 0.001, "HDPE bottle 30 mL", "HDPE screw cap");
            MassRate Decay(Situation s) => Forecast.Of(s, Bench.Facts, Bench.Day).Paths.Single(p => p.Role == PathRole.Transmuted).Rate.Expected;
            Assert.True(Decay(radium).KilogramsPerSecond > 0);
            Assert.Equal(Decay(radium), Decay(radium with { OuterPacking = packing }));
        }
    }
}
