using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Properties;
using Stockroom.Endurance.Tests.Books;

namespace Stockroom.Endurance.Tests.Imports;

/// <summary>A book of things the catalogue and the ware tables know, with texts that make trouble in a table.</summary>
internal static class RandomStock
{
    private static readonly string[] Contents = ["acetone", "bromine", "sulfuric acid 98%", "sodium chloride", "diethyl ether", "iodine", "potassium", "water", "hydrogen peroxide 30%", "white phosphorus"];
    private static readonly string[] Pieces = ["=1+1", "+", "-x", "@", "\t", "\r", "\n", "\r\n", "\"", "'", ",", ";", "日本", "🧪", "\u202Eabc", "\u200B", " ", "x", "plain", "<b>", "\\", "é"];

    public static MemoryStockBook Make(Random random, int containers)
    {
        var book = new MemoryStockBook(new StillClock());
        MakePlaces(book, random);
        for (var i = 0; i < containers; i++)
        {
            var transaction = new Transaction("Ada", Receive(book, random));
            book.Append(transaction);
            Happen(book, transaction.Entries[0].Container!, random);
        }

        return book;
    }

    private static void MakePlaces(MemoryStockBook book, Random random)
    {
        var made = new PlaceMade { HappenedAt = StillClock.Now, Place = "prep", Name = "Prep " + Text(random), PlaceKind = PlaceKind.Room, Limits = Limits(random), Note = TextOrNull(random) };
        book.Append(new Transaction("Ada", made, made with { Place = "acids", Name = "Acids " + Text(random), PlaceKind = PlaceKind.AcidCabinet, Inside = "prep" }));
        book.Append(new Transaction("Ada", made with { Place = "acids-1", Name = "Shelf " + Text(random), PlaceKind = PlaceKind.Shelf, Inside = "acids", Limits = Limits(random) }));
    }

    private static PlaceLimits Limits(Random random) => new()
    {
        Position = random.Next(3) == 0 ? null : random.Next(9),
        HeightMetres = random.Next(3) == 0 ? null : random.Next(30) / 10m,
        LeakTight = random.Next(3) switch { 0 => null, 1 => true, _ => false },
        MeanCelsius = random.Next(3) == 0 ? null : random.Next(-20, 30) + 0.5m,
        SwingKelvin = random.Next(3) == 0 ? null : random.Next(10),
        MaxLoadKilograms = random.Next(3) == 0 ? null : random.Next(1, 90) / 4m,
        MaxContainers = random.Next(3) == 0 ? null : random.Next(1, 90),
    };

    private static Received Receive(MemoryStockBook book, Random random)
    {
        var isOrphan = random.Next(6) == 0;
        var isMixed = !isOrphan && random.Next(5) == 0;
        var grams = random.Next(4) == 0 ? (decimal?)null : random.Next(1, 100_000) / 128m;
        var isCovered = random.Next(3) == 0;
        return new Received
        {
            Container = book.Ledger.State.NewId(),
            HappenedAt = StillClock.Now.AddDays(-random.Next(200, 2_000)),
            Content = isOrphan ? "seen " + Text(random) : isMixed ? "my mix " + random.Next(99) : SubstanceCatalogue.Default.Resolve(Contents[random.Next(Contents.Length)]).Content!.Name,
            Parts = isMixed ? [new PartShare("sodium hydroxide", random.Next(1, 4_000) / 128m), new PartShare("water", random.Next(1, 60))] : null,
            State = isOrphan || isMixed ? (MatterState)random.Next(4) : null,
            IsOrphan = isOrphan,
            Seen = isOrphan ? "label: " + Text(random) : null,
            FoundBy = TextOrNull(random),
            Lot = new Lot { How = (LotOrigin)random.Next(4), Origin = TextOrNull(random), Supplier = TextOrNull(random), Batch = TextOrNull(random), MadeOn = random.Next(3) == 0 ? new DateOnly(2019, 1, random.Next(1, 30)) : null, Note = TextOrNull(random) },
            Vessel = random.Next(3) == 0 ? null : Any(WareCatalogue.Default.Vessels.Select(v => v.Name), random),
            Closure = random.Next(3) == 0 ? null : Any(WareCatalogue.Default.Closures.Select(v => v.Name), random),
            Cover = isCovered ? Any(WareCatalogue.Default.Covers.Select(v => v.Name).Where(n => n != "none"), random) : null,
            CoverDepthMillimetres = isCovered && random.Next(2) == 0 ? random.Next(1, 400) / 8m : null,
            Packing = TextOrNull(random),
            To = random.Next(2) == 0 ? "acids-1" : "acids",
            Quantity = grams is null ? random.Next(2) == 0 ? null : Text(random) : random.Next(2) == 0 ? $"{grams} g" : "20 mL",
            NetGrams = grams,
            Density = grams is not null && random.Next(2) == 0 ? new BookedDensity(random.Next(100, 4_000) / 1000m, "table " + Text(random)) : null,
            TareGrams = random.Next(3) == 0 ? 12.5m : null,
            GrossGrams = random.Next(3) == 0 ? 12.5m + random.Next(1000) : null,
        };
    }

    private static void Happen(MemoryStockBook book, ContainerId id, Random random)
    {
        DateTimeOffset Day(int ago) => StillClock.Now.AddDays(-ago);
        var container = book.Ledger.State.Containers[id];
        var entries = new List<Entry>();
        if (random.Next(2) == 0)
            entries.Add(new Opened { Container = id, HappenedAt = Day(150) });
        if (container.NetGrams is { } net && random.Next(3) == 0)
            entries.Add(new Drawn { Container = id, HappenedAt = Day(140), Quantity = "some", Grams = net / 2 });
        if (container.Cover is not null && random.Next(2) == 0)
            entries.Add(new Covered { Container = id, HappenedAt = Day(120), Act = CoverAct.Measured, DepthMillimetres = random.Next(1, 99) / 2m });
        if (random.Next(4) == 0)
            entries.Add(new Covered { Container = id, HappenedAt = Day(110), Act = CoverAct.PutOn, Cover = "water", DepthMillimetres = random.Next(2) == 0 ? 7.5m : null });
        if (random.Next(3) == 0)
            entries.Add(new Sealed { Container = id, HappenedAt = Day(100), GasCelsius = random.Next(2) == 0 ? random.Next(-400, 400) / 8m : null, GasBar = random.Next(2) == 0 ? random.Next(0, 400) / 128m : null });
        if (random.Next(3) == 0)
            entries.Add(new Moved { Container = id, HappenedAt = Day(90), To = "prep" });
        if (random.Next(3) == 0)
            entries.Add(new LabelPrinted { Container = id, HappenedAt = Day(80) });
        if (random.Next(5) == 0)
            entries.Add(new Marked { Container = id, HappenedAt = Day(75), Pinned = true, Reason = "here: " + Text(random) });
        if (random.Next(5) == 0)
            entries.Add(new Marked { Container = id, HappenedAt = Day(74), LeastPercent = random.Next(1, 800) / 8m });
        if (random.Next(5) == 0)
            entries.Add(new Marked { Container = id, HappenedAt = Day(70), HandsOff = true, Reason = "because " + Text(random) });
        else if (random.Next(5) == 0)
            entries.Add(new Retired { Container = id, HappenedAt = Day(60), Reason = "gone" });
        if (entries.Count > 0)
            book.Append(new Transaction("Ada", entries));
    }

    private static string Any(IEnumerable<string> names, Random random)
    {
        var all = names.ToList();
        return all[random.Next(all.Count)];
    }

    private static string? TextOrNull(Random random) => random.Next(2) == 0 ? null : Text(random);

    // Never blank: a cell of blanks is an empty one.
    private static string Text(Random random)
    {
        var text = string.Concat(Enumerable.Range(0, random.Next(1, 6)).Select(_ => Pieces[random.Next(Pieces.Length)]));
        return string.IsNullOrWhiteSpace(text) || text.Contains(" > ", StringComparison.Ordinal) ? "x" : text;
    }
}
