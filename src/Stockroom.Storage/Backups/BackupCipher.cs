using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Stockroom.Storage.Backups;

/// <summary>
/// A backup under a passphrase: AES-256-GCM (NIST SP 800-38D) under a key from PBKDF2-HMAC-SHA256 (RFC 8018). A first line in
/// plain text names both, the work factor, salt and nonce, and is itself authenticated; behind it stand tag and cipher text.
/// </summary>
internal static class BackupCipher
{
    /// <summary>600,000, as the OWASP Password Storage Cheat Sheet (2023) asks for PBKDF2-HMAC-SHA256.</summary>
    public const int Iterations = 600_000;

    public const int ShortestPassphrase = 8;

    // A file that asks for more would only keep the machine busy.
    private const int MostIterations = 20_000_000;
    private const int LongestHeader = 300;
    private const int SaltSize = 16;
    private const int KeySize = 32;
    private const int NonceSize = 12;
    private const int TagSize = 16;
    private const string Begin = "stock book backup 1, AES-256-GCM, PBKDF2-HMAC-SHA256";

    public static bool IsEncrypted(ReadOnlySpan<byte> file) => file.StartsWith(Encoding.ASCII.GetBytes(Begin));

    public static byte[] Encrypt(byte[] content, string passphrase)
    {
        if (passphrase.Length < ShortestPassphrase)
            throw new BookUnavailableException(BookFault.Passphrase, $"the passphrase has {passphrase.Length} characters; at least {ShortestPassphrase} are needed, and a sentence is better");
        if (passphrase.Any(IsCombining))
            throw new BookUnavailableException(BookFault.Passphrase, "the passphrase holds a combining accent (U+0300 to U+036F), which another keyboard would not type; use whole letters");
        var (salt, nonce) = (RandomNumberGenerator.GetBytes(SaltSize), RandomNumberGenerator.GetBytes(NonceSize));
        var header = Encoding.ASCII.GetBytes($"{Begin}, {Iterations}, {Convert.ToHexStringLower(salt)}, {Convert.ToHexStringLower(nonce)}\n");
        var (text, tag) = (new byte[content.Length], new byte[TagSize]);
        using var aes = new AesGcm(Key(passphrase, salt, Iterations), TagSize);
        aes.Encrypt(nonce, content, text, tag, header);
        return [.. header, .. tag, .. text];
    }

    /// <summary>The content of an encrypted backup.</summary>
    /// <exception cref="FormatException">The file was altered or the passphrase is another; the two cannot be told apart.</exception>
    public static byte[] Decrypt(byte[] file, string passphrase)
    {
        var end = file.AsSpan(0, Math.Min(file.Length, LongestHeader)).IndexOf((byte)'\n') + 1;
        var parts = Encoding.ASCII.GetString(file, 0, Math.Max(end - 1, 0)).Split(", ");
        if (parts.Length != 6 || file.Length < end + TagSize || !int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var iterations)
            || iterations is < 1 or > MostIterations || parts[4].Length != SaltSize * 2 || parts[5].Length != NonceSize * 2)
            throw new FormatException("its first line is not an encrypted backup's");
        var content = new byte[file.Length - end - TagSize];
        try
        {
            using var aes = new AesGcm(Key(passphrase, Convert.FromHexString(parts[4]), iterations), TagSize);
            aes.Decrypt(Convert.FromHexString(parts[5]), file.AsSpan(end + TagSize), file.AsSpan(end, TagSize), content, file.AsSpan(0, end));
            return content;
        }
        catch (CryptographicException e)
        {
            throw new FormatException($"the passphrase is another, or the file was altered{(passphrase.Any(IsCombining) ? "; as typed it holds combining accents, try it with whole letters" : "")}", e);
        }
    }

    // The same words must give the same key whichever keyboard typed their accents; without the tables of Unicode to compose
    // them, only letters that are whole already are taken.
    private static bool IsCombining(char c) => c is >= '\u0300' and <= '\u036F';

    private static byte[] Key(string passphrase, byte[] salt, int iterations) =>
        Rfc2898DeriveBytes.Pbkdf2(passphrase, salt, iterations, HashAlgorithmName.SHA256, KeySize);
}
