using CsCheck;
using Stockroom.Book.Encoding;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Book.States;
using Stockroom.Book.Tests.States;

namespace Stockroom.Book.Tests.Ledgers;

/// <summary>Random sequences of what a keeper does, against models that know nothing of the ledger's workings.</summary>
public sealed class LedgerModelTests
{
    private static readonly Gen<(int What, int Which, int Other, int Amount, int DaysAgo)> Step =
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[1, 60], Gen.Int[0, 40]);

    [Fact]
    public void Append_RandomSteps_AddsUpToTheSameAsFoldingTheWholeLedgerAnew() =>
        Step.List[1, 40].Sample(
            steps =>
            {
                var book = new SampleBook();
                var ids = new List<ContainerId>();
                foreach (var step in steps)
                {
                    var before = book.Book.Ledger;
                    Do(book, ids, step, step.DaysAgo);
                    var anew = Ledger.Of("x", book.Book.Ledger.Entries.Select(e => EntryCodec.Decode(EntryCodec.Encode(e))));
                    Assert.Equal(StateText.Of(anew.State), StateText.Of(book.State));
                    Assert.Empty(anew.Problems);
                    Assert.Equal(anew.HeadHash, book.Book.Ledger.HeadHash);
                    var written = StateCodec.Encode(anew.State);
                    Assert.Equal(written, StateCodec.Encode(book.State));
                    Assert.Equal(written, StateCodec.Encode(StateCodecTests.Again(book.State)));
                    if (before.State.After(book.Book.Ledger.Entries.Skip(before.Entries.Count)) is { } after)
                        Assert.Equal(written, StateCodec.Encode(after));
                }
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: 200);

    [Fact]
    public void Append_RandomStepsOfToday_KeepTheMassBalanceOfAPlainModelAndUndoGivesItsEarlierState() =>
        Step.List[1, 60].Sample(
            steps =>
            {
                var book = new SampleBook();
                var ids = new List<ContainerId>();
                var model = new Stack<(string State, decimal In, decimal Out)>();
                model.Push((Today(book.State), 0, 0));
                foreach (var step in steps)
                {
                    var (_, received, drawn) = model.Peek();
                    var before = book.Book.Ledger.Entries.Count;
                    if (step.What == 9)
                    {
                        if (model.Count > 1)
                        {
                            model.Pop();
                            book.Book.Append(book.Book.Ledger.Undo("Ada", "slip", SampleBook.Now));
                        }
                    }
                    else if (Do(book, ids, step, daysAgo: 0) is { } booked)
                    {
                        received += booked is Received r ? r.NetGrams!.Value : 0;
                        drawn += booked is Drawn d ? d.Grams : 0;
                        model.Push((Today(book.State), received, drawn));
                    }

                    Assert.Equal(model.Peek().State, Today(book.State));
                    Assert.Equal(model.Peek().In - model.Peek().Out, book.State.Containers.Values.Sum(c => c.NetGrams));
                    Assert.All(book.State.Containers.Values, c => Assert.True(c.NetGrams >= 0));
                    Assert.True(book.Book.Ledger.Entries.Count >= before);
                }
            },
            writeLine: TestContext.Current.TestOutputHelper!.WriteLine,
            iter: 300);

    // The state without the id that would come next: an undone receipt keeps its own.
    private static string Today(BookState state)
    {
        var text = StateText.Of(state);
        return text[..text.LastIndexOf("next ", StringComparison.Ordinal)];
    }

    // Does one step; null if the book refused it, which must leave it as it was.
    private static Entry? Do(SampleBook book, List<ContainerId> ids, (int What, int Which, int Other, int Amount, int DaysAgo) step, int daysAgo)
    {
        var at = SampleBook.Day(daysAgo);
        var id = ids.Count == 0 ? null : ids[step.Which % ids.Count];
        var other = ids.Count == 0 ? null : ids[step.Other % ids.Count];
        var fresh = book.State.NewId();
        string[] places = ["acid", "fire", "acid-1", "acid-1-tray", "nowhere"];
        Entry entry = step.What switch
        {
            0 => SampleBook.Receipt(fresh, grams: step.Amount, daysAgo: daysAgo),
            1 => new Drawn { HappenedAt = at, Container = id, Quantity = "some", Grams = step.Amount },
            2 => new Decanted { HappenedAt = at, Container = id, Into = other ?? fresh, Quantity = "some", Grams = step.Amount },
            3 => new Moved { HappenedAt = at, Container = id, To = places[step.Other] },
            4 => new Weighed { HappenedAt = at, Container = id, GrossGrams = step.Amount },
            5 => new Marked { HappenedAt = at, Container = id, HandsOff = step.Amount % 2 == 0, Reason = "because" },
            6 => new Opened { HappenedAt = at, Container = id },
            7 => step.Amount > 50 ? new Retired { HappenedAt = at, Container = id, Reason = "gone" } : new PlaceLimited { HappenedAt = at, Place = "fire", Name = $"Fire {step.Amount}" },
            8 => daysAgo == 0 ? new LabelPrinted { HappenedAt = at, Container = id } : Correction(book, step),
            _ => new Undone { HappenedAt = SampleBook.Now, Undoes = Math.Max(2, book.Book.Ledger.LastTransaction - step.Which), Reason = "slip" },
        };
        var before = book.Book.Ledger;
        try
        {
            book.Append(entry);
            if (entry is Received)
                ids.Add(fresh);
            return entry;
        }
        catch (BookRefusal)
        {
            Assert.Same(before, book.Book.Ledger);
            return null;
        }
    }

    private static Corrected Correction(SampleBook book, (int What, int Which, int Other, int Amount, int DaysAgo) step)
    {
        var target = 6 + (step.Amount % 20);
        var field = book.Book.Ledger.Entries.ElementAtOrDefault(target - 1) switch
        {
            Received => "net_g",
            Drawn or Decanted => "mass_g",
            Weighed => "gross_g",
            _ => "happened_at",
        };
        var value = field == "happened_at" ? SampleBook.Day(step.DaysAgo).ToString("yyyy-MM-dd'T'HH:mm:sszzz") : $"{step.Amount}";
        return new Corrected { HappenedAt = SampleBook.Now, Entry = target, Changes = [new FieldChange(field, value)], Reason = "misread" };
    }
}
