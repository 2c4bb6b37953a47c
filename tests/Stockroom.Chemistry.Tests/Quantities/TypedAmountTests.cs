using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Tests.Quantities;

public sealed class TypedAmountTests
{
    [Theory]
    [InlineData("20 mL", "20", true)]
    [InlineData("20ml", "20", true)]
    [InlineData("1.5 L", "1500", true)]
    [InlineData("3.5 g", "3.5", false)]
    [InlineData("2 kg", "2000", false)]
    [InlineData("250 mg", "0.25", false)]
    [InlineData("40 µg", "0.00004", false)]
    public void TryParse_NumberAndUnit_KeepsItExactly(string text, string value, bool volume)
    {
        Assert.True(TypedAmount.TryParse(text, out var amount, out _));
        Assert.Equal(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), amount.Value);
        Assert.Equal(volume, amount.IsVolume);
    }

    [Theory]
    [InlineData("-5 g", "above zero")]
    [InlineData("0 mL", "above zero")]
    [InlineData("5", "no unit")]
    [InlineData("5 furlongs", "not a unit")]
    [InlineData("many", "not an amount")]
    [InlineData("1,5 g", "not an amount")]
    [InlineData("99999999999 kg", "more than any stock")]
    public void TryParse_Wrong_SaysWhatWouldBeRight(string text, string part)
    {
        Assert.False(TypedAmount.TryParse(text, out _, out var problem));
        Assert.Contains(part, problem, StringComparison.Ordinal);
    }
}
