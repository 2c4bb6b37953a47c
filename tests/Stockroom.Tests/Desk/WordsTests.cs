using Stockroom.Chemistry.Quantities;
using Stockroom.Desk;

namespace Stockroom.Tests.Desk;

public sealed class WordsTests
{
    [Theory]
    [InlineData(0.45, 4.5, 45, "4.5 g (0.45 to 45)")]
    [InlineData(0.0248, 0.0928, 0.771, "92.8 mg (24.8 to 771)")]
    [InlineData(6.59e-7, 2.68e-6, 1.2e-5, "2.68 µg (0.659 to 12)")]
    [InlineData(0, 0, 0.003623, "0 mg (0 to 3.62)")]
    [InlineData(0, 0, 5.2, "0 g (0 to 5.2)")]
    [InlineData(0, 0, 5e-10, "under 1 ng")]
    [InlineData(0.0999, 0.1, 0.2, "0.1 g (0.0999 to 0.2)")]
    public void Band_OfGrams_IsSaidInTheUnitThatFits(double low, double expected, double high, string words) =>
        Assert.Equal(words, Words.Band(new Band<double>(low, expected, high), "g"));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1234.6, "1235")]
    [InlineData(99.96, "100")]
    [InlineData(0.0123456, "0.0123")]
    [InlineData(1e-7, "under 0.000001")]
    public void Number_AnySize_HasThreeDigitsAndNoPowerOfTen(double value, string words) => Assert.Equal(words, Words.Number(value));

    [Theory]
    [InlineData(null, "unknown")]
    [InlineData(1000.0, "1 kg")]
    [InlineData(999.9, "1000 g")]
    [InlineData(0.0999, "99.9 mg")]
    [InlineData(0.1, "0.1 g")]
    public void Grams_AtTheEdgesOfUnits_AreSaidInTheUnitThatFits(double? grams, string words) => Assert.Equal(words, Words.Grams((decimal?)grams));
}
