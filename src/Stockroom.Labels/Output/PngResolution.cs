using System.Buffers.Binary;

namespace Stockroom.Labels.Output;

/// <summary>Writes a PNG with its resolution in it: a pHYs chunk behind the header (ISO/IEC 15948, 11.3.5.3).</summary>
internal static class PngResolution
{
    /// <summary>Signature of 8 bytes and the IHDR chunk of 25.</summary>
    private const int HeaderBytes = 33;

    public static void Write(ReadOnlySpan<byte> png, int dpi, Stream output)
    {
        Span<byte> chunk = stackalloc byte[21];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        var perMetre = (uint)Math.Round(dpi / 0.0254);
        BinaryPrimitives.WriteUInt32BigEndian(chunk[8..], perMetre);
        BinaryPrimitives.WriteUInt32BigEndian(chunk[12..], perMetre);
        chunk[16] = 1; // the unit is the metre
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], Crc(chunk[4..17]));
        output.Write(png[..HeaderBytes]);
        output.Write(chunk);
        output.Write(png[HeaderBytes..]);
    }

    /// <summary>The cyclic redundancy check of ISO/IEC 15948 Annex D.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }
}
