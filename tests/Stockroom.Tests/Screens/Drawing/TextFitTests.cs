using Stockroom.Screens.Drawing;

namespace Stockroom.Tests.Screens.Drawing;

public sealed class TextFitTests
{
    [Theory]
    [InlineData("bromine", 8, "bromine")]
    [InlineData("bromine", 7, "bromine")]
    [InlineData("bromine", 6, "bromi…")]
    [InlineData("bromine", 1, "…")]
    [InlineData("bromine", 0, "")]
    [InlineData("水銀温度計", 10, "水銀温度計")]
    [InlineData("水銀温度計", 9, "水銀温度…")]
    [InlineData("水銀温度計", 8, "水銀温…")]
    public void Cut_AtSoManyColumns_ShowsWhereItCut(string text, int columns, string shown) => Assert.Equal(shown, TextFit.Cut(text, columns, "…"));

    [Theory]
    [InlineData("prep room > acid cabinet > lower shelf", 38, "prep room > acid cabinet > lower shelf")]
    [InlineData("prep room > acid cabinet > lower shelf", 37, "… acid cabinet > lower shelf")]
    [InlineData("prep room > acid cabinet > lower shelf", 28, "… acid cabinet > lower shelf")]
    [InlineData("prep room > acid cabinet > lower shelf", 27, "… lower shelf")]
    [InlineData("prep room > acid cabinet > lower shelf", 12, "…lower shelf")]
    [InlineData("prep room > acid cabinet > lower shelf", 6, "…shelf")]
    public void CutPath_AtSoManyColumns_KeepsTheEnd(string path, int columns, string shown) => Assert.Equal(shown, TextFit.CutPath(path, columns, "…"));

    [Theory]
    [InlineData("one two three", 7, "one two|three")]
    [InlineData("one two three", 6, "one|two|three")]
    [InlineData("one  two", 20, "one two")]
    [InlineData("abcdefgh ij", 3, "abc|def|gh|ij")]
    [InlineData("a\nb\tc", 20, "a b c")]
    [InlineData("", 20, "")]
    public void Wrap_AtSoManyColumns_BreaksAtBlanks(string text, int columns, string lines) =>
        Assert.Equal(lines, string.Join('|', TextFit.Wrap(text, columns)));

    [Fact]
    public void Wrap_OfManyTexts_LosesNothingAndStaysInside()
    {
        const int Seed = 20260317;
        var random = new Random(Seed);
        for (int round = 0; round < 2000; round++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(60)).Select(_ => "ab cé水 -"[random.Next(8)]));
            int columns = random.Next(2, 30);
            IReadOnlyList<string> lines = TextFit.Wrap(text, columns);
            Assert.True(lines.All(l => TextFit.Columns(l) <= columns), $"seed {Seed}, round {round}: \"{text}\" in {columns}");
            Assert.Equal(text.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
        }
    }

    [Fact]
    public void Pad_OfWideCharacters_FillsTheColumns()
    {
        Assert.Equal("水銀 ", TextFit.Pad("水銀", 5, "…"));
        Assert.Equal("水… ", TextFit.Pad("水銀温", 4, "…"));
    }

    [Fact]
    public void Clean_OfEscapeSequences_LeavesNoControlCharacter() => Assert.Equal(" [2Jx ", TextFit.Clean("\u001b[2Jx\u009b"));
}
