using CsCheck;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Assessment.Tests.Losses;

/// <summary>Situations that the tests start from.</summary>
internal static class Bench
{
    public static readonly DateOnly Day = new(2026, 1, 1);

    public static PropertyFacts Facts => PropertyFacts.Default;

    public static WareCatalogue Ware => WareCatalogue.Default;

    public static Content Content(string name) =>
        Facts.Catalogue.Resolve(name).Content ?? throw new ArgumentException(Facts.Catalogue.Resolve(name).Problem, nameof(name));

    public static Situation Of(string content, double grams, string vessel, string closure, double celsius = 25, string? cover = null, double coverMillimetres = 10) => new()
    {
        Content = Content(content),
        Amount = Mass.FromGrams(grams),
        AmountOn = Day,
        Filled = Day,
        Vessel = Ware.FindVessel(vessel) ?? throw new ArgumentException(vessel, nameof(vessel)),
        Closure = Ware.FindClosure(closure) ?? throw new ArgumentException(closure, nameof(closure)),
        Cover = cover is null ? null : Ware.FindCover(cover) ?? throw new ArgumentException(cover, nameof(cover)),
        CoverDepth = cover is null ? null : Length.FromMillimetres(coverMillimetres),
        Temperature = Temperature.FromCelsius(celsius),
    };

    /// <summary>A bottle of 50 mm bore with a 20 mm joint, ground stopper dry: a 2 um gap over 20 mm.</summary>
    public static Situation BromineUnder(string? cover)
    {
        var situation = Of("bromine", 60, "ground-joint bottle 100 mL", "ground-glass stopper, dry", 25, cover);
        return situation with { Vessel = situation.Vessel with { NeckBore = Length.FromMillimetres(20), Bore = Length.FromMillimetres(50) } };
    }

    public static Gen<string> Any(params string[] names) => Gen.Int[0, names.Length - 1].Select(i => names[i]);
}
