using CsCheck;
using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours;

/// <summary>What must hold of findings on any shelf.</summary>
public sealed class FinderPropertyTests
{
    private static readonly ContactProfile[] Stock =
    [
        .. HarmlessPairs.All.SelectMany(p => new[] { p.A, p.B }).Concat(DangerousPairs.All.SelectMany(p => new[] { p.A, p.B }))
            .Distinct().Select(n => Profiles.Of(n)),
        Profiles.Orphan(MatterState.Liquid), Profiles.Orphan(MatterState.Solid, "white powder"),
    ];

    private static readonly PairJudge Judge = new();
    private static readonly NeighbourFinder Finder = new(Judge);

    private static readonly Gen<Stand> AnyStand =
        from cabinet in Gen.Int[1, 4]
        from shelf in Gen.Int[1, 2]
        from tray in Gen.Int[0, 2]
        from ventilated in Gen.Bool
        select Shelves.At($"C{cabinet}", shelf, tray == 0 ? null : $"T{cabinet}{shelf}{tray}", cabinet, ventilated && cabinet == 4);

    private static readonly Gen<ShelfItem[]> AnyStore = Gen.Select(Gen.Int[0, Stock.Length - 1], AnyStand, Gen.Bool).Array[2, 14]
        .Select(rows => rows.Select((r, i) => new ShelfItem($"K{i:00}", Stock[r.Item1].Name, Stock[r.Item1], r.Item2, r.Item3)).ToArray());

    [Fact]
    public void Find_OneThingMovedFartherFromAll_AddsNoPair()
    {
        AnyStore.Sample(store =>
        {
            ShelfItem[] moved = [store[0] with { Stand = Shelves.OtherRoom("C1") }, .. store.Skip(1)];
            var before = PairsOf(store);
            Assert.Subset(before, PairsOf(moved));
            Assert.DoesNotContain(PairsOf(moved), p => p.A == "K00" || p.B == "K00");
        }, iter: 2_000, threads: 1);
    }

    [Fact]
    public void Find_TwoThingsSetApartByAnyMove_AddNoPairBetweenThem()
    {
        Gen.Select(AnyStore, AnyStand).Sample((store, stand) =>
        {
            ShelfItem[] two = [store[0], store[1]];
            ShelfItem[] moved = [store[0] with { Stand = stand }, store[1]];
            var nearer = Nearness.Between(stand, store[1].Stand) < Nearness.Between(store[0].Stand, store[1].Stand)
                || (Nearness.SharesAir(stand, store[1].Stand) && !Nearness.SharesAir(store[0].Stand, store[1].Stand))
                || (Nearness.SharesCabinet(stand, store[1].Stand) && stand.ShelfOrder != store[0].Stand.ShelfOrder);
            if (!nearer)
                Assert.Subset(PairsOf(two), PairsOf(moved));
        }, iter: 5_000, threads: 1);
    }

    [Fact]
    public void Find_EveryPairThatTheJudgeForbids_IsInExactlyOneFinding()
    {
        AnyStore.Sample(store =>
        {
            var found = Finder.Find(store).SelectMany(f => f.Pairs).Select(p => Ordered(p.A, p.B)).ToList();
            Assert.Equal(found.Count, found.Distinct().Count());
            for (var i = 0; i < store.Length; i++)
            {
                for (var j = i + 1; j < store.Length; j++)
                {
                    if (Judge.Judge(store[i].Profile, store[j].Profile).WithoutAir > Nearness.Between(store[i].Stand, store[j].Stand))
                        Assert.Contains(Ordered(store[i].Key, store[j].Key), found);
                }
            }
        }, iter: 2_000, threads: 1);
    }

    [Fact]
    public void Find_SameStoreInAnotherOrder_FindsTheSame()
    {
        AnyStore.Sample(store =>
            Assert.Equal(Finder.Find(store).Select(f => f.Cause), Finder.Find(store.Reverse()).Select(f => f.Cause)), iter: 2_000, threads: 1);
    }

    [Fact]
    public void Find_Findings_NameBothSidesAndTheirSource()
    {
        AnyStore.Sample(store => Assert.All(Finder.Find(store), f =>
        {
            Assert.NotEmpty(f.Would);
            Assert.NotEmpty(f.Source.Source);
            Assert.NotEmpty(f.Pairs);
            Assert.EndsWith(".", f.Cause, StringComparison.Ordinal);
            Assert.True(f.Separation > f.Pairs.Min(p => p.Stand));
        }), iter: 1_000, threads: 1);
    }

    private static HashSet<(string A, string B)> PairsOf(ShelfItem[] store) =>
        [.. Finder.Find(store).SelectMany(f => f.Pairs).Select(p => Ordered(p.A, p.B))];

    private static (string A, string B) Ordered(string a, string b) => string.CompareOrdinal(a, b) < 0 ? (a, b) : (b, a);
}
