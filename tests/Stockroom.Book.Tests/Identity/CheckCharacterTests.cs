using Stockroom.Book.Identity;

namespace Stockroom.Book.Tests.Identity;

public sealed class CheckCharacterTests
{
    // The worked example of the recording industry's release identifier (GRid standard), which uses MOD 37,36, and the
    // examples in the public manual of a data integration tool's checksum function of that name.
    [Theory]
    [InlineData("A12425GABC1234002", 'M')]
    [InlineData("123AB", 'X')]
    [InlineData("DADPIDA3897722461", 'J')]
    public void For_PublishedExamples_GivesTheirCheckCharacter(string text, char expected)
    {
        Assert.Equal(expected, CheckCharacter.For(text));
        Assert.True(CheckCharacter.Holds(text + expected));
    }

    [Fact]
    public void For_RandomTexts_AgreesWithTheSumWrittenOutAsIso7064DefinesIt()
    {
        var random = new Random(7064);
        for (var i = 0; i < 20_000; i++)
        {
            var values = Enumerable.Range(0, random.Next(1, 12)).Select(_ => random.Next(36)).ToArray();
            var text = string.Concat(values.Select(CharacterOf));
            Assert.Equal(CharacterOf(CheckValue(values)), CheckCharacter.For(text));
        }
    }

    [Fact]
    public void For_AnythingButDigitsAndCapitals_Throws() =>
        Assert.Throws<ArgumentException>(() => CheckCharacter.For("K4t7"));

    // ISO/IEC 7064:2003, hybrid systems: S(1) = M + a(1); P(j) = S(j) reduced to 1..M, times 2, mod M+1; S(j+1) = P(j) + a(j+1);
    // the whole, check character included, satisfies S(n) = 1 (mod M). Found here by trying all 36.
    private static int CheckValue(int[] values) =>
        Enumerable.Range(0, 36).Single(check =>
        {
            var p = 36;
            foreach (var a in values)
            {
                var s = p + a;
                while (s > 36)
                    s -= 36;
                p = s * 2 % 37;
            }

            return (p + check) % 36 == 1;
        });

    private static char CharacterOf(int value) => (char)(value < 10 ? '0' + value : 'A' + value - 10);
}
