using System.Globalization;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>
/// All substances and stocked preparations, found by name, synonym, formula or CAS number. Immutable.
/// </summary>
public sealed class SubstanceCatalogue
{
    private static readonly Lazy<SubstanceCatalogue> Embedded = new(() => new SubstanceCatalogue(CatalogueTables.ReadEmbedded()));

    private readonly Dictionary<string, Substance> _byName;
    private readonly Dictionary<string, string> _names;
    private readonly Dictionary<string, Content> _preparations;

    internal SubstanceCatalogue(CatalogueTables tables)
    {
        Substances = tables.Substances;
        Preparations = tables.Preparations;
        AtomicWeights = tables.AtomicWeights;
        _byName = Substances.ToDictionary(s => s.Name, StringComparer.Ordinal);
        _preparations = Preparations.ToDictionary(p => p.Name, StringComparer.Ordinal);
        _names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var name in _byName.Keys.Concat(_preparations.Keys))
            _names.TryAdd(NameKey.Of(name), name);
        foreach (var (synonym, target) in tables.Synonyms)
            _names.TryAdd(NameKey.Of(synonym), target);
        AddFormulasAndNumbers();
    }

    /// <summary>The catalogue that comes with the program.</summary>
    public static SubstanceCatalogue Default => Embedded.Value;

    public IReadOnlyList<Substance> Substances { get; }

    public IReadOnlyList<Content> Preparations { get; }

    /// <summary>Abridged standard atomic weights in g/mol by symbol.</summary>
    public IReadOnlyDictionary<string, double> AtomicWeights { get; }

    /// <summary>A substance by its preferred name.</summary>
    /// <exception cref="KeyNotFoundException">No substance has that name.</exception>
    public Substance this[string name] => _byName[name];

    public Substance? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>All names that lead somewhere, for completions and for offering the nearest.</summary>
    public IEnumerable<string> AllNames => _byName.Keys.Concat(_preparations.Keys);

    /// <summary>
    /// What a keeper's words mean: a substance, a stocked preparation, or a solution in water given by its strength
    /// ("nitric acid 65%", "sodium hydroxide 1 M").
    /// </summary>
    public Resolution Resolve(string text)
    {
        var words = text.Trim();
        if (words.Length == 0)
            return Resolution.Miss("a content needs a name", []);
        if (_names.TryGetValue(NameKey.Of(words), out var name))
            return Resolution.Found(ByPreferredName(name));
        if (SolutionStrength.TryParse(words, out var strength))
        {
            if (_names.TryGetValue(NameKey.Of(strength.Solute), out var solute))
                return Solution(words, solute, strength);
            return NotFound(strength.Solute);
        }

        return NotFound(words);
    }

    /// <summary>
    /// A substance by any of its names, as an ingredient: "hydrochloric acid" is the dissolved acid itself here.
    /// </summary>
    public Substance? ResolveSubstance(string text)
    {
        if (!_names.TryGetValue(NameKey.Of(text), out var name))
            return null;
        return _byName.GetValueOrDefault(name);
    }

    private Content ByPreferredName(string name)
    {
        if (_preparations.TryGetValue(name, out var preparation))
            return preparation;
        var substance = _byName[name];
        return substance.DissolvedFormOf is null ? Content.Of(substance) : StrongestOf(substance);
    }

    // A dissolved acid or gas named without a strength is taken as the strongest that is stocked: the worse case.
    private Content StrongestOf(Substance dissolved)
    {
        var strongest = Preparations
            .Where(p => p.Parts.Count == 2 && p.PercentOf(dissolved.Name) > 0 && p.WaterPercent > 0)
            .MaxBy(p => p.PercentOf(dissolved.Name));
        return strongest is null
            ? Content.Of(dissolved)
            : strongest with { Notes = [$"strength not given; taken as {strongest.Name}, the strongest that is stocked"] };
    }

    private Resolution Solution(string words, string solute, SolutionStrength strength)
    {
        if (!_byName.TryGetValue(solute, out var substance))
            return Resolution.Miss($"'{words}': {solute} is itself a preparation; give the strength of one substance", []);
        substance = DissolvedForm(substance);
        var percent = strength.Percent;
        var notes = new List<string>();
        Density? density = null;
        if (strength.MolesPerLitre is { } molarity)
        {
            if (substance.MolarMass is not { } molarMass)
                return Resolution.Miss($"'{words}': the molar mass of {solute} is not known; give per cent by mass", []);
            (percent, density) = SolutionDensity.PercentOfMolar(this, substance, molarity, molarMass, notes);
        }

        if (percent is <= 0 or > 100)
            return Resolution.Miss($"'{words}' would be {percent:0.##} % by mass; a strength lies above 0 and up to 100 %", []);
        if (percent == 100)
            return Resolution.Found(Content.Of(substance));
        return Resolution.Found(new Content
        {
            Name = words,
            State = MatterState.Liquid,
            Parts = [new Part(substance, percent), new Part(this["water"], 100m - percent)],
            Density = density ?? SolutionDensity.Interpolated(this, substance, percent),
            Notes = notes,
            Provenance = substance.Provenance,
        });
    }

    private Substance DissolvedForm(Substance substance) =>
        Substances.FirstOrDefault(s => s.DissolvedFormOf == substance.Name) ?? substance;

    private Resolution NotFound(string words)
    {
        var nearest = NearestNames.To(words, _names.Values.Distinct().Concat(AllNames));
        var offer = nearest.Count == 0
            ? "nothing is near it; look with 'stockroom facts', or book it as an orphan"
            : "nearest: " + string.Join(", ", nearest);
        return Resolution.Miss($"'{words}' is not in the catalogue; {offer}", nearest);
    }

    private void AddFormulasAndNumbers()
    {
        foreach (var substance in Substances)
        {
            if (substance.Cas is { } cas)
                _names.TryAdd(NameKey.Of(cas.Text), substance.Name);
        }

        // A formula leads to a substance where only one has it; isomers and forms must be named.
        foreach (var group in Substances.Where(s => s.Formula is not null && s.DissolvedFormOf is null).GroupBy(s => s.Formula!.Text, StringComparer.Ordinal))
        {
            if (group.Count() == 1)
                _names.TryAdd(NameKey.Of(group.Key), group.Single().Name);
        }
    }
}
