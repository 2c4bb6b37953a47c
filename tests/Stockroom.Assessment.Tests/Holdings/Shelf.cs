using Stockroom.Assessment.Holdings;
using Stockroom.Assessment.Intake;
using Stockroom.Book;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.Places;
using Stockroom.Chemistry.Properties;

namespace Stockroom.Assessment.Tests.Holdings;

/// <summary>A small book in memory: one room, a shelf in each of two cabinets that are not neighbours, and what a test puts there.</summary>
internal sealed class Shelf
{
    public static readonly DateOnly Today = new(2026, 6, 15);

    private readonly MemoryStockBook _book = new(new StillClock());

    public Shelf(decimal warmest = 26)
    {
        Place("room", "room", null, new PlaceLimits { MeanCelsius = 20, MinCelsius = 15, MaxCelsius = warmest, SwingKelvin = 4 });
        Place("near", "cabinet", "room", new PlaceLimits { Position = 1 });
        Place("near-low", "shelf", "near", new PlaceLimits { HeightMetres = 0.4m });
        Place("near-high", "shelf", "near", new PlaceLimits { HeightMetres = 1.4m });
        Place("far", "cabinet", "room", new PlaceLimits { Position = 5 });
        Place("far-low", "shelf", "far", new PlaceLimits { HeightMetres = 0.4m });
    }

    public BookState State => _book.Ledger.State;

    public StockAssessment Stock => new(State, StockFacts.Default, Today);

    public static DateTimeOffset Noon(DateOnly day) => new(day, new TimeOnly(12, 0), TimeSpan.Zero);

    public void Place(string id, string kind, string? inside, PlaceLimits? limits = null) => Book(new PlaceMade
    {
        Place = id, Name = id + " place", PlaceKind = PlaceKind.Parse(kind), Inside = inside, Limits = limits ?? new PlaceLimits(), HappenedAt = Noon(new DateOnly(2000, 1, 1)),
    });

    public ContainerId Put(IntakeRequest request, DateOnly? received = null)
    {
        var id = State.NewId();
        Book(new IntakeDesk(PropertyFacts.Default, WareCatalogue.Default).Receive(request, id, Noon(received ?? Today.AddYears(-1))));
        return id;
    }

    public ContainerId Put(string content, string amount, string place = "near-low", string vessel = "glass reagent bottle 500 mL", string closure = "screw cap, PTFE-faced liner") =>
        Put(new IntakeRequest { Content = content, Amount = amount, Vessel = vessel, Closure = closure, Place = place });

    public void Book(Entry entry) => _book.Append(new Transaction("Una Farrow", entry));

    public void Weigh(ContainerId id, DateOnly on, decimal grams) =>
        Book(new Weighed { Container = id, GrossGrams = grams, ReadabilityGrams = 0.01m, HappenedAt = Noon(on) });

    private sealed class StillClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => Noon(Today);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
    }
}
