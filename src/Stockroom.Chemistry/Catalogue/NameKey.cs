using System.Text;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>Makes two spellings of one name equal: case, spaces, hyphens and subscript digits do not count.</summary>
public static class NameKey
{
    public static string Of(string name)
    {
        var key = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (c is >= '₀' and <= '₉')
                key.Append((char)('0' + (c - '₀')));
            else if (char.IsLetterOrDigit(c) || c is '(' or ')' or ',' or '.' or '%' or '>' or '<' or '+')
                key.Append(char.ToLowerInvariant(c));
        }

        return key.ToString();
    }
}
