using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>
/// A hundred grams of a recipe while its ingredients react: moles taken and given, gases lost, and what was said about it.
/// </summary>
internal sealed class Vessel
{
    private const decimal Traces = 0.0000001m;

    private readonly decimal _unnamed;
    private readonly SortedDictionary<string, (Substance Substance, decimal Grams)> _grams = new(StringComparer.Ordinal);

    public Vessel(Content content, SubstanceCatalogue catalogue)
    {
        Catalogue = catalogue;
        foreach (var part in content.Parts)
            Add(part.Substance, part.Percent);
        _unnamed = 100m - content.Parts.Sum(p => p.Percent);
    }

    public SubstanceCatalogue Catalogue { get; }

    public List<string> Notes { get; } = [];

    /// <summary>Pairs whose reaction was computed.</summary>
    public HashSet<(string, string)> Computed { get; } = [];

    /// <summary>Heat given off, in kilojoules for 100 g, as far as it is known.</summary>
    public decimal Kilojoules { get; set; }

    public IReadOnlyList<Substance> Substances => [.. _grams.Values.Select(g => g.Substance)];

    public decimal GramsOf(Substance substance) => _grams.TryGetValue(substance.Name, out var at) ? at.Grams : 0m;

    public decimal MolesOf(Substance substance) => GramsOf(substance) / MolarMass(substance);

    public static decimal MolarMass(Substance substance) => (decimal)substance.MolarMass!.Value.GramsPerMole;

    public void Take(Substance substance, decimal moles) => Add(substance, -moles * MolarMass(substance));

    public void Give(Substance substance, decimal moles) => Add(substance, moles * MolarMass(substance));

    /// <summary>What is left, in per cent of what did not leave as gas; more than traces only.</summary>
    public List<Part> Left()
    {
        var whole = _grams.Values.Sum(g => g.Grams) + _unnamed;
        return [.. _grams.Values.Select(g => new Part(g.Substance, Math.Round(g.Grams * 100m / whole, 4))).Where(p => p.Percent > 0)];
    }

    private void Add(Substance substance, decimal grams)
    {
        var now = GramsOf(substance) + grams;
        if (now <= Traces)
            _grams.Remove(substance.Name);
        else
            _grams[substance.Name] = (substance, now);
    }
}
