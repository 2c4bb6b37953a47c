using Stockroom.Labels.Drawings;
using Stockroom.Labels.Fonts;
using Stockroom.Labels.Output;
using Stockroom.Labels.Pictograms;

namespace Stockroom.Labels.Tests.Pictograms;

/// <summary>Form and colours: CLP Annex I 1.2.1.1-1.2.1.2, UN GHS Annex 1.</summary>
public sealed class PictogramTests
{
    public static TheoryData<string> Codes() => [.. Pictogram.Codes];

    [Fact]
    public void Codes_AreTheNineOfTheStandard() =>
        Assert.Equal(["GHS01", "GHS02", "GHS03", "GHS04", "GHS05", "GHS06", "GHS07", "GHS08", "GHS09"], Pictogram.Codes);

    [Theory]
    [MemberData(nameof(Codes))]
    public void Frame_IsARedSquareOnItsPointOfTheAskedSide(string code)
    {
        var drawn = Pictogram.Draw(code, 16, new Position(3, 4));
        var frame = Assert.Single(drawn.Items.Leaves().OfType<FilledPath>(), f => f.Ink == Ink.Red);

        var corners = frame.Path.Segments.Take(4).Select(s => s.End).ToList();
        Assert.All(Enumerable.Range(0, 4), i => Assert.Equal(16, Distance(corners[i], corners[(i + 1) % 4]), 6));
        Assert.Equal(4, corners[0].Y, 6);
        Assert.Equal(3, corners[3].X, 6);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Symbol_IsBlackOnWhite_AndStaysInsideTheFrame(string code)
    {
        var drawn = Pictogram.Draw(code, 100 / Math.Sqrt(2), new Position(0, 0));
        var symbol = drawn.Items.Leaves().Skip(2).ToList();

        Assert.Contains(symbol, s => s is FilledPath { Ink: Ink.Black } or StrokedPath { Ink: Ink.Black });
        Assert.DoesNotContain(symbol, s => s is FilledPath { Ink: Ink.Red });
        foreach (var path in symbol.Select(s => s is StrokedPath stroked ? stroked.Path : ((FilledPath)s).Path))
        {
            foreach (var point in OnOutline(path))
            {
                // Half the diagonal is 50, the frame takes 6 of it; the symbol keeps clear of the frame.
                Assert.True(Math.Abs(point.X - 50) + Math.Abs(point.Y - 50) <= 43, $"{code} touches its frame at {point}");
            }
        }
    }

    [Theory]
    [InlineData("GHS00")]
    [InlineData("GHS10")]
    [InlineData("ghs05")]
    [InlineData("")]
    public void UnknownCode_IsRefused(string code) =>
        Assert.Equal(
            $"there is no hazard pictogram '{code}'; the codes are GHS01 to GHS09",
            Assert.Throws<LabelException>(() => Pictogram.Draw(code, 10, default)).Message);

    [Fact]
    public void ContactSheet_ShowsAllNineLargeAndSmall()
    {
        double[] sides = [30, 14, 10, 5];
        var items = new List<DrawingItem>();
        for (var i = 0; i < 9; i++)
        {
            var code = Pictogram.Codes[i];
            var (x, y) = (12 + (i % 3 * 64.0), 12 + (i / 3 * 60.0));
            items.Add(Pictogram.Draw(code, sides[0], new Position(x, y)));
            items.Add(new TextRun($"{code} {Pictogram.NameOf(code)}", Face.Regular, 3, new Position(x, y + 48)));
            for (var s = 1; s < sides.Length; s++)
            {
                items.Add(Pictogram.Draw(code, sides[s], new Position(12 + (i * 20.5), 182 + (s * 24))));
            }
        }

        var large = new Drawing(160, 160, [Pictogram.Draw("GHS05", 100, new Position(9, 9))]);
        var path = Artefacts.Path("pictograms.pdf");
        PageFiles.Write(path, [new Drawing(210, 297, items), large], "Hazard pictograms", Samples.PrintedAt);

        Assert.Equal(36, items.OfType<Group>().Count());
        Assert.True(new FileInfo(path).Length > 5000);
    }

    /// <summary>Points along the outline itself; a curve's control points may lie outside.</summary>
    private static IEnumerable<Position> OnOutline(VectorPath path)
    {
        var from = default(Position);
        foreach (var segment in path.Segments)
        {
            yield return segment.End;
            if (segment.Kind == SegmentKind.Cubic)
            {
                for (var t = 0.1; t < 1; t += 0.1)
                {
                    double At(double a, double b, double c, double d) =>
                        (Math.Pow(1 - t, 3) * a) + (3 * Math.Pow(1 - t, 2) * t * b) + (3 * (1 - t) * t * t * c) + (t * t * t * d);
                    yield return new Position(
                        At(from.X, segment.First.X, segment.Second.X, segment.End.X),
                        At(from.Y, segment.First.Y, segment.Second.Y, segment.End.Y));
                }
            }

            from = segment.End;
        }
    }

    private static double Distance(Position a, Position b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));
}
