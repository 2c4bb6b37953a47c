using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Vessels;

/// <summary>
/// Contents that make gas as they stand and so are never sealed. Source: common practice; Bretherick's Handbook of Reactive
/// Chemical Hazards, entries of the substances (from memory).
/// </summary>
internal static class GasMakers
{
    private static readonly Dictionary<string, string> Alone = new(StringComparer.Ordinal)
    {
        ["hydrogen peroxide"] = "it gives off oxygen as it decomposes",
        ["sodium hypochlorite"] = "it gives off oxygen and chlorine as it decomposes",
        ["calcium hypochlorite"] = "it gives off oxygen and chlorine as it decomposes",
        ["lithium hypochlorite"] = "it gives off oxygen and chlorine as it decomposes",
        ["nitric acid"] = "it gives off oxygen and nitrogen dioxide in light and warmth",
        ["peracetic acid"] = "it gives off oxygen as it decomposes",
        ["formic acid"] = "it gives off carbon monoxide as it stands",
        ["sodium percarbonate"] = "it gives off oxygen when damp",
        ["ammonium carbonate"] = "it gives off ammonia and carbon dioxide",
        ["sodium azide"] = "it gives off nitrogen and hydrazoic acid when damp or sour",
        ["hydroxylamine"] = "it decomposes to gas, violently when warm",
    };

    private static readonly HashSet<string> GasWithWater = new(StringComparer.Ordinal)
    {
        "sodium", "potassium", "lithium", "caesium", "rubidium", "calcium", "barium", "strontium", "sodium hydride", "lithium hydride", "calcium hydride",
        "lithium aluminium hydride", "sodium borohydride", "calcium carbide", "sodium-potassium alloy", "aluminium phosphide", "calcium phosphide", "zinc phosphide",
    };

    private static readonly HashSet<string> StrongAlpha = new(StringComparer.Ordinal) { "Ra", "Po", "Ac", "Am", "Cm", "Cf", "Pu" };

    /// <summary>Why the content must never be sealed; null where nothing is known against it.</summary>
    public static string? Reason(Content content)
    {
        if (content.IsUnknown)
            return "what the content is, is not known: it is not sealed";
        var damp = content.WaterPercent > 0;
        foreach (var part in content.Parts)
        {
            if (Alone.TryGetValue(part.Substance.Name, out var why))
                return $"{part.Substance.Name}: {why}";
            if (damp && GasWithWater.Contains(part.Substance.Name))
                return $"{part.Substance.Name} with water gives off gas";
            if (damp && part.Substance.Formula is { } f && StrongAlpha.Any(f.Contains))
                return $"{part.Substance.Name} with water makes gas by radiolysis";
        }

        return null;
    }
}
