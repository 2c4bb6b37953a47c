using System.Text;

namespace Stockroom.Endurance.Tests.Imports;

/// <summary>Spoils a valid file as accidents and malice do: bytes flipped, taken out, doubled and swapped, and pieces that readers stumble over put in.</summary>
internal static class Mutation
{
    private static readonly byte[][] Pieces =
    [
        .. new[]
        {
            "\"", "\"\"", ",", ";", "\t", "\r", "\n", "\r\n", "\0", "\u001B[2J", "\uFEFF", "\u202E", "=1+1", "-", "1e999", "-1", "0", "99999999999999999999999999999999", "1,5", "NaN",
            "null", "true", "{}", "[]", "{", "}", "[", "]", "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", "\\u0000", "\\uD800", "\\", ":", "2025-02-30", "0000-00-00", "9999-12-31",
            "orphan", "water", "K4T7X", " ", "%", "=", ">", "(", ")", "\u2028",
        }.Select(Encoding.UTF8.GetBytes),
        [0xFF], [0xC3], [0xED, 0xA0, 0x80], [0xFF, 0xFE], [.. Enumerable.Repeat((byte)'x', 3_000)],
    ];

    /// <summary>The file with one to four things done to it.</summary>
    public static byte[] Of(byte[] valid, Random random)
    {
        var bytes = valid.ToList();
        for (var left = random.Next(2) == 0 ? 1 : random.Next(1, 5); left > 0 && bytes.Count > 0; left--)
            Once(bytes, random);
        return [.. bytes];
    }

    private static void Once(List<byte> bytes, Random random)
    {
        var at = random.Next(bytes.Count);
        var length = Math.Min(bytes.Count - at, 1 << random.Next(10));
        switch (random.Next(12))
        {
            case 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                bytes.RemoveRange(at, length);
                break;
            case 2:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 3:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            case 4:
                SwapLines(bytes, random);
                break;
            case 5:
                bytes[at] = (byte)random.Next(256);
                break;
            case 6 or 7 or 8:
                ReplaceAWord(bytes, at, random);
                break;
            default:
                bytes.InsertRange(at, Pieces[random.Next(Pieces.Length)]);
                break;
        }
    }

    private static void ReplaceAWord(List<byte> bytes, int at, Random random)
    {
        var (from, to) = (at, at);
        while (from > 0 && IsOfAWord(bytes[from - 1]))
            from--;
        while (to < bytes.Count && IsOfAWord(bytes[to]))
            to++;
        bytes.RemoveRange(from, to - from);
        bytes.InsertRange(from, Pieces[random.Next(Pieces.Length)]);
    }

    private static bool IsOfAWord(byte b) => char.IsAsciiLetterOrDigit((char)b) || b is (byte)'.' or (byte)'-' or (byte)'_';

    private static void SwapLines(List<byte> bytes, Random random)
    {
        var lines = Encoding.Latin1.GetString([.. bytes]).Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        bytes.Clear();
        bytes.AddRange(Encoding.Latin1.GetBytes(string.Join('\n', lines)));
    }
}
