using System.Text.Json;
using System.Text.Unicode;

namespace Stockroom.Storage.Exports;

/// <summary>The bytes of an imported text: UTF-8 and nothing else, and where in it something stands.</summary>
public sealed class DocumentText
{
    private readonly byte[] _bytes;

    private DocumentText(byte[] bytes) => _bytes = bytes;

    /// <summary>The text without a byte order mark.</summary>
    public ReadOnlyMemory<byte> Bytes => _bytes;

    /// <summary>Takes bytes for a text.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="mostBytes">More are refused.</param>
    /// <exception cref="DocumentException">Too long, or a byte that is not UTF-8; the line says which.</exception>
    public static DocumentText Of(byte[] bytes, long mostBytes)
    {
        if (bytes.LongLength > mostBytes)
            throw new DocumentException(1, $"the file has {bytes.LongLength} bytes; at most {mostBytes} are imported: part it");
        // With its byte order mark, or without one: no text begins with a zero byte, or has one after its first letter.
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [0, ..] or [_, 0, ..])
            throw new DocumentException(1, "the file is UTF-16; save it as UTF-8");
        var text = new DocumentText(bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes[3..] : bytes);
        if (Utf8.IsValid(text._bytes))
            return text;
        var at = text.FirstInvalid();
        throw new DocumentException(text.LineOf(at), $"byte {at - text.LineStart(at) + 1} of the line (0x{text._bytes[at]:X2}) is not UTF-8; save the file as UTF-8");
    }

    /// <summary>The line, from 1, on which a byte stands.</summary>
    public int LineOf(long at) => _bytes.AsSpan(0, (int)Math.Min(at, _bytes.Length)).Count((byte)'\n') + 1;

    /// <summary>The fault that a reader of JSON found.</summary>
    internal DocumentException NotJson(JsonException e) =>
        new((int)(e.LineNumber ?? 0) + 1, $"not JSON at byte {(e.BytePositionInLine ?? 0) + 1} of the line: {e.Message.Split(" LineNumber", 2)[0].Split(" Path:", 2)[0].ReplaceLineEndings(" ")}");

    private int LineStart(int at) => _bytes.AsSpan(0, at).LastIndexOf((byte)'\n') + 1;

    private int FirstInvalid()
    {
        var rest = _bytes.AsSpan();
        while (System.Text.Rune.DecodeFromUtf8(rest, out _, out var length) == System.Buffers.OperationStatus.Done)
            rest = rest[length..];
        return _bytes.Length - rest.Length;
    }
}
