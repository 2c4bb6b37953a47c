using Stockroom.Tests.Verbs;

namespace Stockroom.Tests.Demo;

/// <summary>Moving an offender away ends its findings and no other; moving what is harmless brings none.</summary>
public sealed class DemoMoveTests : IDisposable
{
    private readonly Keeper _keeper = Keeper.WithDemo();

    public void Dispose() => _keeper.Dispose();

    // Common practice: acids with acids, ammonia with the alkalis, halogens apart from both ammonia and metals, in the cool.
    [Theory]
    [InlineData("sulfuric acid 37%", "fire-upper", "acid-upper", "neighbours: strong acid with a flammable liquid")]
    [InlineData("ammonia solution 25%", "acid-tray", "alkali-upper", "neighbours: halogen with ammonia", "neighbours: acid with ammonia")]
    [InlineData("bromine", "window-shelf", "oxidiser-lower", "ampoule")]
    public void Move_OffenderToWhereItBelongs_EndsItsFindings(string content, string from, string to, params string[] ended)
    {
        var before = Findings.Of(_keeper);
        var id = _keeper.IdOf(content, from);
        _keeper.Run("move", id, to).Done();
        var after = Findings.Of(_keeper);
        Assert.Equal(ended.Order(StringComparer.Ordinal), Gone(before, after, id));
        Assert.Empty(after.Keys.Except(before.Keys));
        Assert.DoesNotContain(after.Wrong, w => w.Ids[0] == id);
    }

    // The ammonia finding names the ammonia as the one to act on; taking the bromine away from it ends it as well.
    [Fact]
    public void Move_BromineAwayFromTheAmmonia_EndsThatFindingAndLeavesItsCap()
    {
        var before = Findings.Of(_keeper);
        var id = _keeper.IdOf("bromine", "bromine-tray");
        _keeper.Run("place", "add", "halogen cupboard", "--kind", "cabinet", "--inside", "prep", "--order", "12", "--id", "halogens").Done();
        _keeper.Run("move", id, "halogens").Done();
        var after = Findings.Of(_keeper);
        var gone = Assert.Single(before.Keys.Except(after.Keys));
        Assert.EndsWith("halogen with ammonia", gone, StringComparison.Ordinal);
        Assert.Empty(after.Keys.Except(before.Keys));
        Assert.Contains(after.Wrong, w => w.Words == "material: bromine in halogens");
    }

    // The sulfuric acid that lies over the bromine counts too: beside bleach and nitrates it is what it is.
    [Fact]
    public void Move_BromineUnderItsAcidToTheOxidisers_BringsTheAcidsOwnFindings()
    {
        var before = Findings.Of(_keeper);
        _keeper.Run("move", _keeper.IdOf("bromine", "bromine-tray"), "oxidiser-lower").Done();
        Assert.Contains(Findings.Of(_keeper).Keys.Except(before.Keys), k => k.EndsWith("hypochlorite with an acid", StringComparison.Ordinal));
    }

    // An orphan needs a cabinet to itself, which the museum has to make room for first; unknown it stays.
    [Fact]
    public void Move_OrphanToACabinetOfItsOwn_EndsItsNeighboursAndLeavesItUnknown()
    {
        var before = Findings.Of(_keeper);
        var id = _keeper.IdOf("unknown corrosive liquid");
        _keeper.Run("place", "add", "waiting cupboard", "--kind", "cabinet", "--inside", "prep", "--order", "12", "--id", "waiting").Done();
        _keeper.Run("move", id, "waiting").Done();
        var after = Findings.Of(_keeper);
        Assert.Equal(["neighbours: content that nobody knows, judged as the worst it could be"], Gone(before, after, id));
        Assert.Empty(after.Keys.Except(before.Keys));
        Assert.Contains(after.Wrong, w => w.Words == "orphan: unknown corrosive liquid in waiting");
    }

    [Fact]
    public void Move_BackAgain_BringsTheFindingBack()
    {
        var before = Findings.Of(_keeper);
        var id = _keeper.IdOf("sulfuric acid 37%");
        _keeper.Run("move", id, "acid-upper").Done();
        _keeper.Run("move", id, "fire-upper").Done();
        Assert.Equal(before.Keys, Findings.Of(_keeper).Keys);
    }

    // A seal that fails, a thin cover, spent bleach and peroxides go along to any shelf.
    [Theory]
    [InlineData("n-hexane", "fire-lower", "fire-upper")]
    [InlineData("potassium", "metals-lower", "metals-upper")]
    [InlineData("sodium hypochlorite 12%", "oxidiser-lower", "oxidiser-upper")]
    [InlineData("diethyl ether", "fire-lower", "fire-upper")]
    public void Move_OfWhatIsNotWrongByItsPlace_ChangesNothing(string content, string from, string to)
    {
        var before = Findings.Of(_keeper);
        _keeper.Run("move", _keeper.IdOf(content, from), to).Done();
        Assert.Equal(before.Keys, Findings.Of(_keeper).Keys);
    }

    [Theory]
    [InlineData("sodium chloride", "oxidiser-upper")]
    [InlineData("sodium chloride", "alkali-lower")]
    [InlineData("sodium chloride", "acid-upper")]
    [InlineData("sodium chloride", "element-low")]
    [InlineData("sodium chloride", "metals-upper")]
    [InlineData("potassium chloride", "sink-shelf")]
    [InlineData("sucrose", "sink-shelf")]
    [InlineData("sucrose", "alkali-upper")]
    [InlineData("copper", "element-top")]
    [InlineData("copper", "sink-shelf")]
    [InlineData("gold", "sink-shelf")]
    [InlineData("calcium sulfate dihydrate", "fire-lower")]
    [InlineData("silica gel", "metals-lower")]
    [InlineData("magnesium sulfate heptahydrate", "alkali-lower")]
    [InlineData("water", "alkali-upper")]
    [InlineData("helium", "window-shelf")]
    [InlineData("helium", "fire-upper")]
    public void Move_OfSomethingHarmless_BringsNoFinding(string content, string to)
    {
        var before = Findings.Of(_keeper);
        _keeper.Run("move", _keeper.IdOf(content), to).Done();
        Assert.Empty(Findings.Of(_keeper).Keys.Except(before.Keys));
    }

    [Fact]
    public void Move_HarmlessIntoTheOrphansCabinet_BringsNoFindingOfItsOwn()
    {
        var id = _keeper.IdOf("iron");
        _keeper.Run("move", id, "salts-upper").Done();
        Assert.DoesNotContain(Findings.Of(_keeper).Wrong, w => w.Ids[0] == id);
    }

    private static IEnumerable<string> Gone(Findings before, Findings after, string id) =>
        before.Keys.Except(after.Keys).Select(k => k.Replace($": {id}", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal);
}
