using System.Buffers;
using System.Text.Json;
using Stockroom.Storage.Disks;

namespace Stockroom.Storage.Backups;

/// <summary>What a backup says of itself: of which book, up to where, and when it was made.</summary>
/// <param name="Book">The book's identity.</param>
/// <param name="Entries">Entries in it.</param>
/// <param name="HeadHash">Hash of the last of them.</param>
/// <param name="Made">When it was made.</param>
/// <param name="JournalHash">SHA-256 of the journal in it.</param>
/// <param name="IsEncrypted">True if a passphrase is needed to restore it.</param>
public sealed record BackupManifest(string Book, long Entries, string HeadHash, DateTimeOffset Made, string JournalHash, bool IsEncrypted)
{
    /// <summary>Hashes of attachments that were already missing or altered when it was made.</summary>
    public IReadOnlyList<string> MissingAttachments { get; init; } = [];

    private const string Purpose = "stock book backup";
    private const int Version = 1;

    internal byte[] Encode()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer))
        {
            w.WriteStartObject();
            w.WriteString("kind", Purpose);
            w.WriteNumber("version", Version);
            w.WriteString("book", Book);
            w.WriteNumber("entries", Entries);
            w.WriteString("head", HeadHash);
            w.WriteString("made", Made);
            w.WriteString("journal_sha256", JournalHash);
            if (MissingAttachments.Count > 0)
            {
                w.WriteStartArray("missing_attachments");
                foreach (var hash in MissingAttachments)
                    w.WriteStringValue(hash);
                w.WriteEndArray();
            }

            w.WriteEndObject();
        }

        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    /// <summary>Reads a manifest.</summary>
    /// <exception cref="FormatException">It is not a manifest of this version.</exception>
    internal static BackupManifest Decode(ReadOnlyMemory<byte> json, bool isEncrypted)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var root = document.RootElement;
            if (root.GetProperty("kind").GetString() != Purpose)
                throw new FormatException("its manifest is not a backup's");
            if (root.GetProperty("version").GetInt32() is var version && version != Version)
                throw new FormatException($"it is of version {version}; this program knows {Version}");
            return new BackupManifest(
                root.GetProperty("book").GetString() ?? "",
                root.GetProperty("entries").GetInt64(),
                root.GetProperty("head").GetString() ?? "",
                root.GetProperty("made").GetDateTimeOffset(),
                root.GetProperty("journal_sha256").GetString() ?? "",
                isEncrypted)
            {
                MissingAttachments = root.TryGetProperty("missing_attachments", out var missing) ? [.. missing.EnumerateArray().Select(h => h.GetString() ?? "")] : [],
            };
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new FormatException($"its manifest cannot be read: {DiskFaults.OneLine(e.Message)}", e);
        }
    }
}
