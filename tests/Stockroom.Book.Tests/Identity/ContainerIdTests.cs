using Stockroom.Book.Identity;

namespace Stockroom.Book.Tests.Identity;

public sealed class ContainerIdTests
{
    private const string Alphabet = "0123456789CDFHJKMNPRTVWXY";

    private static readonly Lazy<List<string>> AllOfFour = new(() =>
    {
        var all = new List<string>();
        for (var id = ContainerId.AtOrAfter(0); id.ToString().Length == 5; id = ContainerId.AtOrAfter(id.Serial + 1))
            all.Add(id.ToString());
        return all;
    });

    [Fact]
    public void AtOrAfter_WholeSpaceOfFour_GivesEachIdOnceBeginningWithALetterFromTheAlphabet()
    {
        var all = AllOfFour.Value;
        Assert.True(all.Count > 100_000, $"{all.Count} ids");
        Assert.Equal(all.Count, all.Distinct(StringComparer.Ordinal).Count());
        foreach (var id in all)
            Assert.False(id.Any(c => !Alphabet.Contains(c, StringComparison.Ordinal)) || char.IsAsciiDigit(id[0]), id);
    }

    [Fact]
    public void AtOrAfter_NeighboursInTheWholeSpaceOfFour_DifferInMoreThanOnePlace()
    {
        var all = AllOfFour.Value;
        for (var i = 1; i < all.Count; i++)
            Assert.True(all[i].Zip(all[i - 1]).Count(p => p.First != p.Second) > 1, $"{all[i - 1]} {all[i]}");
    }

    [Fact]
    public void TryParse_AnyOneCharacterWrong_IsCaughtForEveryFortyFirstIdOfFour()
    {
        foreach (var id in AllOfFour.Value.Where((_, i) => i % 41 == 0))
        {
            for (var at = 0; at < id.Length; at++)
            {
                foreach (var c in Alphabet.Where(c => c != id[at]))
                    AssertCaught(id[..at] + c + id[(at + 1)..], id);
            }
        }
    }

    [Fact]
    public void TryParse_AnyTwoNeighboursSwapped_IsCaughtInTheWholeSpaceOfFour()
    {
        foreach (var id in AllOfFour.Value)
        {
            for (var at = 1; at < id.Length; at++)
            {
                if (id[at] != id[at - 1])
                    AssertCaught(id[..(at - 1)] + id[at] + id[at - 1] + id[(at + 1)..], id);
            }
        }
    }

    [Fact]
    public void AtOrAfter_SpaceOfFourUsedUp_GoesOnWithFive()
    {
        var id = ContainerId.AtOrAfter(234_375);
        Assert.Equal(6, id.ToString().Length);
        Assert.Equal(id, ContainerId.Parse(id.ToString()));
        Assert.True(id.Serial >= 234_375);
    }

    [Fact]
    public void Serial_OfAnyId_LeadsBackToIt()
    {
        var random = new Random(37);
        for (var i = 0; i < 5_000; i++)
        {
            var id = ContainerId.AtOrAfter(random.NextInt64(140_000_000));
            Assert.Equal(id, ContainerId.AtOrAfter(id.Serial));
        }
    }

    [Fact]
    public void Parse_LowerCaseSpacesAndHyphens_IsTheSameId()
    {
        var id = ContainerId.AtOrAfter(4711);
        var text = id.ToString();
        Assert.Equal(id, ContainerId.Parse($" {text[..2].ToLowerInvariant()} {text[2..4]}-{text[4..].ToLowerInvariant()} "));
    }

    [Theory]
    [InlineData("", IdMistake.Empty)]
    [InlineData(" - ", IdMistake.Empty)]
    [InlineData("K4", IdMistake.Length)]
    [InlineData("K4T7XXXXX", IdMistake.Length)]
    [InlineData("KOT7X", IdMistake.Character)]
    [InlineData("K4T7*", IdMistake.Character)]
    [InlineData("44T7X", IdMistake.FirstCharacter)]
    public void TryParse_WhatIsNotAnId_SaysWhichMistakeItIs(string text, IdMistake expected)
    {
        Assert.Equal(expected, ContainerId.TryParse(text, out var id));
        Assert.Null(id);
        Assert.DoesNotContain('\n', Assert.Throws<BookRefusal>(() => ContainerId.Parse(text)).Message);
    }

    [Fact]
    public void Parse_ADigitMistyped_SaysThatTheCheckCharacterDoesNotFit()
    {
        var text = ContainerId.AtOrAfter(0).ToString();
        var mistyped = text[..2] + (text[2] == '4' ? '5' : '4') + text[3..];
        Assert.Equal(IdMistake.CheckCharacter, ContainerId.TryParse(mistyped, out _));
        Assert.Contains("mistyped", Assert.Throws<BookRefusal>(() => ContainerId.Parse(mistyped)).Message, StringComparison.Ordinal);
    }

    private static void AssertCaught(string wrong, string right)
    {
        if (ContainerId.TryParse(wrong, out _) == IdMistake.None)
            Assert.Fail($"{wrong} for {right}");
    }
}
