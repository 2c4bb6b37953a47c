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
    private readonly NameIndex _names;
    private readonly Dictionary<string, Content> _preparations;

    private readonly IReadOnlyList<(string Synonym, string Target)> _synonyms;

    internal SubstanceCatalogue(CatalogueTables tables)
        : this(tables.Substances, tables.Preparations, tables.Synonyms, tables.AtomicWeights)
    {
    }

    private SubstanceCatalogue(
        IReadOnlyList<Substance> substances, IReadOnlyList<Content> preparations, IReadOnlyList<(string Synonym, string Target)> synonyms, IReadOnlyDictionary<string, double> weights)
    {
        Substances = substances;
        Preparations = preparations;
        AtomicWeights = weights;
        _synonyms = synonyms;
        _byName = Substances.ToDictionary(s => s.Name, StringComparer.Ordinal);
        _preparations = Preparations.ToDictionary(p => p.Name, StringComparer.Ordinal);
        _names = new NameIndex(_byName.Keys.Concat(_preparations.Keys), synonyms, Substances);
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

    /// <summary>This catalogue with the keeper's own substances on top: one of a name that is here already replaces it, visibly by its source.</summary>
    public SubstanceCatalogue With(IEnumerable<OwnSubstance> own)
    {
        var mine = own.ToList();
        if (mine.Count == 0)
            return this;
        var names = mine.Select(o => o.Substance.Name).ToHashSet(StringComparer.Ordinal);
        return new SubstanceCatalogue(
            [.. mine.Select(o => o.Substance), .. Substances.Where(s => !names.Contains(s.Name))],
            [.. Preparations.Where(p => !names.Contains(p.Name))],
            [.. mine.SelectMany(o => o.Synonyms.Select(s => (s, o.Substance.Name))), .. _synonyms.Where(s => names.Contains(s.Target) || !names.Contains(s.Synonym))],
            AtomicWeights);
    }

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
        if (_names.TryFind(words, out var name, out var several))
            return Resolution.Found(ByPreferredName(name));
        if (several.Count > 0)
            return Several(words, several);
        if (SolutionStrength.TryParse(words, out var strength))
        {
            if (_names.TryFind(strength.Solute, out var solute, out several))
                return Solution(words, solute, strength);
            return several.Count > 0 ? Several(strength.Solute, several) : NotFound(strength.Solute);
        }

        return NotFound(words);
    }

    /// <summary>
    /// A substance by any of its names, as an ingredient: "hydrochloric acid" is the dissolved acid itself here.
    /// </summary>
    public Substance? ResolveSubstance(string text) =>
        _names.TryFind(text.Trim(), out var name, out _) ? _byName.GetValueOrDefault(name) : null;

    /// <summary>The forms in which the catalogue has an element, by its symbol: the plain one first, then powder, allotropes, other makes.</summary>
    public IReadOnlyList<Substance> FormsOf(string symbol) =>
        [.. Substances.Where(s => s.Element == symbol).OrderBy(s => !s.Name.All(char.IsAsciiLetter)).ThenBy(s => s.Name, StringComparer.Ordinal)];

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

    private static Resolution Several(string words, IReadOnlyList<string> several) =>
        Resolution.Miss($"'{words}' may be {string.Join(", ", several.SkipLast(1))} or {several[^1]}; name the one", several);

    private Resolution NotFound(string words)
    {
        var nearest = NearestNames.To(words, _names.Targets.Concat(AllNames));
        var offer = nearest.Count == 0
            ? "nothing is near it; look with 'stockroom facts', or book it as an orphan"
            : "nearest: " + string.Join(", ", nearest);
        return Resolution.Miss($"'{words}' is not in the catalogue; {offer}", nearest);
    }
}
