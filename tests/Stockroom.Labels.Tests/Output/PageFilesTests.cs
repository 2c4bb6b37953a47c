using System.Buffers.Binary;
using SkiaSharp;
using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Output;

public sealed class PageFilesTests : IDisposable
{
    private static readonly LabelStock Bottle = LabelStocks.Load().Named("a4-2x4");

    private readonly string _folder = Directory.CreateTempSubdirectory("pages").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("a.pdf")]
    [InlineData("a.svg")]
    [InlineData("a.PNG")]
    public void OnePage_IsTheFileAskedFor_AndItsOwnersAlone(string name)
    {
        var path = Path.Combine(_folder, name);

        Assert.Equal([path], Write(path, skip: 0));
        Assert.Equal([path], Directory.GetFileSystemEntries(_folder));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Theory]
    [InlineData("a.svg", "a-1.svg", "a-2.svg")]
    [InlineData("a.png", "a-1.png", "a-2.png")]
    [InlineData("a.pdf", "a.pdf")]
    public void TwoPages_AreNumberedFiles_ExceptInAPdf(string name, params string[] expected)
    {
        Assert.Equal(expected.Select(e => Path.Combine(_folder, e)), Write(Path.Combine(_folder, name), skip: 1));
        Assert.Equal(expected.Select(e => Path.Combine(_folder, e)), Directory.GetFileSystemEntries(_folder).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void SecondFileCannotBeWritten_LeavesNone()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "a-2.svg"));

        var error = Assert.Throws<LabelException>(() => Write(Path.Combine(_folder, "a.svg"), skip: 1));

        Assert.Equal($"cannot write '{Path.Combine(_folder, "a-2.svg")}': it is a folder; name a file", error.Message);
        Assert.Equal([Path.Combine(_folder, "a-2.svg")], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void OtherKindOfFile_IsRefused() => Assert.Contains(
        "its name ends in .pdf, .svg, .png", Assert.Throws<LabelException>(() => Write(Path.Combine(_folder, "a.docx"), skip: 0)).Message);

    [Theory]
    [InlineData(203)]
    [InlineData(600)]
    public void Png_HasItsResolutionInIt_AndSoItsTrueSize(int dpi)
    {
        var path = Path.Combine(_folder, "a.png");
        PageFiles.Write(path, LabelSheet.Render([Samples.Gold], Bottle).Pages, "Labels", Samples.PrintedAt, dpi);
        var bytes = File.ReadAllBytes(path);
        using var picture = SKBitmap.Decode(bytes);

        // ISO/IEC 15948: the chunk pHYs stands before the picture's data; pixels to the metre, unit 1.
        Assert.Equal("pHYs"u8.ToArray(), bytes[37..41]);
        Assert.Equal(dpi / 0.0254, BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(41)), 0.5);
        Assert.Equal(1, bytes[49]);
        Assert.Equal(210 / 25.4 * dpi, picture.Width, 0.51);
        Assert.Equal(297 / 25.4 * dpi, picture.Height, 0.51);
    }

    [Theory]
    [InlineData(71)]
    [InlineData(1201)]
    public void Png_OfAnImpossibleResolution_IsRefused(int dpi)
    {
        var pages = LabelSheet.Render([Samples.Gold], Bottle).Pages;

        Assert.Equal($"{dpi} dpi is outside 72 to 1200", Assert.Throws<LabelException>(() =>
            PageFiles.Write(Path.Combine(_folder, "a.png"), pages, "Labels", Samples.PrintedAt, dpi)).Message);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    private static IReadOnlyList<string> Write(string path, int skip) =>
        PageFiles.Write(path, LabelSheet.Render(Samples.All, Bottle, skip).Pages, "Labels", Samples.PrintedAt, 72);
}
