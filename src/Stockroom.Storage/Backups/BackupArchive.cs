using System.IO.Compression;
using System.Security.Cryptography;
using Stockroom.Book.Ledgers;
using Stockroom.Storage.Disks;
using Stockroom.Storage.Journals;

namespace Stockroom.Storage.Backups;

/// <summary>
/// A backup's content: a ZIP archive (APPNOTE 6.3) of manifest.json, book.json and journal.txt, so that any unpacker gets the
/// book back. LiteDB is built anew from the journal.
/// </summary>
internal sealed record BackupArchive(BackupManifest Manifest, BookIdentity Identity, byte[] Journal)
{
    private const string ManifestName = "manifest.json";
    private const string IdentityName = "book.json";
    private const string JournalName = "journal.txt";

    public static BackupArchive Of(BookIdentity identity, byte[] journal, JournalChain chain, DateTimeOffset made, bool isEncrypted) =>
        new(new BackupManifest(identity.Book, chain.Entries.Count, chain.EntryHash, made, HashOf(journal), isEncrypted), identity, journal);

    public byte[] Pack()
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, ManifestName, Manifest.Encode());
            Add(zip, IdentityName, Identity.Encode());
            Add(zip, JournalName, Journal);
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
            if (zip.Entries.Count != 3)
                throw new FormatException($"it holds {zip.Entries.Count} files where 3 belong");
            var manifest = BackupManifest.Decode(Take(zip, ManifestName), isEncrypted);
            var identity = BookIdentity.Decode(Take(zip, IdentityName)) ?? throw new FormatException("its book.json is not a book's");
            var archive = new BackupArchive(manifest, identity, Take(zip, JournalName));
            archive.Replay();
            return archive;
        }
        catch (Exception e) when (e is InvalidDataException or IOException or ArgumentException or NotSupportedException or OverflowException)
        {
            throw new FormatException($"it cannot be unpacked: {DiskFaults.OneLine(e.Message)}", e);
        }
    }

    private void Replay()
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
