using System.Text;

namespace Stockroom.Demo;

/// <summary>The three files of a collection: those of the demo, embedded in the program, or those of a folder.</summary>
internal sealed record SeedFiles(string Places, string Containers, string? History)
{
    public const string PlacesName = "places.tsv";
    public const string ContainersName = "containers.tsv";
    public const string HistoryName = "history.tsv";

    public static SeedFiles Embedded() => new(Resource(PlacesName), Resource(ContainersName), Resource(HistoryName));

    /// <summary>Reads the files of a folder; history.tsv may be missing.</summary>
    /// <exception cref="IOException">A file is missing or cannot be read.</exception>
    public static SeedFiles Of(string folder)
    {
        var history = Path.Combine(folder, HistoryName);
        return new SeedFiles(
            File.ReadAllText(Path.Combine(folder, PlacesName)),
            File.ReadAllText(Path.Combine(folder, ContainersName)),
            File.Exists(history) ? File.ReadAllText(history) : null);
    }

    private static string Resource(string name)
    {
        using var stream = typeof(SeedFiles).Assembly.GetManifestResourceStream("seed-demo/" + name)
            ?? throw new InvalidOperationException($"the program was built without seed-demo/{name}");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
