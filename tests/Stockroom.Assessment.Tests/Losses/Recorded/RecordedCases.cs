using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses.Recorded;

/// <summary>Bottles of many kinds, with and without weighings, each asked some days on.</summary>
internal static class RecordedCases
{
    private static readonly string[] Contents =
    [
        "bromine", "acetone", "n-hexane", "diethyl ether", "iodine", "mercury", "water", "sulfuric acid 98%", "nitric acid 65%", "hydrochloric acid 37%", "ammonia solution 25%",
        "hydrogen peroxide 30%", "sodium hypochlorite 12%", "hydrofluoric acid 48%", "acetic acid", "ethanol 70%", "formalin", "naphthalene", "sodium", "phosphorus (white)",
        "calcium chloride", "gallium", "caesium", "uranyl nitrate 2%", "radium bromide", "thorium dioxide", "sodium chloride",
    ];

    private static readonly (string Vessel, string Closure)[] Vessels =
    [
        ("glass reagent bottle 250 mL", "plain polypropylene screw cap"), ("ground-joint bottle 250 mL", "ground-glass stopper, dry"), ("HDPE bottle 250 mL", "HDPE screw cap"),
        ("amber glass bottle 250 mL", "screw cap, PTFE-faced liner"), ("LDPE bottle 250 mL", "vented cap"),
    ];

    public static IEnumerable<(string Name, Situation Situation, int Days)> All =>
    [
        .. Contents.SelectMany((c, i) => Vessels.Where((_, j) => j == i % Vessels.Length || j == (i + 2) % Vessels.Length).Select(v => ($"{c}, {v.Vessel}, {v.Closure}", Stocked(c, v, i), 400))),
        .. Covered(), .. Packed(), .. Gases(), .. Weighed(), .. Aired(), .. Odd(), .. Filled(), .. Strengths(), .. Places(), .. Balances(), .. Seldom(),
    ];

    private static Situation Stocked(string content, (string Vessel, string Closure) ware, int i) => Bench.Of(content, 120, ware.Vessel, ware.Closure, 18 + (i % 3)) with
    {
        DailySwing = new TemperatureChange(i % 4 * 2), SeasonalSwing = new TemperatureChange(i % 5 * 3), WarmestMonth = 1 + (i % 12), Humidity = new Fraction(0.3 + (0.1 * (i % 5))),
        Light = (PlaceLight)(i % 3), InVesselSince = i % 2 == 0 ? Bench.Day : null,
    };

    private static IEnumerable<(string Name, Situation Situation, int Days)> Covered()
    {
        foreach (var (content, cover, depth) in ((string, string, double)[])[("bromine", "sulfuric acid 98%", 10), ("bromine", "water", 20), ("phosphorus (white)", "water", 30), ("sodium", "paraffin oil", 15), ("potassium", "argon", 0), ("mercury", "water", 10)])
        {
            var bare = Bench.Of(content, 60, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 21, cover, depth) with { DailySwing = new TemperatureChange(4), SeasonalSwing = new TemperatureChange(8) };
            yield return ($"{content} under {cover}", bare, 300);
            yield return ($"{content} under {cover}, open", bare with { Closure = Bench.Ware.FindClosure("none")! }, 30);
            yield return ($"{content} under {cover}, depths read", bare with { CoverDepths = [Depth(0, depth), Depth(100, depth * 0.8), Depth(200, depth * 0.65)] }, 300);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Packed()
    {
        foreach (var packing in (string[])["can with absorbent", "capped tube", "zip bag", "foil bag", "a wooden box"])
        {
            yield return ($"bromine in a {packing}", Bench.Of("bromine", 60, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 21) with { OuterPacking = packing, DailySwing = new TemperatureChange(4) }, 300);
            yield return ($"acetone in plastic in a {packing}", Bench.Of("acetone", 150, "HDPE bottle 250 mL", "HDPE screw cap", 21) with { OuterPacking = packing, InVesselSince = Bench.Day }, 300);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Gases()
    {
        foreach (var (gas, grams) in ((string, double)[])[("helium", 0.002), ("hydrogen", 0.0005), ("chlorine", 0.02), ("argon", 0.02), ("radon", 1e-9)])
        {
            yield return ($"{gas} sealed", Bench.Of(gas, grams, "glass ampoule 10 mL", "flame seal", 20), 3650);
            yield return ($"{gas} under a septum", Bench.Of(gas, grams, "glass vial 20 mL", "crimp cap, butyl rubber", 20), 100);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Weighed()
    {
        foreach (var (content, vessel, closure) in ((string, string, string)[])[("n-hexane", "ground-joint bottle 500 mL", "ground-glass stopper, dry"), ("ammonia solution 25%", "HDPE bottle 500 mL", "HDPE screw cap"), ("iodine", "amber glass bottle 250 mL", "plain polypropylene screw cap"), ("sodium chloride", "glass jar 500 mL", "loose cap")])
        {
            var bottle = Bench.Of(content, 260, vessel, closure, 19) with { SeasonalSwing = new TemperatureChange(6), DailySwing = new TemperatureChange(3) };
            yield return ($"{content}, two weighings", bottle with { Weighings = Falling(2, 4) }, 400);
            yield return ($"{content}, ten weighings", bottle with { Weighings = Falling(10, 4) }, 400);
            yield return ($"{content}, no loss seen", bottle with { Weighings = Falling(5, 0) }, 400);
            yield return ($"{content}, mass rises", bottle with { Weighings = Falling(5, -3) }, 400);
            yield return ($"{content}, begins to leak", bottle with { Weighings = [.. Falling(4, 1), Weighing(300, 496.5), Weighing(360, 489)] }, 400);
            yield return ($"{content}, drawn from between", bottle with { Weighings = [.. Falling(3, 4), Weighing(260, 440), Weighing(340, 439)], Draws = [new Draw(Bench.Day.AddDays(200), Mass.FromGrams(55)) { Order = 300 }], Amount = Mass.FromGrams(205) }, 400);
            yield return ($"{content}, coarse balance", bottle with { Weighings = [.. Falling(6, 4).Select(w => w with { Readability = Mass.FromGrams(1), Calibration = Mass.FromGrams(1), At = null, Air = null })] }, 400);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Aired()
    {
        var cabinet = new AirSpace(new Volume(0.4), new RateConstant(0.5 / 3600));
        var room = new AirSpace(new Volume(40), new RateConstant(0.7 / 3600)) { Mixing = new Fraction(0.5) };
        foreach (var (content, grams) in ((string, double)[])[("bromine", 60), ("acetone", 150), ("hydrochloric acid 37%", 200), ("radium bromide", 1e-3), ("mercury", 500)])
        {
            yield return ($"{content} in the air of a cabinet", Bench.Of(content, grams, "glass reagent bottle 250 mL", "loose cap", 22) with { Air = cabinet, RoomAir = room }, 30);
            yield return ($"{content} in the air of a room", Bench.Of(content, grams, "glass reagent bottle 250 mL", "vented cap", 22) with { Air = room }, 30);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Odd()
    {
        yield return ("water overfull", Bench.Of("water", 400, "glass reagent bottle 250 mL", "none", 20), 10);
        yield return ("acetone hot", Bench.Of("acetone", 100, "glass reagent bottle 250 mL", "loose cap", 54), 10);
        yield return ("acetaldehyde boils", Bench.Of("acetaldehyde", 100, "glass reagent bottle 250 mL", "loose cap", 25), 10);
        yield return ("acetic acid freezes", Bench.Of("acetic acid", 100, "glass reagent bottle 250 mL", "loose cap", 14) with { SeasonalSwing = new TemperatureChange(12) }, 100);
        yield return ("bleach with a keeper's limit", Bench.Of("sodium hypochlorite 12%", 200, "HDPE bottle 250 mL", "vented cap", 20) with { LeastStrength = new Fraction(0.1), Filled = Bench.Day.AddDays(-60) }, 30);
        yield return ("unknown vapour", Bench.Of("ethylene glycol", 100, "HDPE bottle 250 mL", "HDPE screw cap", 20), 100);
    }

    // Asked while walls and liners are still filling, and of a vessel whose first day nobody knows.
    private static IEnumerable<(string Name, Situation Situation, int Days)> Filled()
    {
        foreach (var days in (int[])[0, 3, 15, 60, 400])
        {
            var plastic = Bench.Of("acetone", 150, "LDPE bottle 250 mL", "HDPE screw cap", 21) with { SeasonalSwing = new TemperatureChange(10), WarmestMonth = 2 };
            yield return ("acetone in plastic, filled then", plastic with { InVesselSince = Bench.Day }, days);
            yield return ("acetone in plastic, filled before", plastic with { InVesselSince = Bench.Day.AddDays(-20) }, days);
            yield return ("acetone in plastic, nobody knows since when", plastic with { InVesselSince = null }, days);
        }

        yield return ("acetone in plastic, filled and weighed", Bench.Of("acetone", 150, "LDPE bottle 250 mL", "HDPE screw cap", 21) with { InVesselSince = Bench.Day, Weighings = [Weighing(0, 220), Weighing(10, 219.9), Weighing(30, 219.2), Weighing(60, 217.9)] }, 100);
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Strengths()
    {
        foreach (var (content, least) in ((string, double)[])[("hydrochloric acid 37%", 0.30), ("hydrochloric acid 37%", 0.10), ("hydrochloric acid 10%", 0.05), ("ammonia solution 25%", 0.20), ("nitric acid 65%", 0.6), ("hydrogen peroxide 3%", 0.025), ("chlorine water", 0.002), ("ethanol 96%", 0.9), ("sulfuric acid 98%", 0.96), ("hydrofluoric acid 48%", 0.2)])
        {
            foreach (var closure in (string[])["loose cap", "screw cap, PTFE-faced liner", "none"])
                yield return ($"{content} under {closure} down to {least}", Bench.Of(content, 200, "glass reagent bottle 250 mL", closure, 20) with { LeastStrength = new Fraction(least), Humidity = new Fraction(0.4), DailySwing = new TemperatureChange(2) }, 200);
            var acid = Bench.Of(content, 200, "glass reagent bottle 250 mL", "loose cap", 20) with { LeastStrength = new Fraction(least) };
            yield return ($"{content}, weighed", acid with { Weighings = [Weighing(0, 400), Weighing(60, 396), Weighing(120, 392.5)] }, 200);
            yield return ($"{content}, filled long ago", acid with { Filled = Bench.Day.AddDays(-500) }, 100);
        }
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Places()
    {
        foreach (var content in (string[])["gallium", "phosphorus (white)", "acetic acid", "formalin", "sulfuric acid 98%", "caesium", "water", "benzene"])
        {
            var bottle = Bench.Of(content, 100, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 15) with { SeasonalSwing = new TemperatureChange(14), DailySwing = new TemperatureChange(5) };
            yield return ($"{content} in a cold place", bottle with { Coldest = Temperature.FromCelsius(-12) }, 100);
            yield return ($"{content} in a hot place", bottle with { Warmest = Temperature.FromCelsius(45), Light = PlaceLight.Window, Humidity = new Fraction(0.9) }, 100);
        }

        foreach (var content in (string[])["sodium hydroxide", "calcium chloride", "phosphorus pentoxide", "potassium", "lithium aluminium hydride", "sulfuric acid 98%", "aluminium chloride"])
        {
            foreach (var closure in (string[])["screw cap, polyethylene cone liner", "loose cap", "cork"])
                yield return ($"{content} under {closure}", Bench.Of(content, 100, "glass jar 250 mL", closure, 20) with { Humidity = new Fraction(0.6), DailySwing = new TemperatureChange(4), OuterPacking = closure == "cork" ? "foil bag" : null }, 300);
            yield return ($"{content}, weighed and gaining", Bench.Of(content, 100, "glass jar 250 mL", "loose cap", 20) with { Weighings = [Weighing(0, 300), Weighing(50, 301), Weighing(100, 302.2)] }, 300);
        }

        yield return ("bromine under acid, flat mass", Bench.Of("bromine", 60, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 20, "sulfuric acid 98%") with { Weighings = [Weighing(0, 300), Weighing(90, 300), Weighing(180, 300.01), Weighing(270, 300)] }, 300);
        yield return ("water over phosphorus, weighed", Bench.Of("phosphorus (white)", 30, "glass reagent bottle 100 mL", "loose cap", 20, "water", 30) with { Weighings = [Weighing(0, 300), Weighing(90, 297), Weighing(180, 294.2)], CoverDepths = [Depth(0, 30), Depth(90, 29)] }, 300);
        yield return ("water over phosphorus, topped up", Bench.Of("phosphorus (white)", 30, "glass reagent bottle 100 mL", "loose cap", 20, "water", 30) with { CoverDepths = [Depth(0, 30), Depth(90, 20), Depth(91, 30), Depth(180, 24)] }, 300);
    }

    private static IEnumerable<(string Name, Situation Situation, int Days)> Balances()
    {
        var bottle = Bench.Of("acetone", 150, "glass reagent bottle 250 mL", "screw cap, PTFE-faced liner", 20) with { SeasonalSwing = new TemperatureChange(8), DailySwing = new TemperatureChange(3) };
        yield return ("acetone, air not read", bottle with { Weighings = [.. Falling(5, 3).Select(w => w with { At = null, Air = null })] }, 300);
        yield return ("acetone, air of other days", bottle with { Weighings = [.. Falling(5, 3).Select((w, i) => w with { At = Temperature.FromCelsius(15 + (4 * i)), Air = new Pressure(97_000 + (1500 * i)), Calibration = Mass.FromGrams(0.002) })] }, 300);
        yield return ("acetone, three on one day", bottle with { Weighings = [Weighing(0, 400), Weighing(100, 399.1), Weighing(100, 399.12) with { Order = 101 }, Weighing(100, 399.08) with { Order = 102 }] }, 300);
        yield return ("acetone, one weighing", bottle with { Weighings = [Weighing(50, 400)] }, 300);
        yield return ("acetone, drawn, amount not known", bottle with { Weighings = [Weighing(0, 400), Weighing(50, 399.6), Weighing(100, 350), Weighing(200, 349)], Draws = [new Draw(Bench.Day.AddDays(70), null) { Order = 75 }] }, 300);
        yield return ("acetone, a step nobody booked", bottle with { Weighings = [Weighing(0, 400), Weighing(50, 399.6), Weighing(100, 399.2), Weighing(150, 379), Weighing(200, 378.6), Weighing(250, 378.2)] }, 300);
        yield return ("acetone, a slip of the pen", bottle with { Weighings = [Weighing(0, 400), Weighing(50, 399.6), Weighing(100, 499.2), Weighing(150, 398.8), Weighing(200, 398.4)] }, 300);
        yield return ("acetone, leaks from the start", bottle with { Weighings = [Weighing(0, 400), Weighing(20, 390), Weighing(40, 380.5)] }, 60);
        yield return ("acetone, hardly any loss", bottle with { Weighings = [Weighing(0, 400), Weighing(200, 399.99)] }, 300);
        yield return ("acetone, weighed before it was known", bottle with { AmountOn = Bench.Day.AddDays(120), Weighings = [Weighing(0, 400), Weighing(60, 399.5), Weighing(180, 398.6)] }, 300);
        yield return ("acetone sealed, weighed", Bench.Of("acetone", 4, "glass ampoule 10 mL", "flame seal", 20) with { Weighings = [Weighing(0, 12), Weighing(200, 12), Weighing(400, 11.8)] }, 500);
    }

    // What is seldom met: boiling, unknown, strong sources, gases in plastics, solutions that stand under their own water, balances read in part.
    private static IEnumerable<(string Name, Situation Situation, int Days)> Seldom()
    {
        var cabinet = new AirSpace(new Volume(0.4), new RateConstant(0.5 / 3600));
        var room = new AirSpace(new Volume(40), new RateConstant(0.7 / 3600)) { Mixing = new Fraction(0.5) };
        yield return ("water in an ampoule left open", Bench.Of("water", 5, "glass ampoule 10 mL", "none", 20), 30);
        yield return ("ammonia solution boils", Bench.Of("ammonia solution 25%", 150, "glass reagent bottle 250 mL", "loose cap", 52), 10);
        yield return ("argon in a cylinder", Bench.Of("argon", 500, "gas cylinder 2 L", "valve", 20) with { Air = room }, 365);
        foreach (var vessel in (string[])["HDPE bottle 250 mL", "glass reagent bottle 250 mL"])
            yield return ($"unknown liquid, {vessel}", Bench.Of("water", 100, vessel, "HDPE screw cap", 20) with { Content = Content.Orphan("brown liquid", MatterState.Liquid), Air = room, Weighings = [Weighing(0, 150), Weighing(90, 149), Weighing(180, 148.1)] }, 200);
        foreach (var gas in (string[])["argon", "hydrogen", "chlorine"])
            yield return ($"{gas} in plastic", Bench.Of(gas, 0.1, "HDPE bottle 250 mL", "HDPE screw cap", 20) with { Air = cabinet, RoomAir = room, InVesselSince = Bench.Day }, 20);
        foreach (var grams in (double[])[1e-12, 2e-8, 50])
            yield return ($"radium bromide, {grams} g, in a room", Bench.Of("radium bromide", grams, "glass vial 20 mL", "loose cap", 20) with { Air = room }, 30);
        yield return ("radium bromide sealed, in a room", Bench.Of("radium bromide", 0.001, "glass ampoule 10 mL", "flame seal", 20) with { Air = room, Filled = Bench.Day.AddDays(-400) }, 30);
        yield return ("bromine sealed, in a cabinet", Bench.Of("bromine", 5, "glass ampoule 10 mL", "flame seal", 20) with { Air = cabinet, RoomAir = room }, 30);
        foreach (var content in (string[])["sodium hydroxide 50%", "sodium hydroxide 10%", "calcium chloride 40%", "ethanol 70%", "formalin", "tincture of iodine"])
        {
            var bottle = Bench.Of(content, 150, "HDPE bottle 250 mL", "loose cap", 21) with { Air = cabinet, RoomAir = room, Humidity = new Fraction(0.6) };
            yield return ($"{content} in a cabinet", bottle, 400);
            yield return ($"{content}, weighed down", bottle with { Weighings = [Weighing(0, 200), Weighing(60, 170), Weighing(120, 142), Weighing(180, 120)] }, 200);
        }

        var naphthalene = Bench.Of("naphthalene", 100, "HDPE bottle 250 mL", "HDPE screw cap", 20);
        yield return ("naphthalene in plastic, weighed", naphthalene with { Weighings = [Weighing(0, 140), Weighing(90, 139), Weighing(180, 138), Weighing(270, 137)] }, 300);
        yield return ("naphthalene in plastic, weighed up", naphthalene with { Weighings = [Weighing(0, 140), Weighing(90, 140.2), Weighing(180, 140.5)] }, 300);
        var acetone = Bench.Of("acetone", 150, "glass reagent bottle 250 mL", "loose cap", 20);
        yield return ("acetone, air read in part", acetone with { Weighings = [.. Falling(5, 30).Select((w, i) => i % 2 == 0 ? w with { At = null } : w with { Air = null })] }, 200);
        yield return ("acetone, drawn on the day of weighing", acetone with { Weighings = [Weighing(0, 400), Weighing(40, 390), Weighing(80, 300)], Draws = [new Draw(Bench.Day, Mass.FromGrams(10)) { Order = 1 }, new Draw(Bench.Day.AddDays(40), Mass.FromGrams(80)) { Order = 41 }], Amount = Mass.FromGrams(60) }, 100);
        yield return ("acetone, amount known on the day of the last weighing", acetone with { AmountOn = Bench.Day.AddDays(80), Weighings = [Weighing(0, 400), Weighing(40, 390), Weighing(80, 381)] }, 100);
        yield return ("acetone somewhat above the band", Bench.Of("acetone", 150, "ground-joint bottle 250 mL", "ground-glass stopper, greased", 20) with { Weighings = [Weighing(0, 400), Weighing(183, 399.3), Weighing(365, 398.6)] }, 400);
        yield return ("water in a steel can", Bench.Of("water", 100, "steel can 250 mL", "screw cap, PTFE-faced liner", 20), 100);
    }

    private static DepthReading Depth(int day, double millimetres) => new(Bench.Day.AddDays(day), Length.FromMillimetres(millimetres));

    private static WeighIn Weighing(int day, double grams) => new(Bench.Day.AddDays(day), Mass.FromGrams(grams), Mass.FromGrams(0.01)) { At = Temperature.FromCelsius(20), Air = new Pressure(101_000), Order = day };

    private static WeighIn[] Falling(int count, double gramsAYear) =>
        [.. Enumerable.Range(0, count).Select(i => Weighing(i * 36, 500 - (gramsAYear * i * 36 / 365.25)))];
}
