namespace Stockroom.Architecture.Tests;

/// <summary>The top of the tree stays as agreed, and no file grows beyond what can be read in one sitting.</summary>
public sealed class TopLevelTests
{
    private static readonly string Root = FindRoot();

    [Fact]
    public void TopLevel_HoldsOnlyWhatWasAgreed()
    {
        string[] agreed =
        [
            "README.md", "DEVELOPERS.md", "src", "tests", "labels", "seed-demo", "Stockroom.sln", "global.json",
            "Directory.Build.props", "Directory.Packages.props",
        ];
        var extra = Directory.EnumerateFileSystemEntries(Root)
            .Select(p => Path.GetFileName(p))
            .Where(n => !n.StartsWith('.') && n is not ("artifacts" or "TestResults" or "BenchmarkDotNet.Artifacts"))
            .Except(agreed, StringComparer.Ordinal);
        Assert.Empty(extra);
    }

    [Fact]
    public void SourceFile_StopsAtFourHundredLines()
    {
        var tooLong = new[] { "src", "tests" }
            .SelectMany(d => Directory.EnumerateFiles(Path.Combine(Root, d), "*.cs", SearchOption.AllDirectories))
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(f => File.ReadLines(f).Count() > 400)
            .Select(f => Path.GetRelativePath(Root, f));
        Assert.Empty(tooLong);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Stockroom.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Stockroom.sln was not found above the tests.");
    }
}
