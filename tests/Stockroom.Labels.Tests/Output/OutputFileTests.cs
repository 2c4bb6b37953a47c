using Stockroom.Labels.Layout;
using Stockroom.Labels.Output;
using Stockroom.Labels.Stocks;

namespace Stockroom.Labels.Tests.Output;

public sealed class OutputFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("labels").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Write_GivesTheWholeFileAndNothingElse()
    {
        var path = Path.Combine(_folder, "a.txt");

        OutputFile.Write(path, s => s.Write("whole"u8));

        Assert.Equal("whole", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Write_ReplacesAnOlderFile()
    {
        var path = Path.Combine(_folder, "a.txt");
        File.WriteAllText(path, "older and longer");

        OutputFile.Write(path, s => s.Write("new"u8));

        Assert.Equal("new", File.ReadAllText(path));
    }

    [Fact]
    public void FailureHalfWay_LeavesTheOlderFileAndNothingHalfWritten()
    {
        var path = Path.Combine(_folder, "a.txt");
        File.WriteAllText(path, "older");

        var error = Assert.Throws<LabelException>(() => OutputFile.Write(path, s =>
        {
            s.Write("half"u8);
            throw new IOException("No space left on device");
        }));

        Assert.Equal($"cannot write '{path}': No space left on device; choose a place that can be written", error.Message);
        Assert.Equal("older", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void AnyOtherFailure_LeavesNothingHalfWritten()
    {
        Assert.Throws<InvalidOperationException>(() =>
            OutputFile.Write(Path.Combine(_folder, "a.txt"), _ => throw new InvalidOperationException("drawing failed")));

        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void FolderInPlaceOfAFile_IsOneClearLine()
    {
        var error = Assert.Throws<LabelException>(() => OutputFile.Write(_folder, _ => { }));

        Assert.Equal($"cannot write '{_folder}': it is a folder; name a file", error.Message);
    }

    [Fact]
    public void MissingFolder_IsOneClearLine_AndIsNotMade()
    {
        var path = Path.Combine(_folder, "missing", "a.pdf");
        var pages = LabelSheet.Render([Samples.Gold], LabelStocks.Load().Named("a4-2x4")).Pages;

        var error = Assert.Throws<LabelException>(() => PageFiles.Write(path, pages, "Labels", Samples.PrintedAt));

        Assert.Equal($"cannot write '{path}': there is no folder '{Path.GetDirectoryName(path)}'", error.Message);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void FileInPlaceOfTheFolder_IsOneClearLine()
    {
        var file = Path.Combine(_folder, "file");
        File.WriteAllText(file, string.Empty);

        var error = Assert.Throws<LabelException>(() => OutputFile.Write(Path.Combine(file, "a.pdf"), _ => { }));

        Assert.DoesNotContain('\n', error.Message);
        Assert.StartsWith("cannot write '", error.Message, StringComparison.Ordinal);
    }
}
