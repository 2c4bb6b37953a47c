using System.Collections;
using System.Text.Json;
using Stockroom.Book.Containers;
using Stockroom.Book.Entries;
using Stockroom.Book.Places;
using Stockroom.Book.States;
using Stockroom.Book.Tests.Ledgers;

namespace Stockroom.Book.Tests.States;

/// <summary>A state written for a snapshot and read back is the same state, with every member of everything in it.</summary>
public sealed class StateCodecTests
{
    // Each member of a container, a place and all they hold gets a value of its own, so that one that is not written is missed.
    [Fact]
    public void Decode_AContainerAndAPlaceWithEveryMemberSet_GivesEachBack()
    {
        var maker = new Filler();
        var container = (Container)maker.Make(typeof(Container));
        var place = (Place)maker.Make(typeof(Place));
        Assert.True(maker.Made > 60, $"{maker.Made} members");
        var state = BookState.Restored(12345, "sea", [place], [], [container]);
        var again = Again(state);
        Assert.Equal(12345, again.NextSerial);
        Assert.Equal("sea", again.ClassTable);
        Same(container, again.Containers[container.Id], "container");
        Same(place, again.Places[place.Id], "place");
    }

    [Fact]
    public void Decode_AContainerWithNothingSaid_GivesTheSame()
    {
        var bare = new Container { Id = ContainerId.AtOrAfter(5), ContentName = "orphan", PlaceId = "store", Lot = new Lot { How = LotOrigin.Found }, ReceivedOn = new DateOnly(2026, 1, 2) };
        Same(bare, Again(BookState.Restored(0, "none", [], [], [bare])).Containers[bare.Id], "container");
    }

    [Fact]
    public void Decode_AStatedSubstance_GivesItBack()
    {
        var entry = new SubstanceStated { Name = "museum wax", State = "solid", Hazards = "none", Source = "the maker's sheet", AsOf = "2026-01-01" };
        var state = entry.Apply(BookState.Empty);
        Assert.Equal(state.OwnSubstances["museum wax"].Words, Again(state).OwnSubstances["museum wax"].Words);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("[1,[],[],[],[]]")]
    [InlineData("[\"1\",[],[],[]]")]
    [InlineData("[1,[[\"store\"]],[],[]]")]
    [InlineData("[1,null,[],[]]")]
    [InlineData("[99999999999999999999,[],[],[]]")]
    public void Decode_WhatIsNoState_IsRefused(string json)
    {
        using var document = JsonDocument.Parse(json);
        Assert.Throws<FormatException>(() => StateCodec.Decode(document.RootElement));
    }

    [Fact]
    public void After_WhatFollowsOn_IsTheFoldOfAllAndACorrectionNeedsTheWhole()
    {
        var book = new SampleBook();
        var before = book.Book.Ledger;
        var id = book.Receive();
        book.Append(new Weighed { HappenedAt = SampleBook.Now, Container = id, GrossGrams = 150.50m });
        var after = before.State.After(book.Book.Ledger.Entries.Skip(before.Entries.Count));
        Assert.NotNull(after);
        Assert.Equal(StateText.Of(book.State), StateText.Of(after));
        before = book.Book.Ledger;
        book.Append(new Drawn { HappenedAt = SampleBook.Day(1), Container = id, Quantity = "1 g", Grams = 1 });
        Assert.Null(before.State.After(book.Book.Ledger.Entries.Skip(before.Entries.Count)));
        book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
        Assert.Null(before.State.After(book.Book.Ledger.Entries.Skip(before.Entries.Count)));
    }

    internal static BookState Again(BookState state)
    {
        using var document = JsonDocument.Parse(StateCodec.Encode(state));
        return StateCodec.Decode(document.RootElement);
    }

    // By members, not by text, so that two lists are equal when their elements are.
    private static void Same(object? expected, object? actual, string path)
    {
        if (expected is null || actual is null || expected is string || expected.GetType().IsValueType || expected is ContainerId or PlaceKind)
        {
            Assert.True(Equals(expected, actual), $"{path}: {expected} became {actual}");
            return;
        }

        if (expected is IEnumerable list)
        {
            var (one, other) = (list.Cast<object>().ToList(), ((IEnumerable)actual).Cast<object>().ToList());
            Assert.True(one.Count == other.Count, $"{path}: {one.Count} became {other.Count}");
            for (var i = 0; i < one.Count; i++)
                Same(one[i], other[i], $"{path}[{i}]");
            return;
        }

        foreach (var property in Filler.Settable(expected.GetType()))
            Same(property.GetValue(expected), property.GetValue(actual), $"{path}.{property.Name}");
    }
}
