using Stockroom.Book.Containers;
using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Book.Tests.Containers;

public sealed class ContainerContentTests
{
    [Fact]
    public void ContentIn_ANamedContent_IsTheCatalogues()
    {
        var book = new SampleBook();
        var id = book.Receive("bromine");
        var content = book.State.ContainerCalled(id).ContentIn(SubstanceCatalogue.Default).Content;
        Assert.Equal("bromine", content!.Pure!.Name);
    }

    [Fact]
    public void ContentIn_AHomeMadeMixture_HasItsBookedParts()
    {
        var book = new SampleBook();
        var id = book.State.NewId();
        book.Append(SampleBook.Receipt(id, "own brine") with { Parts = [new PartShare("sodium chloride", 20), new PartShare("water", 80)], State = MatterState.Liquid });
        var content = book.State.ContainerCalled(id).ContentIn(SubstanceCatalogue.Default).Content!;
        Assert.Equal(20m, content.PercentOf("sodium chloride"));
        Assert.Equal(MatterState.Liquid, content.State);
    }

    [Fact]
    public void ContentIn_AnOrphan_IsUnknown()
    {
        var book = new SampleBook();
        var id = book.State.NewId();
        book.Append(SampleBook.Receipt(id, "unknown corrosive liquid") with { IsOrphan = true, Seen = "fumes", State = MatterState.Liquid });
        var content = book.State.ContainerCalled(id).ContentIn(SubstanceCatalogue.Default).Content!;
        Assert.True(content.IsUnknown);
        Assert.Equal("unknown corrosive liquid", content.Name);
    }
}
