using Stockroom.Chemistry.Hazards.Classes;

namespace Stockroom.Chemistry.Hazards;

/// <summary>The one list of hazard classes, in the order in which a label names them; skin stands before eye, which looks at it.</summary>
public static class HazardClasses
{
    public static IReadOnlyList<HazardClass> All { get; } =
    [
        new Explosives(),
        new FlammableGases(),
        new Aerosols(),
        new ChemicalsUnderPressure(),
        new OxidisingGases(),
        new GasesUnderPressure(),
        new FlammableLiquids(),
        new FlammableSolids(),
        new SelfReactives(),
        new PyrophoricLiquids(),
        new PyrophoricSolids(),
        new SelfHeating(),
        new WaterReactives(),
        new OxidisingLiquids(),
        new OxidisingSolids(),
        new OrganicPeroxides(),
        new CorrosiveToMetals(),
        new DesensitisedExplosives(),
        new AcuteToxicity(),
        new SkinCorrosion(),
        new EyeDamage(),
        new RespiratorySensitisation(),
        new SkinSensitisation(),
        new Mutagenicity(),
        new Carcinogenicity(),
        new ReproductiveToxicity(),
        new SingleExposure(),
        new RepeatedExposure(),
        new AspirationHazard(),
        new AquaticAcute(),
        new AquaticChronic(),
        new OzoneLayer(),
        new EndocrineHuman(),
        new EndocrineEnvironment(),
        new PersistentBioaccumulative(),
        new PersistentMobile(),
    ];

    private static readonly Dictionary<string, (int Class, int Severity)> Order = All
        .SelectMany((hazard, i) => hazard.Categories.Select((category, j) => (category, i, j)))
        .ToDictionary(o => o.category, o => (o.i, o.j), StringComparer.Ordinal);

    /// <summary>The class that has a category; null where none has.</summary>
    public static HazardClass? Of(string category) => Order.TryGetValue(category, out var at) ? All[at.Class] : null;

    /// <summary>The classes of which some ingredient has a category or a limit.</summary>
    internal static HashSet<HazardClass> ConcernedBy(Mixture mixture)
    {
        var concerned = new HashSet<HazardClass>();
        foreach (var ingredient in mixture.Ingredients)
        {
            foreach (var hazard in ingredient.Profile.Index.Concerned)
                concerned.Add(hazard);
        }

        return concerned;
    }

    /// <summary>Sorts categories by class, then by severity.</summary>
    internal static (int Class, int Severity) OrderOf(string category) => Order.TryGetValue(category, out var at) ? at : (int.MaxValue, 0);
}
