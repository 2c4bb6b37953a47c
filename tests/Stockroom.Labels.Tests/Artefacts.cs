namespace Stockroom.Labels.Tests;

/// <summary>Where tests leave pages for a person to look at: <c>artefacts</c> beside the test program.</summary>
internal static class Artefacts
{
    public static string Path(string name)
    {
        var folder = System.IO.Path.Combine(AppContext.BaseDirectory, "artefacts");
        Directory.CreateDirectory(folder);
        return System.IO.Path.Combine(folder, name);
    }
}
