using Microsoft.Extensions.Time.Testing;
using Stockroom.Verbs;

namespace Stockroom.Tests.Verbs;

/// <summary>A keeper at the command line: a folder of their own, a clock that stands still, and a book.</summary>
internal sealed class Keeper : IDisposable
{
    // The verbs' options are shared by all who build the command line, which a program does once.
    private static readonly Lock OneAtATime = new();

    public Keeper(DateOnly? today = null)
    {
        Today = today ?? new DateOnly(2026, 6, 15);
        Clock = new FakeTimeProvider(new DateTimeOffset(Today, new TimeOnly(9, 30), TimeSpan.Zero));
        Folder = Directory.CreateTempSubdirectory("stockroom-verbs-").FullName;
        Book = Path.Combine(Folder, "museum.stockbook");
    }

    public DateOnly Today { get; }

    public FakeTimeProvider Clock { get; }

    /// <summary>A folder that is gone when the test is.</summary>
    public string Folder { get; }

    /// <summary>What PATH says.</summary>
    public string? SearchPath { get; set; }

    public string DataFolder => Path.Combine(Folder, "data");

    /// <summary>What STOCKROOM_BOOK says; verbs are run without --book.</summary>
    public string Book { get; set; }

    /// <summary>What STOCKROOM_PASSPHRASE says.</summary>
    public string? Passphrase { get; set; }

    public string Journal => Path.Combine(Book, "journal.txt");

    /// <summary>A keeper whose book has a room with a shelf in each of two cabinets, and no container.</summary>
    public static Keeper WithSmallBook()
    {
        var keeper = new Keeper();
        DemoBooks.CopySmallTo(keeper.Book);
        return keeper;
    }

    public static Keeper WithDemo(DateOnly? today = null)
    {
        var keeper = new Keeper(today);
        DemoBooks.CopyTo(keeper.Book, keeper.Today);
        return keeper;
    }

    public Answer Run(params string[] words) => RunWith("", words);

    /// <summary>Runs a verb with something on standard input.</summary>
    public Answer RunWith(string input, params string[] words) => RunReading(new StringReader(input), words);

    public Answer RunReading(TextReader input, params string[] words)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new Surroundings
        {
            In = input,
            Out = output,
            Error = error,
            Clock = Clock,
            Variable = name => name switch { "STOCKROOM_BOOK" => Book, "STOCKROOM_PASSPHRASE" => Passphrase, "PATH" => SearchPath, _ => null },
            DataFolder = DataFolder,
            User = "Maren Sole",
            IsTerminal = false,
        };
        lock (OneAtATime)
            return new Answer(CommandLine.Run(words, around), output.ToString(), error.ToString());
    }

    /// <summary>Books a container and gives its id.</summary>
    public string Add(params string[] words) => Run(["add", .. words, "--json"]).Done().Json.GetProperty("id").GetString()!;

    /// <summary>Id of the only container of that content standing in a place.</summary>
    public string IdOf(string content, string? place = null) => Run("list", "--json").Done().Json.GetProperty("containers").EnumerateArray()
        .Single(c => c.GetProperty("content").GetString() == content && (place is null || c.GetProperty("place").GetString() == place))
        .GetProperty("id").GetString()!;

    /// <summary>A path beside the book.</summary>
    public string Beside(string name) => Path.Combine(Folder, name);

    /// <summary>Writes a file beside the book and gives its path.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(Beside(name), text);
        return Beside(name);
    }

    /// <summary>Every entry of a book as "export" writes it.</summary>
    public string Export(string book)
    {
        var file = Beside($"export-{Guid.NewGuid():N}.json");
        Run("export", file, "--book", book).Done();
        return File.ReadAllText(file);
    }

    /// <summary>Everything in the book's folder but the lock, as text that differs when a byte does.</summary>
    public string BookBytes() => FolderBytes(Book);

    public static string FolderBytes(string folder) => string.Join('\n', Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Where(f => !Path.GetFileName(f).StartsWith("lock", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal)
        .Select(f => $"{Path.GetRelativePath(folder, f)} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))}"));

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
