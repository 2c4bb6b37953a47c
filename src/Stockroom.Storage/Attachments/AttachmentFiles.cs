using System.Security.Cryptography;
using Stockroom.Book.Entries;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Attachments;

/// <summary>The folder of a book's attachments: each file is named by the SHA-256 of its content.</summary>
internal sealed class AttachmentFiles(IDisk disk, BookFiles files)
{
    private const string Ending = ".unfinished";

    public static string HashOf(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    /// <summary>Each content that a ledger names, once, with the name it was first given.</summary>
    public static IReadOnlyDictionary<string, Attached> NamedBy(IEnumerable<Entry> entries)
    {
        var named = new SortedDictionary<string, Attached>(StringComparer.Ordinal);
        foreach (var attached in entries.OfType<Attached>())
            named.TryAdd(attached.Sha256, attached);
        return named;
    }

    /// <summary>
    /// Puts a content there and returns when it, its name and the folder's name are on the medium. Should no entry come to
    /// name it, it does no harm, and verifying tells of it.
    /// </summary>
    /// <returns>True if it was not there before.</returns>
    public bool Put(string hash, ReadOnlySpan<byte> content)
    {
        if (!disk.FolderExists(files.Attachments))
        {
            disk.MakeFolder(files.Attachments);
            disk.SyncFolder(files.Folder);
        }

        if (IsSound(hash))
            return false;
        var (path, unfinished) = (PathOf(hash), PathOf(hash) + Ending);
        Unfinished.Write(disk, unfinished, content);
        disk.Delete(path);
        disk.Rename(unfinished, path);
        disk.SyncFolder(files.Attachments);
        return true;
    }

    public bool IsThere(string hash) => disk.FileExists(PathOf(hash));

    /// <summary>The content under a hash.</summary>
    /// <exception cref="BookUnavailableException">It is missing or altered.</exception>
    public byte[] Read(string hash)
    {
        if (!IsThere(hash))
            throw new BookUnavailableException(BookFault.Damaged, $"the attachment '{PathOf(hash)}' is missing; put it back, or attach the same file again");
        var content = StockBookFolder.Guarded($"the attachment '{PathOf(hash)}' cannot be read", () => Content(hash));
        return HashOf(content) == hash
            ? content
            : throw new BookUnavailableException(BookFault.Damaged, $"the attachment '{PathOf(hash)}' was altered; put back the one that belongs there, or attach the same file again");
    }

    /// <summary>True if the content is there, can be read and fits its hash.</summary>
    public bool IsSound(string hash) => IsThere(hash) && Unsound(hash) is null;

    /// <summary>Checks what is named against what is there.</summary>
    /// <returns>What is missing or altered, and what is there and named by no entry.</returns>
    public (IReadOnlyList<string> Findings, IReadOnlyList<string> Unknown) Check(IEnumerable<Entry> entries)
    {
        var findings = new List<string>();
        var named = NamedBy(entries);
        foreach (var (hash, attached) in named)
        {
            if (!IsThere(hash))
                findings.Add($"attachment {hash} ('{attached.Name}' of {attached.Container}, entry {attached.Number}) is missing");
            else if (Unsound(hash) is { } because)
                findings.Add($"attachment {hash} ('{attached.Name}' of {attached.Container}, entry {attached.Number}) {because}");
        }

        var unknown = disk.FilesIn(files.Attachments).Select(f => Path.GetFileName(f)).Where(f => !named.ContainsKey(f)).Order(StringComparer.Ordinal);
        return (findings, [.. unknown.Select(f => $"'{f}' in the attachments is named by no entry: it was never acknowledged, or is not the book's")]);
    }

    private string? Unsound(string hash)
    {
        try
        {
            return HashOf(Content(hash)) == hash ? null : "was altered";
        }
        catch (Exception e) when (DiskFaults.IsOfTheDisk(e))
        {
            return $"cannot be read: {DiskFaults.OneLine(e.Message)}";
        }
    }

    private byte[] Content(string hash)
    {
        using var file = disk.Open(PathOf(hash), Opening.Read);
        return file.ReadAll();
    }

    private string PathOf(string hash) => Path.Combine(files.Attachments, hash);
}
