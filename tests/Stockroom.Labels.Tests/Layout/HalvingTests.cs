using Stockroom.Labels.Layout;

namespace Stockroom.Labels.Tests.Layout;

public sealed class HalvingTests
{
    [Fact]
    public void First_OfAnOrderedList_IsWhereSuccessBegins_InFewTrials()
    {
        for (var count = 0; count <= 70; count++)
        {
            for (var begins = 0; begins <= count; begins++)
            {
                var trials = 0;
                var (index, result) = Halving.First(count, i =>
                {
                    trials++;
                    return i >= begins ? $"{i}" : null;
                });

                Assert.Equal(begins < count ? begins : -1, index);
                Assert.Equal(begins < count ? $"{begins}" : null, result);
                Assert.True(trials <= 2 + Math.Ceiling(Math.Log2(Math.Max(2, count))), $"{trials} trials for {count}");
            }
        }
    }
}
