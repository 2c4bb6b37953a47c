using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// Everything the tables say about how substances behave, read once when first asked for. Immutable. A value that is not
/// known comes back with the reason and never as a number.
/// </summary>
public sealed class PropertyFacts
{
    private static readonly Lazy<PropertyFacts> Embedded = new(() => new PropertyFacts(SubstanceCatalogue.Default));

    private readonly Lazy<PropertyTable> _properties;
    private readonly Lazy<SaturationPressure> _saturation;
    private readonly Lazy<Densities> _densities;
    private readonly Lazy<DiffusivityTable> _diffusivities;
    private readonly Lazy<SolutionVapourTable> _solutions;
    private readonly Lazy<HenryTable> _henry;
    private readonly Lazy<IsotopeTable> _isotopes;
    private readonly Lazy<ExposureLimitTable> _limits;
    private readonly Lazy<PermeabilityTable> _permeabilities;
    private readonly Lazy<WallDiffusivityTable> _wallDiffusivities;
    private readonly Lazy<CoverTransportTable> _covers;
    private readonly Lazy<DecompositionTable> _decompositions;
    private readonly Lazy<MaterialResistanceTable> _resistances;
    private readonly Lazy<SealingTables> _sealing;
    private readonly Lazy<FreezingTable> _freezing;
    private readonly Lazy<StrengthLimitTable> _strengthLimits;

    private readonly PropertyMemo<Fact<Pressure>> _pressures;
    private readonly PropertyMemo<Fact<Diffusivity>> _diffusions;
    private readonly PropertyMemo<Fact<HenryConstant>> _dissolving;
    private readonly PropertyMemo<Fact<Density>> _dense;
    private readonly PropertyMemo<MatterState> _states;

    private PropertyFacts(SubstanceCatalogue catalogue)
    {
        Catalogue = catalogue;
        _pressures = new((s, t) => _saturation!.Value.Of(s, t));
        _diffusions = new((s, t) => _diffusivities!.Value.InAir(s, t));
        _dissolving = new((s, t) => _henry!.Value.At(s, t));
        _dense = new(ComputeDensity);
        _states = new(ComputeState);
        _properties = new(() => PropertyTable.Read(catalogue));
        _saturation = new(() => new SaturationPressure(VapourPressureTable.Read(catalogue), _properties.Value));
        _densities = new(() => new Densities(LiquidDensityTable.Read(catalogue), _properties.Value));
        _diffusivities = new(() => DiffusivityTable.Read(catalogue));
        _solutions = new(() => SolutionVapourTable.Read(catalogue));
        _henry = new(() => HenryTable.Read(catalogue));
        _isotopes = new(() => IsotopeTable.Read(catalogue));
        _limits = new(() => ExposureLimitTable.Read(catalogue));
        _permeabilities = new(() => PermeabilityTable.Read(catalogue));
        _wallDiffusivities = new(() => WallDiffusivityTable.Read(catalogue));
        _covers = new(() => CoverTransportTable.Read(catalogue));
        _decompositions = new(() => DecompositionTable.Read(catalogue));
        _resistances = new(() => MaterialResistanceTable.Read(catalogue));
        _sealing = new(() => SealingTables.Read(catalogue));
        _freezing = new(() => FreezingTable.Read(catalogue));
        _strengthLimits = new(() => StrengthLimitTable.Read(catalogue));
    }

    /// <summary>The facts that come with the program.</summary>
    public static PropertyFacts Default => Embedded.Value;

    public SubstanceCatalogue Catalogue { get; }

    /// <summary>Vapour pressure over the pure solid or liquid.</summary>
    public Fact<Pressure> VapourPressure(Substance substance, Temperature t) => _pressures.Of(substance, t);

    public Fact<Density> LiquidDensity(Substance substance, Temperature t) => _densities.Value.Liquid(substance, t);

    public Fact<Density> SolidDensity(Substance substance) => _densities.Value.Solid(substance, GrowthOnFreezing(substance));

    /// <summary>
    /// What to reckon room with: the density in its state, and of a solid without one its liquid's at the melting point, which most
    /// solids exceed. Null where neither is known.
    /// </summary>
    public Density? RoomDensity(Substance substance, Temperature t) => Density(substance, t).Value
        ?? (StateAt(substance, t) == MatterState.Solid && MeltingPoint(substance).Value is { } melting ? LiquidDensity(substance, melting).Value : null);

    /// <summary>Density in the state that the substance has at the temperature and one atmosphere.</summary>
    public Fact<Density> Density(Substance substance, Temperature t) => _dense.Of(substance, t);

    private Fact<Density> ComputeDensity(Substance substance, Temperature t) => StateAt(substance, t) switch
    {
        MatterState.Gas => Densities.Gas(substance, t),
        MatterState.Liquid => LiquidDensity(substance, t),
        _ => SolidDensity(substance),
    };

    /// <summary>Solid, liquid or gas at one atmosphere, by melting and boiling point; else the state at room temperature.</summary>
    public MatterState StateAt(Substance substance, Temperature t) => _states.Of(substance, t);

    private MatterState ComputeState(Substance substance, Temperature t)
    {
        var melting = Value(substance, PropertyKind.MeltingPoint);
        var boiling = Value(substance, PropertyKind.BoilingPoint);
        if (Value(substance, PropertyKind.SublimationPoint) is { } sublimation && boiling is null)
            return t.Kelvin >= sublimation ? MatterState.Gas : MatterState.Solid;
        if (boiling is { } b && t.Kelvin >= b)
            return MatterState.Gas;
        if (melting is { } m && t.Kelvin < m)
            return MatterState.Solid;
        // A solid above its melting point is liquid also where no boiling point is listed.
        return melting is not null && (boiling is not null || substance.State == MatterState.Solid) ? MatterState.Liquid : substance.State;
    }

    /// <summary>Of the formula, else that stated for the vapour of a mixture such as turpentine; null where neither is known.</summary>
    public MolarMass? MolarMass(Substance substance) =>
        substance.MolarMass ?? (Value(substance, PropertyKind.VapourMolarMass) is { } m ? new MolarMass(m) : null);

    public Fact<Diffusivity> DiffusivityInAir(Substance substance, Temperature t) => _diffusions.Of(substance, t);

    public Fact<HenryConstant> Henry(Substance substance, Temperature t) => _dissolving.Of(substance, t);

    /// <summary>Null where the tables do not list the solution; the caller then takes Henry's or Raoult's law.</summary>
    public Fact<Pressure>? SolutionPressure(Substance solute, Substance component, Fraction strength, Temperature t) =>
        _solutions.Value.Find(solute, component, strength, t, VapourPressure);

    public Fact<Temperature> MeltingPoint(Substance substance) => TemperatureOf(substance, PropertyKind.MeltingPoint, "melting point");

    /// <summary>Null where none is published for the preparation.</summary>
    public StrengthLimit? LeastStrength(Content content) => _strengthLimits.Value.Find(content.Name);

    /// <summary>When a solution freezes, crystallises or clouds on cooling; null where that is not known.</summary>
    public CoolingEvent? Freezing(Content solution) => _freezing.Value.Find(solution);

    public Fact<Temperature> BoilingPoint(Substance substance) => TemperatureOf(substance, PropertyKind.BoilingPoint, "boiling point");

    public Fact<Temperature> SublimationPoint(Substance substance) => TemperatureOf(substance, PropertyKind.SublimationPoint, "sublimation point");

    public Fact<Temperature> FlashPoint(Substance substance) => TemperatureOf(substance, PropertyKind.FlashPoint, "flash point");

    public Fact<Temperature> CriticalTemperature(Substance substance) => TemperatureOf(substance, PropertyKind.CriticalTemperature, "critical temperature");

    public Fact<Pressure> CriticalPressure(Substance substance) =>
        _properties.Value.Find(substance, PropertyKind.CriticalPressure) is { } e
            ? Fact<Pressure>.Of(new Pressure(e.Value), e.Spread, e.Provenance)
            : Fact<Pressure>.Missing($"no critical pressure of {substance.Name} is in the tables");

    public Fact<Fraction> LowerFlammableLimit(Substance substance) =>
        _properties.Value.Find(substance, PropertyKind.LowerFlammableLimit) is { } e
            ? Fact<Fraction>.Of(new Fraction(e.Value), e.Spread, e.Provenance)
            : Fact<Fraction>.Missing($"no lower flammable limit of {substance.Name} is in the tables");

    /// <summary>What every source says of a substance's single values, the preferred reading of each first.</summary>
    public IReadOnlyList<PropertyReading> Readings(Substance substance) => _properties.Value.Readings(substance);

    /// <summary>The readings that differ from the preferred ones, for showing beside them.</summary>
    public IReadOnlyList<PropertyReading> OtherReadings(Substance substance) => [.. Readings(substance).Where(r => !r.IsPreferred)];

    public IReadOnlyList<ExposureLimit> ExposureLimits(Substance substance) => _limits.Value.Of(substance);

    public ExposureLimit? StrictestLimit(Substance substance) => _limits.Value.Strictest(substance);

    public Nuclide? Nuclide(string name) => _isotopes.Value.Find(name);

    public IReadOnlyList<NuclideShare> Nuclides(Substance substance) => _isotopes.Value.In(substance);

    /// <summary>A nuclide and everything that its decay leads to.</summary>
    public DecayChain DecayChain(Nuclide parent) => _isotopes.Value.ChainOf(parent);

    /// <summary>True for a mineral as it came from the ground, which holds every daughter of its uranium or thorium.</summary>
    public bool IsOre(Substance substance) => _isotopes.Value.IsOre(substance);

    /// <summary>What a wall material lets through of a substance; empty where nothing is listed.</summary>
    public IReadOnlyList<WallPermeability> Permeability(string material, Substance substance) => _permeabilities.Value.Find(material, substance);

    /// <summary>How fast a substance diffuses in a wall material, by its own row or, for no gas, that of the material; null where neither is listed.</summary>
    public WallDiffusivity? DiffusivityInWall(string material, Substance substance) => _wallDiffusivities.Value.Find(material, substance);

    public CoverTransport? ThroughCover(Substance substance, string cover) => _covers.Value.Find(substance, cover);

    public DecompositionLaw? Decomposition(Substance substance) => _decompositions.Value.Find(substance);

    /// <summary>How materials stand a substance, at every listed strength; empty where nothing is listed.</summary>
    public IReadOnlyList<MaterialResistance> Resistances(Substance substance, string material) => _resistances.Value.Find(substance, material);

    /// <summary>How much a substance swells as it freezes; null where it is not known to.</summary>
    public FreezingGrowth? GrowthOnFreezing(Substance substance) => _sealing.Value.Growth(substance);

    /// <summary>Filling ratios listed for a liquefied gas, by rising test pressure; empty where none is.</summary>
    public IReadOnlyList<ListedFillingRatio> ListedFillingRatios(Substance substance) => _sealing.Value.Ratios(substance);

    /// <summary>Materials that material-resistance.tsv rates.</summary>
    public IReadOnlyList<string> RatedMaterials => _resistances.Value.Materials;

    private double? Value(Substance substance, PropertyKind kind) => _properties.Value.Find(substance, kind)?.Value;

    private Fact<Temperature> TemperatureOf(Substance substance, PropertyKind kind, string name) =>
        _properties.Value.Find(substance, kind) is { } e
            ? Fact<Temperature>.Of(new Temperature(e.Value), e.Spread, e.Provenance)
            : Fact<Temperature>.Missing($"no {name} of {substance.Name} is in the tables");
}
