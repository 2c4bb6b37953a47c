using System.IO.Compression;
using System.Security.Cryptography;
using Stockroom.Book.Entries;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Attachments;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Backups;

/// <summary>
/// A backup's content: a ZIP archive (APPNOTE 6.3) of manifest.json, book.json, journal.txt and the attachments, so that any
/// unpacker gets the book back. LiteDB is built anew from the journal.
/// </summary>
internal sealed record BackupArchive(BackupManifest Manifest, BookIdentity Identity, byte[] Journal)
{
    private const string ManifestName = "manifest.json";
    private const string IdentityName = "book.json";
    private const string JournalName = "journal.txt";
    private const string AttachmentsName = "attachments/";

    private byte[] _packed = [];

    /// <summary>What is backed up, attachments that are missing or altered named in the manifest.</summary>
    public static BackupArchive Of(BookIdentity identity, byte[] journal, JournalChain chain, AttachmentFiles attachments, DateTimeOffset made, bool isEncrypted)
    {
        var missing = AttachmentFiles.NamedBy(chain.Entries).Keys.Where(h => !attachments.IsSound(h)).ToArray();
        return new(new BackupManifest(identity.Book, chain.Entries.Count, chain.EntryHash, made, HashOf(journal), isEncrypted) { MissingAttachments = missing }, identity, journal)
        {
            Attachments = [.. AttachmentFiles.NamedBy(chain.Entries).Keys.Except(missing)],
        };
    }

    /// <summary>Hashes of the attachments in it.</summary>
    public IReadOnlyList<string> Attachments { get; private init; } = [];

    public byte[] Pack(AttachmentFiles attachments)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, ManifestName, Manifest.Encode());
            Add(zip, IdentityName, Identity.Encode());
            Add(zip, JournalName, Journal);
            foreach (var hash in Attachments)
                Add(zip, AttachmentsName + hash, attachments.Read(hash));
        }

        return bytes.ToArray();
    }

    /// <summary>Unpacks a backup and replays it whole.</summary>
    /// <exception cref="FormatException">It does not hold; the message says what.</exception>
    public static BackupArchive Unpack(byte[] bytes, bool isEncrypted)
    {
        try
        {
            using var stream = new MemoryStream(bytes, writable: false);
            using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
            var manifest = BackupManifest.Decode(Take(zip, ManifestName), isEncrypted);
            var identity = BookIdentity.Decode(Take(zip, IdentityName)) ?? throw new FormatException("its book.json is not a book's");
            var archive = new BackupArchive(manifest, identity, Take(zip, JournalName)) { _packed = bytes };
            return archive with { Attachments = CheckAttachments(zip, archive.Replay(), manifest.MissingAttachments) };
        }
        catch (Exception e) when (e is InvalidDataException or IOException or ArgumentException or NotSupportedException or OverflowException)
        {
            throw new FormatException($"it cannot be unpacked: {DiskFaults.OneLine(e.Message)}", e);
        }
    }

    /// <summary>The content of an attachment that was checked when it was unpacked.</summary>
    public byte[] Attachment(string hash)
    {
        using var stream = new MemoryStream(_packed, writable: false);
        using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
        return Take(zip, AttachmentsName + hash);
    }

    private static List<string> CheckAttachments(ZipArchive zip, IReadOnlyList<Entry> entries, IReadOnlyList<string> missing)
    {
        var named = AttachmentFiles.NamedBy(entries);
        if (missing.Any(h => !named.ContainsKey(h)))
            throw new FormatException("its manifest misses an attachment that its journal does not name");
        var there = named.Keys.Except(missing).ToList();
        if (zip.Entries.Count != 3 + there.Count)
            throw new FormatException($"it holds {zip.Entries.Count} files where {3 + there.Count} belong");
        foreach (var hash in there)
        {
            if (zip.GetEntry(AttachmentsName + hash)?.Length != named[hash].Bytes || HashOf(Take(zip, AttachmentsName + hash)) != hash)
                throw new FormatException($"its attachment {hash} ('{named[hash].Name}') is missing or altered");
        }

        return there;
    }

    private IReadOnlyList<Entry> Replay()
    {
        if (HashOf(Journal) != Manifest.JournalHash)
            throw new FormatException("its journal does not fit its manifest");
        using var stream = new MemoryStream(Journal, writable: false);
        var reading = JournalReading.Of(stream, Identity.GenesisHash);
        if (reading.Broken is { } broken)
            throw new FormatException(broken.What);
        if (reading.TornBytes > 0 || reading.Chain.EntryHash != Manifest.HeadHash || reading.Chain.Entries.Count != Manifest.Entries || Identity.Book != Manifest.Book)
            throw new FormatException("its journal does not end where its manifest says");
        if (Ledger.Of(Identity.GenesisHash, reading.Chain.Entries).HeadHash != Manifest.HeadHash)
            throw new FormatException("its entries are not in canonical form");
        return reading.Chain.Entries;
    }

    private static void Add(ZipArchive zip, string name, byte[] content)
    {
        using var entry = zip.CreateEntry(name, CompressionLevel.Optimal).Open();
        entry.Write(content);
    }

    private static byte[] Take(ZipArchive zip, string name)
    {
        using var entry = (zip.GetEntry(name) ?? throw new FormatException($"it holds no {name}")).Open();
        using var content = new MemoryStream();
        entry.CopyTo(content);
        return content.ToArray();
    }

    private static string HashOf(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
