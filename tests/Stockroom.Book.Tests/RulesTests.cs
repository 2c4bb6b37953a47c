using Stockroom.Book.Containers;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;

namespace Stockroom.Book.Tests;

public sealed class RulesTests
{
    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    public void Mass_NegativeOrZero_IsRefusedForEveryEntryThatHasOne(int grams)
    {
        var book = new SampleBook();
        var id = book.Receive();
        var other = book.Receive();
        Contains($"{grams} g", book.Refused(SampleBook.Receipt(book.State.NewId(), grams: grams)));
        Contains($"{grams} g", book.Refused(new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = grams }));
        Contains($"{grams} g", book.Refused(new Drawn { HappenedAt = SampleBook.Now, Container = id, Quantity = "x", Grams = grams }));
        Contains($"{grams} g", book.Refused(new Decanted { HappenedAt = SampleBook.Now, Container = id, Into = other, Quantity = "x", Grams = grams }));
        Contains($"{grams} g", book.Refused(new Quenched { HappenedAt = SampleBook.Now, Container = id, With = "water", Quantity = "x", Grams = grams }));
    }

    [Theory]
    [InlineData("99.99", true)]
    [InlineData("100", true)]
    [InlineData("100.01", false)]
    public void Draw_BelowAtAndAboveWhatIsThere_IsBookedUpToIt(string grams, bool holds)
    {
        var book = new SampleBook();
        var id = book.Receive(grams: 100m);
        var draw = new Drawn { HappenedAt = SampleBook.Now, Container = id, Quantity = grams + " g", Grams = decimal.Parse(grams) };
        if (!holds)
        {
            Contains("100.01 g cannot be taken; 100 g is there", book.Refused(draw));
            return;
        }

        book.Append(draw);
        Assert.Equal(100m - draw.Grams, book.State.ContainerCalled(id).NetGrams);
    }

    [Theory]
    [InlineData(300, 2_000, null)]
    [InlineData(301, 2_000, "the text of 'content' has 301 characters ('xxxxxxxxxxxxxxxxxxxx...'); at most 300 are booked: shorten it, or put it in a note")]
    [InlineData(300, 2_001, "the text of 'note' has 2001 characters ('xxxxxxxxxxxxxxxxxxxx...'); at most 2000 are booked: shorten it")]
    public void Text_AtAndAboveItsLimit_IsBookedOrRefused(int name, int note, string? refusal)
    {
        var book = new SampleBook();
        var entry = new Received { HappenedAt = SampleBook.Now, Container = book.State.NewId(), Content = new string('x', name), Note = new string('x', note), Lot = new Lot { How = LotOrigin.Made }, To = "prep" };
        if (refusal is null)
            book.Append(entry);
        else
            Assert.Equal(refusal, book.Refused(entry));
    }

    [Fact]
    public void Text_OfACorrection_KeepsTheLimitOfItsField()
    {
        var book = new SampleBook();
        book.Append(new Received { HappenedAt = SampleBook.Now, Container = book.State.NewId(), Content = "x", Lot = new Lot { How = LotOrigin.Made }, To = "prep" });
        var number = book.Book.Ledger.Entries[^1].Number;
        Contains("the text of 'lot.supplier' has 301 characters", book.Refused(new Corrected { HappenedAt = SampleBook.Now, Entry = number, Reason = "slip", Changes = [new FieldChange("lot.supplier", new string('x', 301))] }));
        book.Append(new Corrected { HappenedAt = SampleBook.Now, Entry = number, Reason = "slip", Changes = [new FieldChange("note", new string('x', 2_000))] });
    }

    [Fact]
    public void Text_LongerThanIsBookedNow_IsStillReadFromAnOlderBook()
    {
        var old = new Marked { Container = ContainerId.AtOrAfter(3), Note = new string('x', 19_000), Previous = "0" };
        Assert.Equal(old.Note, EntryCodec.Decode(EntryCodec.Encode(old)).Note);
    }

    [Fact]
    public void Draw_FromAnUnknownAmount_IsBookedAndTheAmountStaysUnknown()
    {
        var book = new SampleBook();
        var id = book.Receive(grams: null);
        book.Append(new Drawn { HappenedAt = SampleBook.Now, Container = id, Quantity = "a spatula", Grams = 3 });
        Assert.Null(book.State.ContainerCalled(id).NetGrams);
    }

    [Theory]
    [InlineData(24, true)]
    [InlineData(25, false)]
    public void Date_UpToADayAhead_IsClockSkewAndBeyondIsRefused(int hoursAhead, bool holds)
    {
        var book = new SampleBook();
        var id = book.Receive();
        var entry = new Opened { HappenedAt = SampleBook.Now.AddHours(hoursAhead), Container = id };
        if (holds)
            Assert.Single(book.Append(entry));
        else
            Contains("lies in the future; today is 2026-05-20", book.Refused(entry));
    }

    [Theory]
    [InlineData(1800, true)]
    [InlineData(1799, false)]
    public void Date_Before1800_IsRefused(int year, bool holds)
    {
        var book = new SampleBook();
        var receipt = SampleBook.Receipt(book.State.NewId()) with { HappenedAt = new DateTimeOffset(year, 12, 31, 12, 0, 0, TimeSpan.Zero) };
        if (holds)
            Assert.Single(book.Append(receipt));
        else
            Contains("the book begins in 1800", book.Refused(receipt));
    }

    [Fact]
    public void Date_NotGiven_IsRefused()
    {
        var book = new SampleBook();
        Contains("1800", book.Refused(new Opened { Container = book.Receive() }));
    }

    [Fact]
    public void Opened_BeforeItWasReceived_IsRefusedAndOnTheSameDayIsNot()
    {
        var book = new SampleBook();
        var id = book.Receive(daysAgo: 30);
        Contains("it was received on 2026-04-20", book.Refused(new Opened { HappenedAt = SampleBook.Day(31), Container = id }));
        book.Append(new Opened { HappenedAt = SampleBook.Day(30).AddHours(-3), Container = id });
        Assert.Equal(book.State.ContainerCalled(id).ReceivedOn, book.State.ContainerCalled(id).OpenedOn);
    }

    [Fact]
    public void Moved_ToAPlaceThatDoesNotExist_IsRefused()
    {
        var book = new SampleBook();
        Contains("there is no place 'attic'", book.Refused(new Moved { HappenedAt = SampleBook.Now, Container = book.Receive(), To = "attic" }));
    }

    [Theory]
    [InlineData("acid", "acid", "itself or stands inside it")]
    [InlineData("acid", "acid-1-tray", "itself or stands inside it")]
    [InlineData("acid", "fire", "room > cabinet > shelf > tray")]
    [InlineData("acid-1-tray", "nowhere", "there is no place 'nowhere'")]
    public void Moved_APlaceWhereItCannotStand_IsRefused(string place, string to, string expected) =>
        Contains(expected, new SampleBook().Refused(new Moved { HappenedAt = SampleBook.Now, Place = place, To = to }));

    [Fact]
    public void Moved_APlace_TakesAlongWhatStandsInIt()
    {
        var book = new SampleBook();
        var id = book.Receive(to: "acid-1-tray");
        book.Append(new Moved { HappenedAt = SampleBook.Now, Place = "acid-1", To = "fire" });
        Assert.Equal(["prep", "fire", "acid-1", "acid-1-tray"], book.State.PathTo(book.State.ContainerCalled(id).PlaceId).Select(p => p.Id));
        Assert.Contains(book.State.ContainersIn("fire", deep: true), c => c.Id == id);
        Assert.DoesNotContain(book.State.ContainersIn("acid", deep: true), c => c.Id == id);
    }

    [Fact]
    public void Entry_OnAnIdThatDoesNotExist_IsRefused()
    {
        var book = new SampleBook();
        var id = book.State.NewId();
        Contains($"there is no container {id}", book.Refused(new Opened { HappenedAt = SampleBook.Now, Container = id }));
    }

    [Fact]
    public void Received_AnIdThatIsThere_IsRefused()
    {
        var book = new SampleBook();
        Contains("already in the book", book.Refused(SampleBook.Receipt(book.Receive())));
    }

    [Fact]
    public void Retired_AnythingFurther_IsRefusedButANoteIsNot()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Append(new Retired { HappenedAt = SampleBook.Now, Container = id, Reason = "used up" });
        Contains("was retired on 2026-05-20 and cannot be weighed", book.Refused(new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = 5 }));
        Contains("cannot be retired", book.Refused(new Retired { HappenedAt = SampleBook.Now, Container = id, Reason = "again" }));
        Contains("cannot be label printed", book.Refused(new LabelPrinted { HappenedAt = SampleBook.Now, Container = id }));
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, Note = "empty bottle kept" });
        Assert.DoesNotContain(book.State.Present, c => c.Id == id);
    }

    [Fact]
    public void HandsOff_EveryHandling_IsRefusedUnlessForcedWithAReason()
    {
        var book = new SampleBook();
        var id = book.Receive();
        var other = book.Receive();
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = true, Reason = "crystals under the cap" });
        Entry[] handlings =
        [
            new Weighed { Container = id, GrossGrams = 300 },
            new Opened { Container = id },
            new Moved { Container = id, To = "fire" },
            new Drawn { Container = id, Quantity = "1 g", Grams = 1 },
            new Decanted { Container = id, Into = other, Quantity = "1 g", Grams = 1 },
            new Decanted { Container = other, Into = id, Quantity = "1 g", Grams = 1 },
            new Covered { Container = id, Act = CoverAct.PutOn, Cover = "argon" },
            new Packed { Container = id, Packing = "can" },
            new Sealed { Container = id, Closure = "cap" },
            new Assayed { Container = id, Substance = "water", Percent = 1 },
            new Tested { Container = id, What = "peroxides", Result = "none" },
            new Quenched { Container = id, With = "water", Quantity = "1 g", Grams = 1 },
            new Retired { Container = id, Reason = "taken away" },
        ];
        foreach (var handling in handlings.Select(h => h with { HappenedAt = SampleBook.Now }))
        {
            Contains($"{id} is marked hands off (crystals under the cap)", book.Refused(handling));
            Contains("forcing an entry needs a reason", book.Refused(handling with { Forced = " " }));
        }

        foreach (var handling in handlings)
            Assert.Single(book.Append(handling with { HappenedAt = SampleBook.Now, Forced = "by the disposal service" }));
        Assert.True(book.State.ContainerCalled(id).IsRetired);
    }

    [Fact]
    public void Pinned_SetAndLifted_BindsNobodysHands()
    {
        var book = new SampleBook();
        var id = book.Receive();
        Contains("is not pinned", book.Refused(new Marked { HappenedAt = SampleBook.Now, Container = id, Pinned = false }));
        Contains("the reason for pinning it is missing", book.Refused(new Marked { HappenedAt = SampleBook.Now, Container = id, Pinned = true }));
        Contains("two marks", book.Refused(new Marked { HappenedAt = SampleBook.Now, Container = id, Pinned = true, HandsOff = true, Reason = "both" }));
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, Pinned = true, Reason = "shown with its case" });
        Assert.Equal("shown with its case", book.State.ContainerCalled(id).Pinned);
        book.Append(new Moved { HappenedAt = SampleBook.Now, Container = id, To = "fire" });
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = true, Reason = "crystals" });
        Assert.Equal("shown with its case", book.State.ContainerCalled(id).Pinned);
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, Pinned = false });
        Assert.Null(book.State.ContainerCalled(id).Pinned);
        Assert.Equal("crystals", book.State.ContainerCalled(id).HandsOff);
    }

    [Fact]
    public void LeastStrength_SetAndLifted_BindsNobodysHands()
    {
        var book = new SampleBook();
        var id = book.Receive();
        Marked Least(decimal percent) => new() { HappenedAt = SampleBook.Now, Container = id, LeastPercent = percent };
        Contains("has no least strength of its own", book.Refused(Least(0)));
        Contains("-1 % by mass cannot be", book.Refused(Least(-1)));
        Contains("100 % by mass cannot be", book.Refused(Least(100)));
        Contains("two marks", book.Refused(Least(30) with { Pinned = true, Reason = "both" }));
        book.Append(Least(99.9m));
        book.Append(Least(0.001m) with { Reason = "a trace will do" });
        Assert.Equal(0.001m, book.State.ContainerCalled(id).LeastPercent);
        book.Append(new Moved { HappenedAt = SampleBook.Now, Container = id, To = "fire" });
        book.Append(Least(0));
        Assert.Null(book.State.ContainerCalled(id).LeastPercent);
    }

    [Fact]
    public void Sealed_WithItsGas_KeepsItUntilSealedAnew()
    {
        var book = new SampleBook();
        var id = book.Receive();
        var closed = new Sealed { HappenedAt = SampleBook.Now, Container = id, GasBar = 0.9m, GasCelsius = 15 };
        Contains("sealed at -0.1 bar", book.Refused(closed with { GasBar = -0.1m }));
        Contains("sealed at 100.1 bar", book.Refused(closed with { GasBar = 100.1m }));
        Contains("temperature lies between", book.Refused(closed with { GasCelsius = -274 }));
        book.Append(closed);
        Assert.Equal((0.9m, 15m), (book.State.ContainerCalled(id).SealedAtBar, book.State.ContainerCalled(id).SealedAtCelsius));
        book.Append(new Sealed { HappenedAt = SampleBook.Now, Container = id, GasBar = 0 });
        Assert.Equal((0m, null), (book.State.ContainerCalled(id).SealedAtBar, book.State.ContainerCalled(id).SealedAtCelsius));
    }

    [Fact]
    public void Covers_PutOnToppedUpAndTakenOff_AreAllRemembered()
    {
        var book = new SampleBook();
        var id = book.Receive();
        foreach (var (act, depth) in new[] { (CoverAct.PutOn, 5m), (CoverAct.Measured, 4m), (CoverAct.ToppedUp, 9m), (CoverAct.TakenOff, (decimal?)null) })
            book.Append(new Covered { HappenedAt = SampleBook.Now, Container = id, Act = act, Cover = act == CoverAct.PutOn ? "water" : null, DepthMillimetres = depth });
        Assert.Equal([true, false, true], book.State.ContainerCalled(id).Refittings.Select(r => r.OtherCover));
    }

    [Fact]
    public void HandsOff_LiftedWithAReason_AllowsHandlingAgain()
    {
        var book = new SampleBook();
        var id = book.Receive();
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = true, Reason = "crystals" });
        Contains("the reason for lifting hands off is missing", book.Refused(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = false }));
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = false, Reason = "they were salt" });
        book.Append(new Opened { HappenedAt = SampleBook.Now, Container = id });
    }

    [Fact]
    public void HandsOff_OfAContainer_KeepsItsPlaceFromBeingMoved()
    {
        var book = new SampleBook();
        var id = book.Receive(to: "acid-1-tray");
        book.Append(new Marked { HappenedAt = SampleBook.Now, Container = id, HandsOff = true, Reason = "crystals" });
        Contains($"holds {id}, marked hands off", book.Refused(new Moved { HappenedAt = SampleBook.Now, Place = "acid-1", To = "fire" }));
    }

    [Fact]
    public void Covered_TopUpOrMeasureWithoutACoverOrOfAnother_IsRefused()
    {
        var book = new SampleBook();
        var id = book.Receive("white phosphorus");
        Contains("has no cover", book.Refused(new Covered { HappenedAt = SampleBook.Now, Container = id, Act = CoverAct.ToppedUp, DepthMillimetres = 20 }));
        book.Append(new Covered { HappenedAt = SampleBook.Day(9), Container = id, Act = CoverAct.PutOn, Cover = "water", DepthMillimetres = 30 });
        Contains("is covered with water, not mineral oil", book.Refused(new Covered { HappenedAt = SampleBook.Now, Container = id, Act = CoverAct.ToppedUp, Cover = "mineral oil", DepthMillimetres = 20 }));
        book.Append(new Covered { HappenedAt = SampleBook.Day(2), Container = id, Act = CoverAct.Measured, DepthMillimetres = 22 });
        Assert.Equal(new Cover("water", 22, new DateOnly(2026, 5, 11), new DateOnly(2026, 5, 18)), book.State.ContainerCalled(id).Cover);
    }

    [Fact]
    public void Decanted_IntoANewContainer_KeepsTheMassBalanceAndTheLot()
    {
        var book = new SampleBook();
        var source = book.Receive(grams: 100m);
        var target = book.State.NewId();
        book.Append(
            SampleBook.Receipt(target, grams: 0, daysAgo: 0) with { Lot = new Lot { How = LotOrigin.Split, From = source } },
            new Decanted { HappenedAt = SampleBook.Now, Container = source, Into = target, Quantity = "25.5 g", Grams = 25.5m });
        Assert.Equal(74.5m, book.State.ContainerCalled(source).NetGrams);
        Assert.Equal(25.5m, book.State.ContainerCalled(target).NetGrams);
        Assert.Equal(2, Assert.Single(book.State.Lots).Containers.Count);
        Assert.Equal(source, book.State.Lots.Single().Root);
    }

    [Fact]
    public void Weighed_BelowTheTare_IsRefusedAndNeverChangesTheNet()
    {
        var book = new SampleBook();
        var id = book.State.NewId();
        book.Append(SampleBook.Receipt(id) with { TareGrams = 50, GrossGrams = 150 });
        Contains("less than its tare of 50 g", book.Refused(new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = 49 }));
        book.Append(new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = 140.5m });
        Assert.Equal(100m, book.State.ContainerCalled(id).NetGrams);
        Assert.Equal(140.5m, book.State.ContainerCalled(id).LastGrossGrams);
    }

    [Fact]
    public void Received_AnOrphan_NeedsWhatIsSeen()
    {
        var book = new SampleBook();
        var orphan = SampleBook.Receipt(book.State.NewId(), "unknown corrosive liquid", grams: null) with { IsOrphan = true };
        Contains("say what is to be seen", book.Refused(orphan));
        book.Append(orphan with { Seen = "brown, fumes at the stopper", FoundBy = "Ada" });
        Assert.True(book.State.Present.Single().IsOrphan);
    }

    [Fact]
    public void Transaction_WithoutAKeeperOrWithoutEntries_IsRefused()
    {
        var book = new SampleBook();
        Contains("nothing to book", book.Refused());
        Contains("name of who books it", book.Refused(new Transaction(" ", new Opened { HappenedAt = SampleBook.Now, Container = book.Receive() })));
    }

    private static void Contains(string expected, string actual) => Assert.Contains(expected, actual, StringComparison.Ordinal);
}
