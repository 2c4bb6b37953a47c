using System.Text.RegularExpressions;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>Other ways to say a name that follow a rule and so need no row: cupric for copper(II), bicarbonate for hydrogencarbonate.</summary>
internal static partial class NameRules
{
    private static readonly (string Old, string New)[] Beginnings =
    [
        ("cuprous ", "copper(I) "), ("cupric ", "copper(II) "), ("ferrous ", "iron(II) "), ("ferric ", "iron(III) "),
        ("stannous ", "tin(II) "), ("stannic ", "tin(IV) "), ("plumbous ", "lead(II) "), ("plumbic ", "lead(IV) "),
        ("mercurous ", "mercury(I) "), ("mercuric ", "mercury(II) "), ("cobaltous ", "cobalt(II) "), ("cobaltic ", "cobalt(III) "),
        ("nickelous ", "nickel(II) "), ("manganous ", "manganese(II) "), ("manganic ", "manganese(III) "),
        ("chromous ", "chromium(II) "), ("chromic ", "chromium(III) "), ("cerous ", "cerium(III) "), ("ceric ", "cerium(IV) "),
        ("aurous ", "gold(I) "), ("auric ", "gold(III) "), ("thallous ", "thallium(I) "), ("thallic ", "thallium(III) "),
        ("arsenious ", "arsenic(III) "), ("titanous ", "titanium(III) "), ("argentous ", "silver "),
    ];

    private static readonly (string Old, string New)[] Words =
    [
        ("bicarbonate", "hydrogencarbonate"), ("bisulfate", "hydrogensulfate"), ("bisulphate", "hydrogensulfate"),
        ("bisulfite", "hydrogensulfite"), ("bisulphite", "hydrogensulfite"), ("bifluoride", "hydrogen difluoride"),
        ("hydrosulfide", "hydrogensulfide"), ("peroxodisulfate", "persulfate"), ("peroxydisulfate", "persulfate"),
        ("disulfite", "metabisulfite"), ("pyrosulfite", "metabisulfite"), ("hydrosulfite", "dithionite"),
        ("hexacyanoferrate(III)", "ferricyanide"), ("hexacyanoferrate(II)", "ferrocyanide"),
        ("chlorate(I)", "hypochlorite"), ("chlorate(V)", "chlorate"), ("chlorate(VII)", "perchlorate"), ("manganate(VII)", "permanganate"),
        ("chromate(VI)", "chromate"), ("dichromate(VI)", "dichromate"), ("ethanoate", "acetate"),
        ("methanoate", "formate"), ("tetrahydridoborate", "borohydride"), ("tetrahydroborate", "borohydride"),
    ];

    private static readonly string[] Endings = [" metal", " gas", " (gas)", " (solid)", " solid", " (dry)", " (liquid)", " crystals", " (massive)", " (pure)", " (cylinder)", " pieces", " piece", " lump", " foil", " wire"];

    /// <summary>The words themselves, then what they say by the rules.</summary>
    public static IEnumerable<string> Readings(string words)
    {
        yield return words;
        var rewritten = words;
        foreach (var (old, now) in Beginnings)
        {
            if (rewritten.StartsWith(old, StringComparison.OrdinalIgnoreCase))
                rewritten = now + rewritten[old.Length..];
        }

        foreach (var (old, now) in Words)
            rewritten = rewritten.Replace(old, now, StringComparison.OrdinalIgnoreCase);
        if (rewritten != words)
            yield return rewritten;
        if (rewritten.StartsWith("anhydrous ", StringComparison.OrdinalIgnoreCase))
            yield return rewritten["anhydrous ".Length..] + " (anhydrous)";
        foreach (var ending in Endings)
        {
            if (rewritten.EndsWith(ending, StringComparison.OrdinalIgnoreCase) && rewritten.Length > ending.Length + 1)
                yield return rewritten[..^ending.Length];
        }
    }

    public static bool SaysHydrate(string words) => Hydrate().IsMatch(words);

    public static bool SaysOxidationNumber(string words) => OxidationNumber().IsMatch(words);

    public static string WithoutHydrate(string words) => Hydrate().Replace(words, "");

    public static string WithoutOxidationNumber(string words) => OxidationNumber().Replace(words, "");

    [GeneratedRegex(@"\s*(\((anhydrous|dry)\)|\banhydrous\b|\b(hemi|mono|sesqui|di|tri|tetra|penta|hexa|hepta|octa|nona|deca|dodeca)?hydrate\b|\b\d+-hydrate\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Hydrate();

    [GeneratedRegex(@"\((I|II|III|IV|V|VI|VII|VIII)(,(I|II|III|IV))?\)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex OxidationNumber();
}
