using System.Text;

namespace Stockroom.Tests.Screens;

/// <summary>
/// A screen as it should look, in a text file beside the tests. When a change is wanted, run the tests once with
/// STOCKROOM_ACCEPT_GOLDEN=1 in the environment, read the difference in the version control, and commit it.
/// </summary>
internal static class GoldenFile
{
    public const string AcceptVariable = "STOCKROOM_ACCEPT_GOLDEN";

    /// <summary>Passes when the file says the same; else fails and shows the rows that differ.</summary>
    public static void Check(string name, string actual)
    {
        string path = Path.Combine(Folder(), name + ".txt");
        if (Environment.GetEnvironmentVariable(AcceptVariable) == "1")
        {
            File.WriteAllText(path, actual);
            return;
        }

        string expected = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        if (expected != actual) Assert.Fail(Difference(name, expected, actual));
    }

    /// <summary>The rows that differ, with their numbers: minus as it was, plus as it is.</summary>
    public static string Difference(string name, string expected, string actual)
    {
        string[] was = expected.Split('\n');
        string[] now = actual.Split('\n');
        var text = new StringBuilder($"The screen \"{name}\" differs from its file. To accept it: {AcceptVariable}=1\n");
        for (int i = 0; i < Math.Max(was.Length, now.Length); i++)
        {
            string? before = i < was.Length ? was[i] : null;
            string? after = i < now.Length ? now[i] : null;
            if (before == after) continue;
            if (before is not null) text.Append(null, $"{i + 1,3} - {before}\n");
            if (after is not null) text.Append(null, $"{i + 1,3} + {after}\n");
        }

        return text.ToString();
    }

    private static string Folder()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string golden = Path.Combine(folder.FullName, "tests", "Stockroom.Tests", "Screens", "Golden");
            if (Directory.Exists(golden)) return golden;
        }

        throw new DirectoryNotFoundException("tests/Stockroom.Tests/Screens/Golden is not above the tests' folder");
    }
}
