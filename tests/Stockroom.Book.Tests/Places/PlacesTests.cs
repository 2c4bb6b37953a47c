using Stockroom.Book.Entries;
using Stockroom.Book.Places;

namespace Stockroom.Book.Tests.Places;

public sealed class PlacesTests
{
    [Theory]
    [InlineData("room", null, true)]
    [InlineData("room", "prep", false)]
    [InlineData("fire cabinet", "prep", true)]
    [InlineData("fire cabinet", null, false)]
    [InlineData("fire cabinet", "acid", false)]
    [InlineData("shelf", "acid", true)]
    [InlineData("shelf", "acid-1", false)]
    [InlineData("tray", "prep", true)]
    [InlineData("tray", "acid-1", true)]
    [InlineData("tray", "acid-1-tray", false)]
    public void PlaceMade_InsideAnother_FollowsRoomCabinetShelfTray(string kind, string? inside, bool holds)
    {
        var book = new SampleBook();
        var made = new PlaceMade { HappenedAt = SampleBook.Now, Place = "new", Name = "New", PlaceKind = PlaceKind.Parse(kind), Inside = inside };
        if (holds)
            Assert.Single(book.Append(made));
        else
            Assert.Contains("'New', a", book.Refused(made), StringComparison.Ordinal);
    }

    [Fact]
    public void PlaceLimited_SaysMore_LeavesTheRestAsItWas()
    {
        var book = new SampleBook();
        book.Append(new PlaceLimited { HappenedAt = SampleBook.Now, Place = "acid-1", Limits = new PlaceLimits { MaxContainers = 12 } });
        Assert.Equal(0.4m, book.State.PlaceCalled("acid-1").Limits.HeightMetres);
        Assert.Equal(12, book.State.PlaceCalled("acid-1").Limits.MaxContainers);
        Assert.Contains("min <= mean <= max", book.Refused(new PlaceLimited { HappenedAt = SampleBook.Now, Place = "prep", Limits = new PlaceLimits { MaxCelsius = 5 } }), StringComparison.Ordinal);
        Assert.Contains("cannot become a shelf", book.Refused(new PlaceLimited { HappenedAt = SampleBook.Now, Place = "acid", PlaceKind = PlaceKind.Shelf }), StringComparison.Ordinal);
    }

    [Fact]
    public void LimitsAt_ATray_TakesTemperatureAndHeightFromWhatItStandsIn()
    {
        var limits = new SampleBook().State.LimitsAt("acid-1-tray");
        Assert.Equal(19m, limits.MeanCelsius);
        Assert.Equal(6m, limits.SwingKelvin);
        Assert.Equal(0.4m, limits.HeightMetres);
        Assert.True(limits.LeakTight);
    }

    [Theory]
    [InlineData("acid-1", "acid-1")]
    [InlineData("Shelf 1", "acid-1")]
    [InlineData("acid cabinet", "acid")]
    [InlineData("Prep room > Acid cabinet > Shelf 1", "acid-1")]
    [InlineData("acid cabinet > shelf 1>tray", "acid-1-tray")]
    public void FindPlace_ByIdNameOrPath_FindsIt(string words, string expected) =>
        Assert.Equal(expected, new SampleBook().State.FindPlace(words).Id);

    [Fact]
    public void FindPlace_NoneOrSeveral_SaysWhich()
    {
        var book = new SampleBook();
        book.Append(new PlaceMade { HappenedAt = SampleBook.Now, Place = "fire-1", Name = "Shelf 1", PlaceKind = PlaceKind.Shelf, Inside = "fire" });
        Assert.Equal("'Shelf 1' could be acid-1 or fire-1; name one by its id", Assert.Throws<BookRefusal>(() => book.State.FindPlace("Shelf 1")).Message);
        Assert.Contains("near: fire, fire-1", Assert.Throws<BookRefusal>(() => book.State.FindPlace("fir")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void For_NamesTakenOrStrange_GivesFreePlainIds()
    {
        var state = new SampleBook().State;
        Assert.Equal("fire-cabinet-upper", PlaceIds.For("Fire cabinet, upper", state));
        Assert.Equal("prep-2", PlaceIds.For("Prep!", state));
        Assert.Equal("place", PlaceIds.For("???", state));
        Assert.Contains("cannot be a place's id", new SampleBook().Refused(new PlaceMade { HappenedAt = SampleBook.Now, Place = "Two words", Name = "x", PlaceKind = PlaceKind.Room }), StringComparison.Ordinal);
    }

    [Fact]
    public void Received_BeforeItsPlaceWasSetUp_Stands()
    {
        var book = new SampleBook();
        var id = book.Receive(daysAgo: 4000);
        Assert.Equal("acid-1", book.Book.Ledger.StateOn(happenedBy: new DateOnly(2020, 1, 1)).ContainerCalled(id).PlaceId);
        Assert.Equal("Shelf 1", book.Book.Ledger.StateOn(happenedBy: new DateOnly(2020, 1, 1)).PlaceCalled("acid-1").Name);
    }
}
