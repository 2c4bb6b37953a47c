using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>
/// What is known of a content at a temperature, with the source of each field. Null is unknown; the reason stands in
/// <see cref="Reasons"/> under the field's name.
/// </summary>
public sealed record SubstanceFacts
{
    private static readonly MolarMass Air = Quantities.MolarMass.FromGramsPerMole(28.96);

    public required string Name { get; init; }

    public required Temperature At { get; init; }

    public string? Formula { get; init; }

    public string? Cas { get; init; }

    public MolarMass? MolarMass { get; init; }

    public MatterState State { get; init; }

    public Temperature? Melting { get; init; }

    public Temperature? Boiling { get; init; }

    /// <summary>Where the solid's pressure reaches one atmosphere, for what has no boiling point there.</summary>
    public Temperature? Sublimation { get; init; }

    public Temperature? Flash { get; init; }

    /// <summary>
    /// Of the phase that it is kept in: a compound that is a gas and can be liquid at this temperature is the liquid under its own pressure, as
    /// its vapour pressure is; an element is in its standard state, as tables of the elements give it.
    /// </summary>
    public Density? Density { get; init; }

    /// <summary>True where the density is that of a liquefied gas.</summary>
    public bool IsDensityOfLiquefied { get; init; }

    /// <summary>Of a gas, at one atmosphere; null for anything else.</summary>
    public Density? GasDensity { get; init; }

    /// <summary>Of a gas that can be liquid at this temperature: its liquid under its own pressure. Null for anything else.</summary>
    public Density? LiquefiedDensity { get; init; }

    /// <summary>Of a solution: the sum over its volatile parts.</summary>
    public Pressure? VapourPressure { get; init; }

    /// <summary>How heavy the pure vapour is, air = 1.</summary>
    public Fraction? VapourDensity { get; init; }

    public Diffusivity? DiffusivityInAir { get; init; }

    public Fraction? LowerFlammableLimit { get; init; }

    /// <summary>The strictest for daily work.</summary>
    public ExposureLimit? ExposureLimit { get; init; }

    /// <summary>Source of each known field, by the field's name in JSON.</summary>
    public IReadOnlyDictionary<string, string> Sources { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Why a field is unknown, by the field's name in JSON.</summary>
    public IReadOnlyDictionary<string, string> Reasons { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    public static SubstanceFacts Of(Content content, Temperature t, PropertyFacts facts)
    {
        var book = new SourceBook();
        if (content.IsUnknown)
            return new SubstanceFacts { Name = content.Name, At = t, State = content.State, Reasons = book.WithReason("name", "an orphan: what it is, is not known") };
        var pure = content.Pure;
        var gas = Escaping(content, facts);
        var asGas = pure is not null && facts.StateAt(pure, t) == MatterState.Gas ? facts.Density(pure, t) : null;
        var asLiquid = asGas is null ? null : facts.LiquidDensity(pure!, t);
        var isLiquefied = asLiquid?.Value is not null && pure!.Element is null;
        return new SubstanceFacts
        {
            Name = content.Name,
            At = t,
            Formula = book.Identity("formula", pure?.Formula?.Text, content),
            Cas = book.Identity("cas", pure?.Cas?.Text, content),
            MolarMass = book.Identity("molar_mass_g_mol", pure?.MolarMass, content),
            State = pure is null ? content.State : facts.StateAt(pure, t),
            Melting = pure is null ? null : book.Take("melting_c", facts.MeltingPoint(pure)),
            Boiling = pure is null ? null : book.Take("boiling_c", facts.BoilingPoint(pure)),
            Sublimation = pure is not null && facts.BoilingPoint(pure).Value is null && facts.SublimationPoint(pure) is { Value: not null } sublimes ? book.Take("sublimation_c", sublimes) : null,
            Flash = pure is null ? null : book.Take("flash_c", facts.FlashPoint(pure)),
            Density = pure is null ? book.Identity("density_g_ml", content.Density, content) : book.Take("density_g_ml", isLiquefied ? asLiquid! : facts.Density(pure, t)),
            IsDensityOfLiquefied = isLiquefied,
            GasDensity = asGas is null ? null : book.Take("gas_density_g_ml", asGas),
            LiquefiedDensity = asLiquid is null ? null : book.Take("liquefied_density_g_ml", asLiquid),
            VapourPressure = book.Take("vapour_pressure_kpa", Total(content, t, facts)),
            VapourDensity = gas is not null && facts.MolarMass(gas) is { } m ? new Fraction(m / Air) : null,
            DiffusivityInAir = gas is null ? null : book.Take("diffusivity_in_air_cm2_s", facts.DiffusivityInAir(gas, t)),
            LowerFlammableLimit = gas is null ? null : book.Take("lower_flammable_limit", facts.LowerFlammableLimit(gas)),
            ExposureLimit = gas is null ? null : book.Limit(facts.StrictestLimit(gas)),
            Sources = book.Sources,
            Reasons = book.Reasons,
        };
    }

    // The substance that gives the vapour its name: the dissolved gas of an acid, the largest volatile part other than water.
    private static Substance? Escaping(Content content, PropertyFacts facts)
    {
        var part = content.Pure ?? content.Parts.Where(p => p.Substance.Name != "water").OrderByDescending(p => p.Percent).FirstOrDefault()?.Substance;
        return part?.DissolvedFormOf is { } gas ? facts.Catalogue[gas] : part;
    }

    private static Fact<Pressure> Total(Content content, Temperature t, PropertyFacts facts)
    {
        var vapours = Vapours.Over(content, t, facts);
        if (vapours.Count == 1)
            return vapours[0].Pressure;
        var known = vapours.Where(v => v.Pressure.IsKnown).ToList();
        if (known.Count == 0)
            return Fact<Pressure>.Missing("no part of it has a vapour pressure in the tables");
        var largest = known.MaxBy(v => v.Pressure.Value!.Value.Pascals)!.Pressure;
        return Fact<Pressure>.Of(new Pressure(known.Sum(v => v.Pressure.Value!.Value.Pascals)), largest.Spread, largest.Provenance!, largest.Note);
    }

    private sealed class SourceBook
    {
        public Dictionary<string, string> Sources { get; } = new(StringComparer.Ordinal);

        public Dictionary<string, string> Reasons { get; } = new(StringComparer.Ordinal);

        public T? Take<T>(string field, Fact<T> fact)
            where T : struct
        {
            if (fact.Value is null)
                Reasons[field] = fact.Reason!;
            else
                Sources[field] = fact.Note is null ? fact.Provenance!.ToString() : $"{fact.Provenance}; {fact.Note}";
            return fact.Value;
        }

        public T? Identity<T>(string field, T? value, Content content)
        {
            if (value is not null && content.Provenance is { } provenance)
                Sources[field] = provenance.ToString();
            return value;
        }

        public ExposureLimit? Limit(ExposureLimit? limit)
        {
            if (limit is null)
                Reasons["exposure_limit"] = "no workplace limit is in the tables";
            else
                Sources["exposure_limit"] = $"{limit.Name}, {limit.Provenance}";
            return limit;
        }

        public Dictionary<string, string> WithReason(string field, string reason)
        {
            Reasons[field] = reason;
            return Reasons;
        }
    }
}
