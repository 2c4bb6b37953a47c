using System.Globalization;

namespace Stockroom.Verbs;

/// <summary>
/// A file that the keeper named, read whole up to a limit. A pipe or a device does not say how long it is, so the limit is
/// kept while reading and no length is asked for.
/// </summary>
internal static class InputFile
{
    /// <summary>The content of a file, a pipe or a device.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="most">Most bytes that are taken.</param>
    /// <param name="tooLong">What to say of a longer one, after its name: "at most ... are imported at once".</param>
    /// <exception cref="RefusedException">It cannot be read, or is longer.</exception>
    public static byte[] Read(string path, long most, string tooLong)
    {
        try
        {
            if (Directory.Exists(path))
                throw RefusedException.Input($"'{path}' is a folder; name a file");
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            if (file.CanSeek && file.Length > most)
                throw RefusedException.Input(string.Create(CultureInfo.InvariantCulture, $"'{path}' has {file.Length} bytes; {tooLong}"));
            return Content(file, most) ?? throw RefusedException.Input(string.Create(CultureInfo.InvariantCulture, $"'{path}' has more than {most} bytes; {tooLong}"));
        }
        catch (Exception e) when (IsUnreadable(e))
        {
            throw RefusedException.Input($"'{path}' cannot be read: {e.Message}");
        }
    }

    /// <summary>What the system answers where a file cannot be read, or its name cannot be one.</summary>
    public static bool IsUnreadable(Exception e) => e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;

    // Null where there is more of it.
    private static byte[]? Content(FileStream file, long most)
    {
        using var content = new MemoryStream();
        var piece = new byte[1 << 16];
        while (content.Length <= most)
        {
            var read = file.Read(piece);
            if (read == 0)
                return content.ToArray();
            content.Write(piece, 0, read);
        }

        return null;
    }
}
