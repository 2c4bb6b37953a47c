using System.Globalization;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>A CAS Registry Number, such as 7726-95-6, with its check digit verified.</summary>
public readonly record struct CasNumber
{
    private CasNumber(string text) => Text = text;

    public string Text { get; }

    /// <summary>Reads a number of two to seven digits, two digits and the check digit.</summary>
    /// <param name="text">Such as "7726-95-6".</param>
    /// <param name="cas">The number, where the text is one.</param>
    /// <param name="problem">What is wrong, where it is not.</param>
    public static bool TryParse(string text, out CasNumber cas, out string problem)
    {
        cas = default;
        var parts = text.Trim().Split('-');
        if (parts.Length != 3 || parts[0].Length is < 2 or > 7 || parts[1].Length != 2 || parts[2].Length != 1
            || !parts.All(p => p.All(char.IsAsciiDigit)))
        {
            problem = $"'{text}' is not written as a CAS number, for example 7726-95-6";
            return false;
        }

        var check = CheckDigit(parts[0] + parts[1]);
        if (check != parts[2][0] - '0')
        {
            problem = $"'{text}' has the wrong check digit; by its other digits it would end in {check}";
            return false;
        }

        cas = new CasNumber(text.Trim());
        problem = "";
        return true;
    }

    public override string ToString() => Text;

    // CAS rule: digits counted from the right, each times its place, summed, modulo ten.
    private static int CheckDigit(string digits)
    {
        var sum = 0;
        for (var i = 0; i < digits.Length; i++)
            sum += (i + 1) * int.Parse(digits.AsSpan(digits.Length - 1 - i, 1), CultureInfo.InvariantCulture);
        return sum % 10;
    }
}
