namespace Stockroom.Book.Identity;

/// <summary>
/// One check character over digits and capital letters by the hybrid system MOD 37,36 of ISO/IEC 7064:2003.
/// It catches every single wrong character.
/// </summary>
public static class CheckCharacter
{
    private const string Values = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const int Modulus = 36;

    /// <summary>The check character that belongs behind <paramref name="text"/>.</summary>
    /// <exception cref="ArgumentException">A character is neither a digit nor a capital letter A to Z.</exception>
    public static char For(string text)
    {
        var product = Modulus;
        foreach (var c in text)
            product = Next(product, ValueOf(c));
        return Values[(Modulus + 1 - product) % Modulus];
    }

    /// <summary>True if the last character of <paramref name="text"/> is the right check character for the rest.</summary>
    public static bool Holds(string text) => text.Length > 1 && For(text[..^1]) == text[^1];

    private static int Next(int product, int value)
    {
        var sum = (product + value) % Modulus;
        return (sum == 0 ? Modulus : sum) * 2 % (Modulus + 1);
    }

    private static int ValueOf(char c)
    {
        var value = Values.IndexOf(c, StringComparison.Ordinal);
        return value >= 0 ? value : throw new ArgumentException($"'{c}' is neither a digit nor a capital letter", nameof(c));
    }
}
