using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Vessels;

/// <summary>The names under which the trade knows a material of the resistance table.</summary>
public static class MaterialNames
{
    private static readonly Dictionary<string, string> Synonyms = new(StringComparer.OrdinalIgnoreCase)
    {
        ["glass"] = "borosilicate glass",
        ["borosilicate"] = "borosilicate glass",
        ["borosilicate 3.3"] = "borosilicate glass",
        ["soda-lime"] = "soda-lime glass",
        ["soda lime glass"] = "soda-lime glass",
        ["silica"] = "fused silica",
        ["fused quartz"] = "fused silica",
        ["quartz glass"] = "fused silica",
        ["low-density polyethylene"] = "LDPE",
        ["PE-LD"] = "LDPE",
        ["high-density polyethylene"] = "HDPE",
        ["PE-HD"] = "HDPE",
        ["polypropylene"] = "PP",
        ["polytetrafluoroethylene"] = "PTFE",
        ["perfluoroalkoxy"] = "PFA",
        ["PVC-U"] = "PVC",
        ["rigid PVC"] = "PVC",
        ["polyvinyl chloride"] = "PVC",
        ["fluoroelastomer"] = "FKM",
        ["fluororubber"] = "FKM",
        ["FPM"] = "FKM",
        ["rubber"] = "natural rubber",
        ["silicone"] = "silicone rubber",
        ["iron"] = "carbon steel",
        ["mild steel"] = "carbon steel",
        ["SS316"] = "stainless steel",
        ["316"] = "stainless steel",
        ["stainless steel 316"] = "stainless steel",
        ["316 stainless steel"] = "stainless steel",
        ["aluminum"] = "aluminium",
        ["grease"] = "joint grease",
        ["silicone grease"] = "joint grease",
    };

    /// <summary>The name in the tables; the words themselves where nothing is known under them.</summary>
    public static string Of(string words, IReadOnlyList<string> known)
    {
        var plain = words.Trim().Replace('_', ' ');
        var itself = known.FirstOrDefault(k => string.Equals(k, plain, StringComparison.OrdinalIgnoreCase));
        if (itself is not null)
            return itself;
        return Synonyms.GetValueOrDefault(plain) ?? Synonyms.GetValueOrDefault(plain.Replace(' ', '-')) ?? plain;
    }

    /// <summary>Names that a mistyped one could mean.</summary>
    public static IReadOnlyList<string> Nearest(string words, IReadOnlyList<string> known) =>
        NearestNames.To(words, known.Concat(Synonyms.Keys));
}
