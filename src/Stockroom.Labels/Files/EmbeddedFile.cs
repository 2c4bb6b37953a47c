using System.Reflection;
using System.Text;

namespace Stockroom.Labels.Files;

/// <summary>Files that are part of the program, by the tail of their name.</summary>
internal static class EmbeddedFile
{
    private static readonly Assembly Here = typeof(EmbeddedFile).Assembly;

    /// <summary>Names that begin with the folder, in ordinal order, the folder itself left off.</summary>
    public static IReadOnlyList<string> NamesIn(string folder) =>
    [
        .. Here.GetManifestResourceNames()
            .Where(n => n.StartsWith(folder + ".", StringComparison.Ordinal))
            .Select(n => n[(folder.Length + 1)..])
            .Order(StringComparer.Ordinal),
    ];

    public static byte[] Bytes(string name)
    {
        using var stream = Here.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"the program was built without '{name}'");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    public static string Text(string name) => Encoding.UTF8.GetString(Bytes(name)).TrimStart('\uFEFF');
}
