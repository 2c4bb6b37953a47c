namespace Stockroom.Labels.Output;

/// <summary>Writes files whole or not at all: temporary files beside them, synced, then renamed over them. Only the owner may read them.</summary>
public static class OutputFile
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes <paramref name="path"/> with what <paramref name="write"/> puts into the stream.</summary>
    /// <exception cref="LabelException">The place cannot be written; nothing is left behind, an older file stays as it was.</exception>
    public static void Write(string path, Action<Stream> write) => WriteAll([(path, write)]);

    /// <summary>Writes several files; no one is renamed into place before all are whole.</summary>
    /// <exception cref="LabelException">A place cannot be written; nothing is left behind.</exception>
    public static void WriteAll(IReadOnlyList<(string Path, Action<Stream> Write)> files)
    {
        var partials = new List<(string Path, string Partial, string Target)>();
        try
        {
            foreach (var (path, write) in files)
            {
                var target = Target(path);
                var partial = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.part");
                partials.Add((path, partial, target));
                Guarded(path, () => Put(partial, write));
            }

            foreach (var (path, partial, target) in partials)
            {
                Guarded(path, () => File.Move(partial, target, overwrite: true));
            }
        }
        catch
        {
            foreach (var (_, partial, _) in partials)
            {
                Discard(partial);
            }

            throw;
        }
    }

    private static string Target(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var target = Path.GetFullPath(path);
        var folder = Path.GetDirectoryName(target);
        if (Directory.Exists(target) || folder is null)
        {
            throw new LabelException($"cannot write '{path}': it is a folder; name a file");
        }

        return Directory.Exists(folder) ? target : throw new LabelException($"cannot write '{path}': there is no folder '{folder}'");
    }

    private static void Put(string partial, Action<Stream> write)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnerOnly;
        }

        using var stream = new FileStream(partial, options);
        write(stream);
        stream.Flush(flushToDisk: true);
    }

    private static void Guarded(string path, Action act)
    {
        try
        {
            act();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LabelException($"cannot write '{path}': {OneLine(e.Message)}; choose a place that can be written", e);
        }
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
