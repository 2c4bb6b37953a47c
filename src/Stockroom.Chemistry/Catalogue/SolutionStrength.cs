using System.Globalization;
using System.Text.RegularExpressions;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>A strength read from words such as "nitric acid 65%" or "sodium hydroxide 0.1 M".</summary>
internal sealed partial record SolutionStrength(string Solute, decimal Percent, decimal? MolesPerLitre)
{
    public static bool TryParse(string text, out SolutionStrength strength)
    {
        strength = new SolutionStrength("", 0, null);
        var match = Pattern().Match(text);
        if (!match.Success || !decimal.TryParse(match.Groups["value"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            return false;
        strength = match.Groups["unit"].Value == "%"
            ? new SolutionStrength(match.Groups["solute"].Value, value, null)
            : new SolutionStrength(match.Groups["solute"].Value, 0, value);
        return true;
    }

    [GeneratedRegex(@"^(?<solute>.+?)\s+(?<value>\d+(\.\d+)?)\s*(?<unit>%|M|mol/L)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Pattern();
}
