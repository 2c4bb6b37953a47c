using System.Text;

namespace Stockroom.Storage.Attachments;

/// <summary>What sort of file it is, by its first bytes as their published formats begin, else by its name's ending.</summary>
public static class MediaTypes
{
    private const string Unknown = "application/octet-stream";

    // PNG (W3C, 5.2), JPEG (ITU-T T.81, B.1.1.3 with SOI), GIF89a, TIFF 6.0, PDF (ISO 32000-1, 7.5.2), ZIP (APPNOTE 6.3).
    private static readonly (byte[] Begin, string Type)[] Beginnings =
    [
        ([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], "image/png"),
        ([0xFF, 0xD8, 0xFF], "image/jpeg"),
        ([.. "GIF87a"u8], "image/gif"),
        ([.. "GIF89a"u8], "image/gif"),
        ([.. "II*\0"u8], "image/tiff"),
        ([.. "MM\0*"u8], "image/tiff"),
        ([.. "%PDF-"u8], "application/pdf"),
    ];

    private static readonly Dictionary<string, string> Endings = new(StringComparer.OrdinalIgnoreCase)
    {
        [".txt"] = "text/plain",
        [".md"] = "text/markdown",
        [".csv"] = "text/csv",
        [".json"] = "application/json",
        [".xml"] = "application/xml",
        [".html"] = "text/html",
        [".svg"] = "image/svg+xml",
        [".zip"] = "application/zip",
        [".odt"] = "application/vnd.oasis.opendocument.text",
        [".docx"] = "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
        [".xlsx"] = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    };

    /// <summary>The media type (RFC 6838); application/octet-stream where nothing tells.</summary>
    public static string Of(ReadOnlySpan<byte> content, string name)
    {
        foreach (var (begin, type) in Beginnings)
        {
            if (content.StartsWith(begin))
                return type;
        }

        if (content.Length >= 12 && content.StartsWith("RIFF"u8) && content[8..12].SequenceEqual("WEBP"u8))
            return "image/webp";
        if (content.Length >= 12 && content[4..8].SequenceEqual("ftyp"u8))
            return Encoding.ASCII.GetString(content[8..12]) is "heic" or "heix" or "mif1" ? "image/heic" : "video/mp4";
        return Endings.GetValueOrDefault(Path.GetExtension(name)) ?? Unknown;
    }
}
