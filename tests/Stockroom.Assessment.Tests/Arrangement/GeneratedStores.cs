using Stockroom.Assessment.Arrangement;
using Stockroom.Assessment.Arrangement.Checking;
using Stockroom.Assessment.Neighbours;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Hazards;

namespace Stockroom.Assessment.Tests.Arrangement;

/// <summary>Stores made up from a seed: places enough, contents of every dangerous sort, most of it well placed and a part not.</summary>
internal static class GeneratedStores
{
    private static readonly string[] Contents =
    [
        "acetone", "ethanol 96%", "propan-2-ol", "n-hexane", "toluene", "turpentine", "diethyl ether", "methanol", "ethyl acetate",
        "hydrochloric acid 37%", "nitric acid 65%", "sulfuric acid 98%", "sulfuric acid 37%", "phosphoric acid 85%", "acetic acid", "formic acid",
        "sodium hydroxide", "sodium hydroxide 10%", "potassium hydroxide", "ammonia solution 25%", "sodium carbonate", "sodium hydrogencarbonate",
        "sodium hypochlorite 12%", "hydrogen peroxide 3%", "hydrogen peroxide 30%", "potassium permanganate", "potassium nitrate", "silver nitrate", "potassium chlorate",
        "potassium dichromate", "iodine", "bromine", "sodium", "potassium", "lithium", "calcium granules", "magnesium", "zinc powder", "aluminium",
        "phosphorus (white)", "phosphorus (red)", "sulfur", "mercury", "gallium", "copper", "silver", "gold", "iron", "tin", "lead",
        "potassium cyanide", "sodium sulfide", "sodium sulfite", "sodium azide", "ammonium nitrate", "ammonium chloride", "sucrose", "sodium chloride",
        "potassium chloride", "calcium sulfate dihydrate", "silica gel", "water", "sodium thiosulfate 10%", "chloroform", "dichloromethane", "aniline",
    ];

    // As in a collection: a part of what is kept harms nobody.
    private const int HarmlessInTen = 3;

    private static readonly string[] HarmlessContents =
        ["sucrose", "sodium chloride", "potassium chloride", "calcium sulfate dihydrate", "silica gel", "water", "gold", "tin", "iron", "magnesium sulfate heptahydrate"];

    private static readonly PlaceKind[] Kinds =
        [PlaceKind.Cabinet, PlaceKind.FireCabinet, PlaceKind.AcidCabinet, PlaceKind.VentilatedCabinet, PlaceKind.OpenShelf, PlaceKind.Cabinet];

    private static readonly Lazy<IReadOnlyList<(string Name, ContactProfile Profile)>> Profiles = new(() => Known(Contents));

    private static readonly Lazy<IReadOnlyList<(string Name, ContactProfile Profile)>> Harmless = new(() => Known(HarmlessContents));

    private static IReadOnlyList<(string Name, ContactProfile Profile)> Known(string[] contents) =>
        [.. contents.Select(c => (c, SubstanceCatalogue.Default.Resolve(c).Content))
            .Where(c => c.Content is not null)
            .Select(c => (c.c, ContactProfile.Of(c.Content!, Classifier.Classify(c.Content!, HazardFacts.Default, RuleSet.Eu).StatementCodes)))];

    /// <summary>Number of contents that the catalogue knows of the list.</summary>
    public static int KnownContents => Profiles.Value.Count;

    /// <summary>A store of so many containers.</summary>
    /// <param name="count">Containers.</param>
    /// <param name="seed">The same seed gives the same store.</param>
    /// <param name="disturbed">Share of the containers that were put down anywhere.</param>
    public static Shelving Make(int count, int seed, double disturbed = 0.25)
    {
        var random = new Random(seed);
        var spots = Spots(count, random);
        var limits = spots.Where(s => s.Stand.Tray is null)
            .Select(s => new SpotLimit(s.Id, s.Name, Measure.Containers, 4 + random.Next(8)))
            .ToList();
        var judge = new PairJudge();
        var things = new List<Thing>();
        for (var i = 0; i < count; i++)
        {
            var (name, profile) = random.Next(10) < HarmlessInTen ? Harmless.Value[random.Next(Harmless.Value.Count)] : Profiles.Value[random.Next(Profiles.Value.Count)];
            var thing = new Thing($"K{i:D4}", name, profile) { IsFlameSealed = random.Next(20) == 0, IsInOwnPacking = random.Next(12) == 0 };
            things.Add(thing with { Spot = SafeSpot(thing, things, spots, limits, judge, random).Id });
        }

        for (var i = 0; i < count; i++)
        {
            if (random.NextDouble() < disturbed)
                things[i] = things[i] with { Spot = spots[random.Next(spots.Count)].Id };
            else if (random.Next(30) == 0)
                things[i] = random.Next(4) == 0 ? things[i] with { HandsOff = "crystals under the cap" } : things[i] with { Pinned = "shown there" };
        }

        return new Shelving(things, spots, limits);
    }

    // A spot that would take it, of those tried; else any.
    private static Spot SafeSpot(Thing thing, List<Thing> things, List<Spot> spots, List<SpotLimit> limits, PairJudge judge, Random random)
    {
        var at = spots.ToDictionary(s => s.Id, StringComparer.Ordinal);
        for (var tries = 0; tries < 60; tries++)
        {
            var spot = spots[random.Next(spots.Count)];
            if (PlaceFit.Default.Of(thing, spot).IsOffered
                && limits.All(l => !spot.Within.Contains(l.Place) || things.Count(t => at[t.Spot!].Within.Contains(l.Place)) < l.Most)
                && things.All(t => PairReading.Missing(thing, spot, t, at[t.Spot!], judge) == 0))
                return spot;
        }

        return spots[random.Next(spots.Count)];
    }

    private static List<Spot> Spots(int count, Random random)
    {
        var spots = new List<Spot>();
        var cabinets = 6 + (count / 12);
        var rooms = 1 + (cabinets / 8);
        for (var c = 0; c < cabinets; c++)
        {
            var room = new PlaceName($"R{c % rooms}", $"room {c % rooms}");
            var kind = Kinds[random.Next(Kinds.Length)];
            var cabinet = new PlaceName($"C{c:D3}", $"cabinet {c}");
            var order = (c / rooms) + (c / rooms / 3);
            for (var s = 1; s <= 2 + random.Next(3); s++)
            {
                spots.Add(Spot(room, cabinet, kind, order, s, null));
                for (var t = 0; t < random.Next(3); t++)
                    spots.Add(Spot(room, cabinet, kind, order, s, t));
            }
        }

        return spots;
    }

    private static Spot Spot(PlaceName room, PlaceName cabinet, PlaceKind kind, int order, int shelf, int? tray)
    {
        var shelfName = new PlaceName($"{cabinet.Id}-{shelf}", $"shelf {shelf} of {cabinet.Name}");
        var trayName = tray is null ? null : new PlaceName($"{shelfName.Id}-{tray}", $"tray {tray} on {shelfName.Name}");
        var own = trayName ?? shelfName;
        return new Spot(own.Id, own.Name, $"{room.Name} > {own.Name}", new Stand
        {
            Room = room,
            Cabinet = cabinet,
            Shelf = shelfName,
            Tray = trayName,
            CabinetOrder = order,
            ShelfOrder = shelf,
            CabinetIsVentilated = kind == PlaceKind.VentilatedCabinet,
        })
        {
            Kind = kind,
            HeightMetres = shelf * 0.45m,
            Within = [room.Id, cabinet.Id, shelfName.Id, .. trayName is null ? Array.Empty<string>() : [trayName.Id]],
        };
    }
}
