using Stockroom.Book;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;

namespace Stockroom.Endurance.Tests.Books;

/// <summary>Random bookings of every usual kind, some of them long enough to cross blocks and pages.</summary>
internal static class Steps
{
    private const string Keeper = "Ada";

    public static void Begin(IStockBook book) => book.Append(new Transaction(
        Keeper,
        new PlaceMade { HappenedAt = StillClock.Now, Place = "prep", Name = "Prep room", PlaceKind = PlaceKind.Room },
        new PlaceMade { HappenedAt = StillClock.Now, Place = "acids", Name = "Acid cabinet", PlaceKind = PlaceKind.AcidCabinet, Inside = "prep" }));

    /// <summary>Books one transaction that the book accepts.</summary>
    public static void Next(IStockBook book, Random random)
    {
        for (var tries = 0; ; tries++)
        {
            try
            {
                book.Append(Draw(book.Ledger, random, tries < 20 ? random.Next(10) : 0));
                return;
            }
            catch (BookRefusal) when (tries < 30)
            {
                // Drawn at random, it may be impossible: another is drawn.
            }
        }
    }

    /// <summary>A transaction drawn at random, which the book may well refuse.</summary>
    public static Transaction Draw(Ledger ledger, Random random, int kind)
    {
        var present = ledger.State.Present.Select(c => c.Id).ToList();
        if (present.Count == 0 || kind <= 1)
            return Receive(ledger, random);
        var id = present[random.Next(present.Count)];
        var when = StillClock.Now.AddDays(-random.Next(3));
        Entry entry = kind switch
        {
            2 => new Drawn { HappenedAt = when, Container = id, Quantity = "some", Grams = random.Next(1, 30) / 4m },
            3 => new Moved { HappenedAt = when, Container = id, To = random.Next(2) == 0 ? "prep" : "acids" },
            4 => new Opened { HappenedAt = when, Container = id },
            5 => new Corrected { HappenedAt = when, Entry = random.NextInt64(1, ledger.Entries.Count + 1), Changes = [new FieldChange("note", Text(random, 40))], Reason = "slip" },
            6 => new Undone { HappenedAt = when, Undoes = random.NextInt64(2, ledger.LastTransaction + 2), Reason = "slip" },
            7 when random.Next(3) == 0 => new Retired { HappenedAt = when, Container = id, Reason = "used up" },
            8 => new Decanted { HappenedAt = when, Container = id, Into = present[random.Next(present.Count)], Quantity = "a little", Grams = random.Next(1, 20) / 8m },
            _ => new Weighed { HappenedAt = when, Container = id, GrossGrams = random.Next(1, 100_000) / 1000m, Note = Text(random, 60) },
        };
        return random.Next(8) == 0 ? new Transaction(Keeper, entry, Long(id, random), Long(id, random), Long(id, random)) : new Transaction(Keeper, entry);
    }

    private static Transaction Receive(Ledger ledger, Random random)
    {
        var id = ledger.State.NewId();
        var grams = random.Next(1, 1000) / 2m;
        return new Transaction(
            Keeper,
            new Received { HappenedAt = StillClock.Now.AddDays(-2), Container = id, Content = "öl " + Text(random, 20), Lot = new Lot { How = LotOrigin.Made }, To = "prep", Quantity = $"{grams} g", NetGrams = grams },
            new Weighed { HappenedAt = StillClock.Now.AddDays(-2), Container = id, GrossGrams = grams + 50.25m });
    }

    private static Marked Long(ContainerId id, Random random) => new() { HappenedAt = StillClock.Now, Container = id, Note = Text(random, 2000) };

    private static string Text(Random random, int longest) =>
        string.Concat(Enumerable.Range(0, random.Next(1, longest + 1)).Select(_ => (char)random.Next('a', 'z' + 1)));
}
