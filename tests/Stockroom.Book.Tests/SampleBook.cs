using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;

namespace Stockroom.Book.Tests;

/// <summary>A small book to try things on: a prep room with two cabinets and a tray, on a clock that stands still.</summary>
internal sealed class SampleBook
{
    public static readonly DateTimeOffset Now = new(2026, 5, 20, 14, 30, 0, TimeSpan.FromHours(2));

    public SampleBook()
    {
        Book = new MemoryStockBook(new StillClock(Now));
        Append(
            new PlaceMade { HappenedAt = Now, Place = "prep", Name = "Prep room", PlaceKind = PlaceKind.Room, Limits = new PlaceLimits { MeanCelsius = 19, SwingKelvin = 6 } },
            new PlaceMade { HappenedAt = Now, Place = "acid", Name = "Acid cabinet", PlaceKind = PlaceKind.AcidCabinet, Inside = "prep" },
            new PlaceMade { HappenedAt = Now, Place = "fire", Name = "Fire cabinet", PlaceKind = PlaceKind.FireCabinet, Inside = "prep" },
            new PlaceMade { HappenedAt = Now, Place = "acid-1", Name = "Shelf 1", PlaceKind = PlaceKind.Shelf, Inside = "acid", Limits = new PlaceLimits { HeightMetres = 0.4m } },
            new PlaceMade { HappenedAt = Now, Place = "acid-1-tray", Name = "Tray", PlaceKind = PlaceKind.Tray, Inside = "acid-1", Limits = new PlaceLimits { LeakTight = true } });
    }

    public IStockBook Book { get; }

    public BookState State => Book.State;

    public static DateTimeOffset Day(int daysAgo) => Now.AddDays(-daysAgo);

    public IReadOnlyList<Entry> Append(params Entry[] entries) => Book.Append(new Transaction("Ada", entries));

    /// <summary>Receives something and says its id.</summary>
    public ContainerId Receive(string content = "bromine", decimal? grams = 100m, int daysAgo = 30, string to = "acid-1")
    {
        var id = State.NewId();
        Append(Receipt(id, content, grams, daysAgo, to));
        return id;
    }

    public static Received Receipt(ContainerId id, string content = "bromine", decimal? grams = 100m, int daysAgo = 30, string to = "acid-1") => new()
    {
        HappenedAt = Day(daysAgo),
        Container = id,
        Content = content,
        Lot = new Lot { How = LotOrigin.Bought, Supplier = "a shop" },
        To = to,
        Quantity = grams is null ? null : $"{grams} g",
        NetGrams = grams,
    };

    public string Refused(params Entry[] entries) => Refused(new Transaction("Ada", entries));

    /// <summary>The one line with which a transaction is refused; nothing may have changed.</summary>
    public string Refused(Transaction transaction)
    {
        var before = Book.Ledger;
        var refusal = Assert.Throws<BookRefusal>(() => Book.Append(transaction));
        Assert.Same(before, Book.Ledger);
        Assert.DoesNotContain('\n', refusal.Message);
        return refusal.Message;
    }

    private sealed class StillClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("still", now.Offset, "still", "still");

        public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();
    }
}
