namespace Stockroom.Labels.Output;

/// <summary>Writes a file whole or not at all, for its owner only: a temporary file beside it, synced, then renamed over it.</summary>
public static class OutputFile
{
    /// <summary>Writes <paramref name="path"/> with what <paramref name="write"/> puts into the stream.</summary>
    /// <exception cref="LabelException">The place cannot be written; nothing is left behind, an older file stays as it was.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var target = Path.GetFullPath(path);
        var folder = Path.GetDirectoryName(target);
        if (Directory.Exists(target) || folder is null)
        {
            throw new LabelException($"cannot write '{path}': it is a folder; name a file");
        }

        if (!Directory.Exists(folder))
        {
            throw new LabelException($"cannot write '{path}': there is no folder '{folder}'");
        }

        var partial = Path.Combine(folder, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.part");
        try
        {
            using (var stream = new FileStream(partial, New()))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(partial, target, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Discard(partial);
            throw new LabelException($"cannot write '{path}': {OneLine(e.Message)}; choose a place that can be written", e);
        }
        catch
        {
            Discard(partial);
            throw;
        }
    }

    // What is held, and where, is nobody's business but its owner's.
    private static FileStreamOptions New()
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }

    private static void Discard(string partial)
    {
        try
        {
            File.Delete(partial);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The first failure is the one to report.
        }
    }

    private static string OneLine(string message) => message.ReplaceLineEndings(" ").TrimEnd('.', ' ');
}
