using Stockroom.Storage.Backups;

namespace Stockroom.Verbs;

/// <summary>A backup's manifest in plain lines or as JSON.</summary>
internal static class BackupWords
{
    public static void Print(TextWriter to, string what, string path, BackupManifest manifest, bool json)
    {
        if (!json)
        {
            to.WriteLine($"{manifest.Entries} entries in '{path}'{(manifest.IsEncrypted ? ", encrypted" : "")}; made {manifest.Made:yyyy-MM-dd HH:mm}; checked by replaying it; head {manifest.HeadHash}");
            foreach (var missing in manifest.MissingAttachments)
                to.WriteLine($"not in it, for it was missing or altered: attachment {missing}");
            return;
        }

        JsonDocumentWriter.Write(to, w =>
        {
            w.WriteString(what, path);
            w.WriteString("book", manifest.Book);
            w.WriteNumber("entries", manifest.Entries);
            w.WriteString("head", manifest.HeadHash);
            w.WriteString("made", manifest.Made.Iso());
            w.WriteBoolean("encrypted", manifest.IsEncrypted);
            w.Texts("missing_attachments", manifest.MissingAttachments);
        });
    }
}
