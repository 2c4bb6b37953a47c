using CsCheck;
using Stockroom.Assessment.Losses;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

public sealed class AirForecastTests
{
    private static readonly AirSpace Cabinet = new(new Volume(0.3), new RateConstant(0.2 / 3600));
    private static readonly AirSpace Room = new(new Volume(30), new RateConstant(0.4 / 3600)) { Mixing = new Fraction(1) };

    private static Forecast In(Situation situation) => Forecast.Of(situation with { Air = Cabinet, RoomAir = Room }, Bench.Facts, Bench.Day);

    // Two boxes by hand: room G/(1 x 30 x 0.4/h); cabinet that and G/(0.3 x 0.3 x 0.2/h).
    [Fact]
    public void Cabinet_InARoom_IsTwoBoxesInSeries()
    {
        var forecast = In(Bench.BromineUnder(null));
        var g = forecast.LossRate!.Value.Expected.KilogramsPerSecond;
        var room = g / (30 * 0.4 / 3600);
        Assert.Equal(room, forecast.Air!.Room!.Concentration.Expected.KilogramsPerCubicMetre, room * 1e-9);
        var cabinet = room + (g / (0.3 * 0.3 * 0.2 / 3600));
        Assert.Equal(cabinet, forecast.Air.Concentration.Expected.KilogramsPerCubicMetre, cabinet * 1e-9);
    }

    // 29 CFR 1910.1000 and the NIOSH guide: bromine 0.1 ppm is the lowest of its limits for daily work; ethanol burns from 3.3 %.
    [Fact]
    public void Limits_StrictestOfAllKinds_IsTaken()
    {
        Assert.Equal(0.1, In(Bench.BromineUnder(null)).Air!.Limit!.Share!.Value.PartsPerMillion, 1e-9);
        var ethanol = In(Bench.Of("ethanol", 200, "glass reagent bottle 250 mL", "loose cap")).Air!;
        Assert.Equal(0.033, ethanol.Share!.Value.Expected / ethanol.ShareOfLowerFlammableLimit!.Value, 1e-6);
        Assert.Equal("ethanol", ethanol.Gases[0].Gas.Name);
    }

    // A ceiling limit counts as much as a mean over eight hours: hydrogen chloride has 5 ppm as ceiling in 29 CFR 1910.1000.
    [Fact]
    public void Limits_OfASolution_AreThoseOfItsGas()
    {
        var air = In(Bench.Of("hydrochloric acid 37%", 200, "glass reagent bottle 250 mL", "loose cap")).Air!;
        Assert.Equal("hydrogen chloride", air.Gases[0].Gas.Name);
        Assert.Equal(5, air.Limit!.Share!.Value.PartsPerMillion, 0.1);
        Assert.DoesNotContain(air.Gases, g => g.Gas.Name == "water");
    }

    [Fact]
    public void Mixture_SharesOfLimits_AddUp()
    {
        var air = In(Bench.Of("ethanol 70%", 200, "glass reagent bottle 250 mL", "loose cap")).Air!;
        Assert.Equal(air.Gases.Sum(g => g.ShareOfLimit?.Expected.Value ?? 0), air.ShareOfLimit!.Value.Value, 1e-12);
    }

    // 100 mL of ether, 71 g, in a refrigerator of 150 L: 71/74.12 mol of 24.1 L each in 150 L: 15.4 % by volume; it burns from 1.9 %.
    [Fact]
    public void Breakage_EtherInARefrigerator_IsEightTimesTheFlammableLimit()
    {
        var fridge = AirSpaces.Of("refrigerator")!.Space;
        var ether = Bench.Of("diethyl ether", 71.3, "glass reagent bottle 100 mL", "screw cap, PTFE-faced liner", 4) with { Air = fridge, RoomAir = Room };
        var breakage = Forecast.Of(ether, Bench.Facts, Bench.Day).Air!.Breakage!;
        Assert.Equal(71.3 / 74.12 * 8.314462 * 277.15 / 101_325 / 0.15, breakage.Share!.Value.Value, 1e-3);
        Assert.InRange(breakage.ShareOfLowerFlammableLimit!.Value.Value, 7, 9);
    }

    // A liquid gives no more vapour than saturation: 500 g of water-white xylene in a small cabinet stands at its vapour pressure.
    [Fact]
    public void Breakage_MuchLiquid_StopsAtSaturation()
    {
        var breakage = In(Bench.Of("xylene", 200, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 20)).Air!.Breakage!;
        var p = Bench.Facts.VapourPressure(Bench.Facts.Catalogue["xylene"], Temperature.FromCelsius(20)).Value!.Value;
        Assert.Equal(p.Pascals / 101_325, breakage.Share!.Value.Value, 1e-9);
    }

    // 1 kg of argon is 0.60 m3: in 10 m3 the oxygen falls from 20.95 to 19.7 %; in a cabinet nothing is left.
    [Fact]
    public void Breakage_InertGas_TakesTheOxygensPlace()
    {
        var argon = Bench.Of("argon", 1000, "gas cylinder 2 L", "valve", 20);
        Oxygen(19.7, argon with { Air = new AirSpace(new Volume(10), new RateConstant(0.4 / 3600)) }, 0.1);
        Oxygen(0, argon with { Air = Cabinet }, 1e-9);
        static void Oxygen(double percent, Situation s, double within) =>
            Assert.Equal(percent, Forecast.Of(s, Bench.Facts, Bench.Day).Air!.Breakage!.Oxygen.Percent, within);
    }

    // By hand: 1 mg of radium-226 is 36.6 MBq; a tenth of its radon free, all of it passing an open neck slowly; decay 2.1e-6 1/s beside the fresh air.
    [Fact]
    public void Radon_OpenRadium_StandsByTheBalanceOfDecayAndFreshAir()
    {
        var open = Bench.Of("radium", 0.001, "glass vial 2 mL", "none");
        var radon = In(open).Air!.Radon!;
        var lambda = Math.Log(2) / 3.3018e5;
        var most = lambda * 3.66e7 * 0.1 / ((lambda + (0.4 / 3600)) * 30);
        Assert.InRange(radon.Room!.Value.Expected.BecquerelsPerCubicMetre, 0.5 * most, most);
        Assert.Equal(radon.Room.Value.Expected.BecquerelsPerCubicMetre / 300, radon.ShareOfReference!.Value.Expected.Value, 1e-9);
    }

    [Fact]
    public void Radon_FlameSealed_StaysInside()
    {
        var radon = In(Bench.Of("radium", 0.001, "glass ampoule 2 mL", "flame seal")).Air!.Radon!;
        Assert.Equal(0, radon.Inner.High.BecquerelsPerCubicMetre);
        Assert.Null(In(Bench.Of("thorium", 1, "glass ampoule 2 mL", "flame seal")).Air?.Radon);
    }

    // By hand: a gram of uranium in an old ore holds 12.35 kBq of radium; a tenth of the radon free, all of it passing.
    [Fact]
    public void Radon_OpenOre_ComesFromItsRadium()
    {
        var radon = In(Bench.Of("pitchblende", 1, "glass vial 20 mL", "none")).Air!.Radon!;
        var lambda = Math.Log(2) / 3.3018e5;
        var most = lambda * 12_350 * 238.03 / 270.03 * 0.1 / ((lambda + (0.4 / 3600)) * 30);
        Assert.InRange(radon.Room!.Value.Expected.BecquerelsPerCubicMetre, 0.98 * most, 1.01 * most);
    }

    // Thoron lives 55.6 s: of what an open vial lets out its room hardly thins any before it decays, and a closure stops nearly all of it.
    [Fact]
    public void Thoron_OfThorium_IsStoppedByAClosure_AndHasNoLevelOfItsOwn()
    {
        var open = In(Bench.Of("thorium", 1, "glass vial 20 mL", "none")).Air!;
        Assert.Null(open.Radon);
        Assert.Null(open.Thoron!.ShareOfReference);
        var radium = DecayForecast.Of(Bench.Of("thorium", 1, "glass vial 20 mL", "none"), Bench.Facts, Bench.Day.AddDays(30))!.Members.Single(m => m.Nuclide.Name == "Ra-224").Activity;
        Assert.InRange(open.Thoron.Room!.Value.High.BecquerelsPerCubicMetre, 1e-3, radium.Becquerels * 0.3 / 30);
        var closed = In(Bench.Of("thorium", 1, "glass vial 20 mL", "screw cap, PTFE-faced liner")).Air!.Thoron!;
        Assert.True(closed.Room!.Value.Expected < open.Thoron.Room.Value.Expected / 100);
        Assert.Equal(0, In(Bench.Of("thorium", 1, "glass ampoule 2 mL", "flame seal")).Air!.Thoron!.Inner.High.BecquerelsPerCubicMetre);
    }

    [Fact]
    public void Air_MoreFreshAir_IsNeverWorse() =>
        Gen.Select(Bench.Any("bromine", "diethyl ether", "ammonia solution 25%", "iodine", "mercury"), Gen.Double[0.02, 5], Gen.Double[1, 10]).Sample((content, changes, more) =>
        {
            double At(double n) => Forecast.Of(
                Bench.Of(content, 50, "glass reagent bottle 250 mL", "loose cap") with { Air = new AirSpace(new Volume(0.3), new RateConstant(n / 3600)) }, Bench.Facts, Bench.Day).Air!.Concentration.Expected.KilogramsPerCubicMetre;
            return At(changes * more) <= At(changes) * (1 + 1e-12);
        }, iter: 60);

    // Sums over a cabinet by hand: each adds its own share.
    [Fact]
    public void Cabinet_OfSeveral_AddsTheirShares()
    {
        var (ether, acetone) = (In(Bench.Of("diethyl ether", 50, "glass reagent bottle 250 mL", "loose cap")).Air!, In(Bench.Of("acetone", 50, "glass reagent bottle 250 mL", "loose cap")).Air!);
        var air = new CabinetAir([("A", ether), ("B", acetone)]);
        Assert.Equal(ether.ShareOfLimit!.Value.Value + acetone.ShareOfLimit!.Value.Value, air.Limits.Expected.Value, 1e-12);
        Assert.Equal(ether.ShareOfLowerFlammableLimit!.Value.Value + acetone.ShareOfLowerFlammableLimit!.Value.Value, air.Flammable.Expected.Value, 1e-12);
        Assert.Equal("A", air.WorstFire!.Value.Label);
    }

    private static Substance Sub(string name) => Bench.Facts.Catalogue[name];

    private static Band<Fraction> Shares(double low, double expected, double high) => new(new(low), new(expected), new(high));

    private static AirGas Gas(string name, Band<Fraction>? share, Band<Fraction>? limit, Band<Fraction>? burns) => new(Sub(name), default, share, null, limit, burns);

    // Two gases by hand: 5 and 2 % by volume take 7 % of the air's room, oxygen with it; their shares of limits add, end by end.
    [Fact]
    public void SeveralGases_AddUp_AndTakeTheOxygensPlace()
    {
        var air = new AirForecast([Gas("acetone", Shares(0.01, 0.05, 0.2), Shares(0.1, 0.5, 2), Shares(0.01, 0.02, 0.1)), Gas("argon", Shares(0, 0.02, 0.03), null, null), Gas("methanol", null, Shares(0.2, 0.3, 0.4), Shares(0.03, 0.05, 0.06))]);
        Assert.Equal(20.95 * 0.93, air.Oxygen.Percent, 1e-9);
        Assert.Equal((0.3, 0.8, 2.4), (Math.Round(air.LimitBand!.Value.Low.Value, 9), Math.Round(air.LimitBand.Value.Expected.Value, 9), Math.Round(air.LimitBand.Value.High.Value, 9)));
        Assert.Equal((0.04, 0.07, 0.16), (Math.Round(air.FlammableBand!.Value.Low.Value, 9), Math.Round(air.FlammableBand.Value.Expected.Value, 9), Math.Round(air.FlammableBand.Value.High.Value, 9)));
        Assert.Equal(0.05, air.Share!.Value.Expected.Value);
    }

    // More gas than air leaves no oxygen, and no less than none; no gas leaves all of it, and no sum.
    [Fact]
    public void NoGas_AndNothingButGas_AreTheEndsOfIt()
    {
        Assert.Equal(0, new AirForecast([Gas("argon", Shares(0.5, 1.2, 2), null, null)]).Oxygen.Value);
        var none = new AirForecast([]);
        Assert.Equal((20.95, null, null, null), (Math.Round(none.Oxygen.Percent, 9), none.LimitBand, none.FlammableBand, none.Share));
        Assert.Equal(default, none.Concentration);
    }

    // The one nearest to its limit leads, whatever it is in grams.
    [Fact]
    public void Mixture_LeadsWithTheOneNearestToItsLimit()
    {
        var gases = In(Bench.Of("formalin", 100, "glass reagent bottle 250 mL", "loose cap")).Air!.Gases;
        Assert.Equal("formaldehyde", gases[0].Gas.Name);
        Assert.True(gases[0].ShareOfLimit!.Value.Expected > gases[1].ShareOfLimit!.Value.Expected && gases[0].Concentration.Expected.KilogramsPerCubicMetre < gases[1].Concentration.Expected.KilogramsPerCubicMetre);
    }

    // By hand, one container in a cabinet with a room about it and one without: the room's sums are of the room where there is one.
    [Fact]
    public void Cabinet_SumsInnerAndRoomApart_AndNamesTheWorst()
    {
        static AirForecast Air(double inner, double? room, double oxygen, double? danger, double? fire) =>
            new([Gas("acetone", null, Shares(inner / 2, inner, inner * 2), null)], room is { } r ? new AirForecast([Gas("acetone", null, Shares(r / 2, r, r * 2), null)]) : null)
            {
                Breakage = new AirBreakage(Sub("acetone"), default, null, null, danger is { } d ? new(d) : null, fire is { } f ? new(f) : null, new(oxygen)),
            };
        var air = new CabinetAir([("A", Air(4, 0.1, 0.20, 3, null)), ("B", Air(1, 0.3, 0.15, 9, 0.2)), ("C", Air(2, null, 0.18, null, 0.5))]);
        Assert.Equal((3.5, 7, 14), (air.Limits.Low.Value, air.Limits.Expected.Value, air.Limits.High.Value));
        Assert.Equal((1.2, 2.4, 4.8), (Math.Round(air.RoomLimits.Low.Value, 9), Math.Round(air.RoomLimits.Expected.Value, 9), Math.Round(air.RoomLimits.High.Value, 9)));
        Assert.Equal(["C", "B", "A"], air.Leading);
        Assert.Equal(("B", "B", "C"), (air.WorstOxygen!.Value.Label, air.WorstDanger!.Value.Label, air.WorstFire!.Value.Label));
        Assert.Null(new CabinetAir([("A", new AirForecast([]))]).WorstOxygen);
        Assert.Equal(0, air.Radon.Expected.Value);
    }

    // A small room changes its air some 0.3 to 0.5 times an hour by itself, a ventilated cabinet ten times (EN 14470-1); a refrigerator holds 150 L. From memory.
    [Theory]
    [InlineData("refrigerator", 0.15, 0.05, true)]
    [InlineData("ventilated cabinet", 0.5, 10, false)]
    [InlineData("cabinet", 0.3, 0.2, true)]
    public void PlacesHaveTheirUsualAir(string kind, double cubicMetres, double changesAnHour, bool closed)
    {
        var air = AirSpaces.Of(kind)!;
        Assert.Equal(cubicMetres, air.Space.Volume.CubicMetres);
        Assert.Equal(changesAnHour, air.Space.AirChange.PerSecond * 3600, 1e-9);
        Assert.Equal(0.3, air.Space.Mixing.Value);
        Assert.Equal(closed, air.Closed);
    }

    [Fact]
    public void Room_HasItsAirForItself()
    {
        Assert.InRange(AirSpaces.Room.Space.AirChange.PerSecond * 3600, 0.3, 0.5);
        Assert.Equal(1, AirSpaces.Room.Space.Mixing.Value);
        Assert.False(AirSpaces.Room.Closed);
        Assert.Null(AirSpaces.Of("room"));
        Assert.Null(AirSpaces.Of("a shelf"));
    }

    // 1 g of radium-226 is 1 Ci, 36.6 GBq: each thousandth of it a prefix less.
    [Theory]
    [InlineData(1, "36.6 GBq")]
    [InlineData(1e-3, "36.6 MBq")]
    [InlineData(1e-6, "36.6 kBq")]
    [InlineData(1e-9, "36.6 Bq")]
    public void Radon_SaysHowMuchRadium(double grams, string words)
    {
        var radon = In(Bench.Of("radium", grams, "glass vial 2 mL", "none")).Air!.Radon!;
        Assert.StartsWith($"{words} of radium-226", radon.Because, StringComparison.Ordinal);
        Assert.Contains("flame-sealed: its radon stays", In(Bench.Of("radium", grams, "glass ampoule 2 mL", "flame seal")).Air!.Radon!.Because, StringComparison.Ordinal);
    }

    // Where there is no room about it, what is breathed is the air it stands in.
    [Fact]
    public void Radon_IsJudgedInTheAirThatIsBreathed()
    {
        var (inCabinet, inRoom) = (In(Bench.Of("radium", 1e-6, "glass vial 2 mL", "none")).Air!.Radon!, Forecast.Of(Bench.Of("radium", 1e-6, "glass vial 2 mL", "none") with { Air = Room }, Bench.Facts, Bench.Day).Air!.Radon!);
        Assert.True(inCabinet.Inner.Expected.BecquerelsPerCubicMetre > 10 * inCabinet.Room!.Value.Expected.BecquerelsPerCubicMetre);
        Assert.Equal(inCabinet.Room.Value.Expected.BecquerelsPerCubicMetre / 300, inCabinet.ShareOfReference!.Value.Expected.Value, 1e-12);
        Assert.Equal(inRoom.Inner.Expected.BecquerelsPerCubicMetre / 300, inRoom.ShareOfReference!.Value.Expected.Value, 1e-12);
    }
}
