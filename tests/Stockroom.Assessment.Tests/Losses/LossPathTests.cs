using Stockroom.Assessment.Losses;
using Stockroom.Assessment.Losses.Paths;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class PastClosureTests : LossPathContractTests
{
    protected override ILossPath Path => new PastClosure();

    protected override Situation Absent => Bench.Of("bromine", 1, "glass ampoule 10 mL", "flame seal");

    protected override IReadOnlyList<PublishedCase> Published =>
    [
        new(Bench.BromineUnder(null), 4.5, 0.15, "two-film figures for a 20 mm joint, 2 um gap over 20 mm, 25 degrees C"),
        new(OpenTube(), 0.06797, 0.05, "Geankoplis, 3rd ed., example 6.2-2: water, 152.4 mm of still dry air, 1.595e-7 mol/(m2 s) x 1000, in a 1 mm bore"),
    ];

    // Stefan tube of Geankoplis 6.2-2 with a bore of 1 mm: 1.595e-4 mol/(m2 s) x 7.854e-7 m2 x 18.015 g/mol a year. The end
    // correction of a quarter pi times 0.5 mm is in it.
    private static Situation OpenTube()
    {
        var s = Bench.Of("water", 0.001, "glass vial 2 mL", "none", 19.85) with { Humidity = new Fraction(0) };
        return s with
        {
            Vessel = s.Vessel with
            {
                Bore = Length.FromMillimetres(100), NeckBore = Length.FromMillimetres(1), NeckLength = Length.FromMillimetres(152.0), Volume = Volume.FromMillilitres(0.001),
            },
        };
    }
}

public sealed class BreathingTests : LossPathContractTests
{
    protected override ILossPath Path => new Breathing();

    protected override Situation Absent => Bench.BromineUnder(null);

    // Derived by hand: 100 mL vessel of which 80.8 mL are headspace over 60 g of bromine, swing 6 K about 25 degrees C: p(28) 32.55 kPa and
    // p(22) 25.24 kPa by Antoine; V = 80.8 mL (6/298.15 + 7.31/68.78 + 0.02) = 11.8 mL a day of 2.077 g/L = 9.0 g a year.
    protected override IReadOnlyList<PublishedCase> Published =>
        [new(Bench.BromineUnder(null) with { DailySwing = new TemperatureChange(6) }, 9.0, 0.03, "gas law, derived by hand")];
}

public sealed class ThroughWallTests : LossPathContractTests
{
    protected override ILossPath Path => new ThroughWall();

    protected override Situation Absent => Bench.Of("toluene", 100, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner");

    protected override IReadOnlyList<PublishedCase> Published =>
        [new(Toluene(), 1022.7, 0.002, "toluene in high-density polyethylene, 70 g mm/(m2 day), 1 L bottle of 0.06 m2 and 1.5 mm at 23 degrees C")];

    private static Situation Toluene()
    {
        var s = Bench.Of("toluene", 800, "HDPE bottle 1000 mL", "screw cap, PTFE-faced liner", 23);
        return s with { Vessel = s.Vessel with { Wetted = new Area(0.06), Wall = Length.FromMillimetres(1.5) } };
    }
}

public sealed class ThroughLinerTests : LossPathContractTests
{
    protected override ILossPath Path => new ThroughLiner();

    protected override Situation Absent => Bench.BromineUnder(null);

    // 4.8 barrer of water vapour through 0.25 mm of PTFE would be gas data; contact data stand first: 0.157 g mm/(m2 day) at 39.5
    // degrees C, half of it against 50 % humidity, over a 30 mm mouth.
    protected override IReadOnlyList<PublishedCase> Published =>
        [new(Bench.Of("water", 100, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 39.5), 0.157 * 0.5 / 0.25 * 7.0686e-4 * 365.25, 0.02, "film table of fluoropolymers, converted by hand")];
}

public sealed class ThroughCoverTests : LossPathContractTests
{
    protected override ILossPath Path => new ThroughCover();

    protected override Situation Absent => Bench.BromineUnder(null);

    // The cover itself loses nothing; its figures are those of the whole way, tested with the bromine figures.
    protected override IReadOnlyList<PublishedCase> Published => [new(Bench.BromineUnder("water"), 0, 0, "series resistance")];
}

public sealed class ThroughPackingTests : LossPathContractTests
{
    protected override ILossPath Path => new ThroughPacking();

    protected override Situation Absent => Bench.BromineUnder(null);

    // The packing itself loses nothing; its figures are those of the whole way, below.
    protected override IReadOnlyList<PublishedCase> Published => [new(Bench.BromineUnder(null) with { OuterPacking = "can with absorbent" }, 0, 0, "series resistance")];

    // By hand: the stopper's gap 2 um round 20 mm over 20 mm, the can's 10 um round 100 mm over 5 mm, 100 times wider; Stefan's drift at
    // 28 per cent vapour makes the leak 1.17 times what plain diffusion gives.
    [Fact]
    public void Can_RoundAGroundJoint_ChangesAlmostNothing() => Assert.Equal(1 / (1 + (1.17 / 100)), Left("can with absorbent", Bench.BromineUnder(null)), 0.001);

    [Fact]
    public void FoilBag_RoundALooseCap_HoldsNearlyAll() =>
        Assert.InRange(Left("foil bag", Bench.Of("diethyl ether", 50, "glass vial 20 mL", "loose cap")), 1e-4, 0.05);

    [Theory]
    [InlineData("a box from the attic")]
    [InlineData("sealed bag")]
    public void Packing_UnknownOrOfAnUnknownFilm_IsNoBarrierAndSaysSo(string words)
    {
        var forecast = Forecast.Of(Bench.Of("tin tetrachloride", 50, "glass vial 20 mL", "loose cap") with { OuterPacking = words }, Bench.Facts, Bench.Day);
        Assert.Contains("counted as no barrier", forecast.Paths.Single(p => p.Path == Path.Name).Because, StringComparison.Ordinal);
        Assert.Equal(1, Left(words, Bench.Of("tin tetrachloride", 50, "glass vial 20 mL", "loose cap")));
    }

    [Theory]
    [InlineData("in a CAPPED TUBE of the museum", "capped tube")]
    [InlineData("can with absorbent", "can with absorbent")]
    [InlineData("press-seal bag", "zip bag")]
    [InlineData("two plastic bags", "sealed bag")]
    public void Words_OfTheKeeper_NameARow(string words, string name) => Assert.Equal(name, OuterPackings.Find(words)!.Name);

    private static double Left(string packing, Situation situation) =>
        Forecast.Of(situation with { OuterPacking = packing }, Bench.Facts, Bench.Day).LossRate!.Value.Expected / Forecast.Of(situation, Bench.Facts, Bench.Day).LossRate!.Value.Expected;
}

public sealed class FlameSealTests : LossPathContractTests
{
    protected override ILossPath Path => new FlameSeal();

    protected override Situation Absent => Bench.BromineUnder(null);

    protected override IReadOnlyList<PublishedCase> Published => [new(Bench.Of("bromine", 1, "glass ampoule 10 mL", "flame seal"), 0, 0, "common practice")];
}

public sealed class RadioactiveDecayPathTests : LossPathContractTests
{
    protected override ILossPath Path => new RadioactiveDecayPath();

    protected override Situation Absent => Bench.Of("copper", 10, "glass vial 20 mL", "screw cap, PTFE-faced liner");

    // ln 2 / 2.6234 years of 1 g (NUBASE2020); radium: 0.1 % of 2.31 g of bromide in 1600 years half-life, by hand.
    protected override IReadOnlyList<PublishedCase> Published =>
    [
        new(Bench.Of("promethium", 1, "glass ampoule 2 mL", "flame seal"), Math.Log(2) / 2.6234, 0.001, "NUBASE2020 half-life"),
        new(Bench.Of("radium", 1, "glass ampoule 2 mL", "flame seal"), Math.Log(2) / 1600, 0.001, "NUBASE2020 half-life"),
    ];
}

public sealed class DecompositionTests : LossPathContractTests
{
    protected override ILossPath Path => new Decomposition();

    protected override Situation Absent => Bench.BromineUnder(null);

    // 30 % peroxide, 1 % a year at 25 degrees C.
    protected override IReadOnlyList<PublishedCase> Published =>
        [new(Bench.Of("hydrogen peroxide 30%", 100, "HDPE bottle 125 mL", "vented cap", 25), 0.303, 0.01, "monographs of peroxide makers: about 1 % a year")];
}

public sealed class LossPathRegistrationTests
{
    [Fact]
    public void LossPaths_EveryPathOfTheAssembly_IsListed()
    {
        var written = typeof(ILossPath).Assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false } && typeof(ILossPath).IsAssignableFrom(t)).Select(t => t.Name).Order(StringComparer.Ordinal);
        Assert.Equal(written, LossPaths.All.Select(p => p.GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void LossPaths_EveryPath_HasItsContractTest()
    {
        var tested = GetType().Assembly.GetTypes().Where(t => !t.IsAbstract && t.IsSubclassOf(typeof(LossPathContractTests))).Select(t => t.Name[..^"Tests".Length]).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], LossPaths.All.Select(p => p.GetType().Name).Where(n => !tested.Contains(n)));
    }
}
