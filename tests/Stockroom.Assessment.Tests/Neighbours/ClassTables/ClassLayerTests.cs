using CsCheck;
using Stockroom.Assessment.Neighbours;
using Stockroom.Assessment.Neighbours.ClassTables;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Tests.Neighbours.ClassTables;

public sealed class ClassLayerTests
{
    private static readonly ContactProfile[] Stock =
        [.. HarmlessPairs.All.SelectMany(p => new[] { p.A, p.B }).Concat(DangerousPairs.All.SelectMany(p => new[] { p.A, p.B })).Distinct().Select(n => Profiles.Of(n))];

    // Worked by hand from the rows: main and subsidiary hazards, the strictest of them; paragraph (c); one class that reacts.
    [Theory]
    [InlineData(ClassTable.Road, "acetone", "potassium permanganate", "O", Separation.OwnTray)]
    [InlineData(ClassTable.Road, "acetone", "ethanol", "", Separation.SameTray)]
    [InlineData(ClassTable.Road, "bromine", "acetone", "X", Separation.OwnCabinet)]
    [InlineData(ClassTable.Road, "phosphorus (white)", "sulfuric acid 98%", "X", Separation.OwnCabinet)]
    [InlineData(ClassTable.Road, "sodium", "hydrochloric acid 37%", "O", Separation.OwnTray)]
    [InlineData(ClassTable.Road, "potassium cyanide", "hydrochloric acid 37%", "(c)", Separation.OwnCabinet)]
    [InlineData(ClassTable.Road, "potassium cyanide", "acetone", "", Separation.SameTray)]
    [InlineData(ClassTable.Road, "hydrochloric acid 37%", "sodium hydroxide", "", Separation.SameTray)]
    [InlineData(ClassTable.Road, "nitric acid 65%", "acetic acid (glacial)", "O", Separation.OwnTray)]
    [InlineData(ClassTable.Sea, "acetone", "potassium permanganate", "2", Separation.OwnCabinet)]
    [InlineData(ClassTable.Sea, "hydrogen", "oxygen", "2", Separation.OwnCabinet)]
    [InlineData(ClassTable.Sea, "sodium hydroxide", "potassium nitrate", "2", Separation.OwnCabinet)]
    [InlineData(ClassTable.Sea, "acetone", "sodium chloride", "", Separation.SameTray)]
    [InlineData(ClassTable.Storage, "acetone", "sodium", "-", Separation.OwnCabinet)]
    [InlineData(ClassTable.Storage, "acetone", "mercury", "-", Separation.OwnCabinet)]
    public void Judge_ByTable_GivesItsCodeAndShelfDistance(ClassTable table, string a, string b, string code, Separation separation)
    {
        var judged = new PairJudge(table).Judge(Profiles.Of(a), Profiles.Of(b));
        Assert.Equal((code, separation), (judged.ClassTable!.Code, judged.ClassTable.Separation));
        Assert.True(judged.Separation >= separation);
        Assert.Equal(judged.ContactSeparation > separation ? judged.ContactSeparation : separation, judged.Separation);
    }

    [Fact]
    public void Judge_StricterLayer_IsNamed()
    {
        Assert.Equal("class table", new PairJudge(ClassTable.Sea).Judge(Profiles.Of("sodium hydroxide"), Profiles.Of("potassium nitrate")).Spoke);
        Assert.Equal("contact", new PairJudge(ClassTable.Road).Judge(Profiles.Of("acetone"), Profiles.Of("potassium permanganate")).Spoke);
        Assert.Equal("both", new PairJudge(ClassTable.Sea).Judge(Profiles.Of("acetone"), Profiles.Of("potassium permanganate")).Spoke);
        Assert.Equal("neither", new PairJudge(ClassTable.Road).Judge(Profiles.Of("acetone"), Profiles.Of("ethanol")).Spoke);
    }

    [Fact]
    public void Judge_UnknownClass_IsSaidAndNoLeave()
    {
        var judged = new PairJudge(ClassTable.Road).Judge(Profiles.Orphan(MatterState.Solid, "white powder"), Profiles.Of("sodium chloride"));
        Assert.Null(judged.ClassTable!.Code);
        Assert.Null(judged.ClassTable.Separation);
        Assert.Null(judged.ClassTable.ClassA);
        Assert.StartsWith("unknown", judged.ClassTable.Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_WithATable_IsNeverMilderAndSymmetric()
    {
        Gen.Select(Gen.Int[0, Stock.Length - 1], Gen.Int[0, Stock.Length - 1], Gen.Int[1, 3]).Sample((i, j, t) =>
        {
            var (a, b, table) = (Stock[i], Stock[j], (ClassTable)t);
            var without = new PairJudge().Judge(a, b);
            var with = new PairJudge(table).Judge(a, b);
            var back = new PairJudge(table).Judge(b, a);
            Assert.True(with.Separation >= without.Separation);
            Assert.True(with.WithoutAir >= without.WithoutAir);
            Assert.Equal(without.Separation, with.ContactSeparation);
            Assert.Equal(with.Separation, back.Separation);
            Assert.Equal(with.ClassTable?.Code, back.ClassTable?.Code);
            Assert.Equal((with.ClassTable?.ClassA, with.ClassTable?.ClassB), (back.ClassTable?.ClassB, back.ClassTable?.ClassA));
            Assert.All(without.NeverAbove, n => Assert.Contains(n, with.NeverAbove));
        }, iter: 5_000, threads: 1);
    }

    [Fact]
    public void Find_ByTableAlone_IsAFindingThatNamesTheTable()
    {
        var items = (ShelfItem[])[Shelves.Item("A", "sodium hydroxide", Shelves.At("C1", 1)), Shelves.Item("B", "potassium nitrate", Shelves.At("C1", 1))];
        Assert.Empty(new NeighbourFinder().Find(items));
        var found = Assert.Single(new NeighbourFinder(new PairJudge(ClassTable.Sea)).Find(items));
        Assert.Contains("sea table", found.Cause, StringComparison.Ordinal);
        Assert.Equal(Separation.OwnCabinet, found.Separation);
    }
}
