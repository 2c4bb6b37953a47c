using Stockroom.Chemistry.Hazards;

namespace Stockroom.Chemistry.Tests.Hazards;

/// <summary>Source of the figures: Regulation (EC) No 1272/2008, Annex I, 1.2.1.4, Table 1.3.</summary>
public sealed class LabelSizesTests
{
    [Theory]
    [InlineData(1, 52, 74, true, 10, 16)]
    [InlineData(3_000, 52, 74, true, 10, 16)]
    [InlineData(3_001, 74, 105, false, 23, 23)]
    [InlineData(50_000, 74, 105, false, 23, 23)]
    [InlineData(50_001, 105, 148, false, 32, 32)]
    [InlineData(500_000, 105, 148, false, 32, 32)]
    [InlineData(500_001, 148, 210, false, 46, 46)]
    public void For_ACapacity_IsTheRowOfTheTable(int millilitres, int shorter, int longer, bool ifPossible, int pictogram, int pictogramIfPossible)
    {
        var size = LabelSizes.For(millilitres);
        Assert.Equal((shorter, longer), (size.ShorterMillimetres, size.LongerMillimetres));
        Assert.Equal(ifPossible, size.LabelIfPossible);
        Assert.Equal(pictogram, size.PictogramMillimetres);
        Assert.Equal(pictogramIfPossible, size.PictogramIfPossibleMillimetres);
        Assert.True(size.XHeightMillimetres > 0);
    }
}
