using Stockroom.Assessment.Neighbours;
using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Assessment.Vessels;

/// <summary>
/// Contents that make gas as they stand and so are never sealed: those of gas-makers.tsv, whatever is explosive or reacts with
/// itself by its contact families, and strong alpha emitters with any water.
/// </summary>
internal static class GasMakers
{
    private static readonly HashSet<string> StrongAlpha = new(StringComparer.Ordinal) { "Ra", "Po", "Ac", "Am", "Cm", "Cf", "Pu" };

    private static readonly Dictionary<string, string> Families = new(StringComparer.Ordinal)
    {
        ["explosive"] = "it is explosive",
        ["wetted-explosive"] = "it is explosive",
        ["organic-peroxide"] = "it decomposes by itself, with gas",
        ["self-reactive"] = "it decomposes by itself, with gas",
        ["hypochlorite"] = "it gives off oxygen and chlorine as it decomposes",
        ["azide"] = "it decomposes to nitrogen",
    };

    private static readonly Dictionary<string, bool> When = new(StringComparer.Ordinal) { ["always"] = false, ["damp"] = true };

    private static readonly Lazy<Dictionary<string, Row>> Rows = new(() => EmbeddedTables.Facts("gas-makers.tsv", "substance", "when", "from_percent", "because").Rows
        .ToDictionary(r => r.Text("substance"), r => new Row(r.OneOf("when", When), r.DecimalOrNull("from_percent") ?? 0, r.Text("because")), StringComparer.Ordinal));

    private sealed record Row(bool OnlyDamp, decimal FromPercent, string Because);

    /// <summary>Why the content must never be sealed; null where nothing is known against it.</summary>
    /// <param name="content">What is to be sealed.</param>
    /// <param name="damp">True where it may hold moisture that its name does not tell.</param>
    public static string? Reason(Content content, bool damp = false)
    {
        if (content.IsUnknown)
            return "what the content is, is not known: it is not sealed";
        damp |= content.WaterPercent > 0 && content.Parts.Count > 1;
        foreach (var part in content.Parts)
        {
            var name = part.Substance.Name;
            if (Rows.Value.TryGetValue(name, out var row) && (damp || !row.OnlyDamp) && part.Percent >= row.FromPercent)
                return $"{name}: {row.Because}";
            if (damp && IsStrongAlpha(part.Substance))
                return $"{name} with water makes gas by radiolysis";
        }

        var carried = ContactProfile.Of(content, []).Families.FirstOrDefault(f => Families.ContainsKey(f.Family.Key));
        return carried is null ? null : $"{content.Name}: {Families[carried.Family.Key]}";
    }

    /// <summary>True for a monomer.</summary>
    public static bool Polymerises(Content content) => ContactProfile.Of(content, []).Families.Any(f => f.Family.Key == "monomer");

    /// <summary>True for what breaks water up by its alpha rays.</summary>
    public static bool IsStrongAlpha(Substance substance) => substance.Formula is { } f && f.Atoms.Keys.Any(StrongAlpha.Contains);
}
