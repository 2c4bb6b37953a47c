using System.Text;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>
/// Makes two spellings of one name equal: case, spaces, hyphens and subscript digits do not count; sulph and sulf, aluminum
/// and aluminium, cesium and caesium, a Greek letter and its name are the same.
/// </summary>
public static class NameKey
{
    private const string Kept = "(),.%><+";

    private static readonly (string Written, string Read)[] Spellings =
    [
        ("sulph", "sulf"),
        ("aluminum", "aluminium"),
        ("cesium", "caesium"),
        ("deionized", "deionised"),
        ("gray", "grey"),
    ];

    private static readonly Dictionary<char, string> Greek = new()
    {
        ['α'] = "alpha", ['β'] = "beta", ['γ'] = "gamma", ['δ'] = "delta", ['ε'] = "epsilon", ['ω'] = "omega", ['μ'] = "mu", ['µ'] = "mu",
    };

    public static string Of(string name)
    {
        var key = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            var lower = char.ToLowerInvariant(c);
            if (c is >= '₀' and <= '₉')
                key.Append((char)('0' + (c - '₀')));
            else if (Greek.TryGetValue(lower, out var letter))
                key.Append(letter);
            else if (c is '·' or '•')
                key.Append('.');
            else if (char.IsLetterOrDigit(c) || Kept.Contains(c, StringComparison.Ordinal))
                key.Append(lower);
        }

        foreach (var (written, read) in Spellings)
            key.Replace(written, read);
        return key.ToString();
    }
}
