using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Properties;

/// <summary>A radioactive nuclide.</summary>
public sealed record Nuclide(string Name, string Element, Span HalfLife, MolarMass MolarMass, Fraction AlphasPerDecay, Spread Spread, Provenance Provenance)
{
    public RateConstant DecayConstant => RadioactiveDecay.DecayConstant(HalfLife);

    public SpecificActivity SpecificActivity => RadioactiveDecay.SpecificActivity(HalfLife, MolarMass);
}

/// <summary>The share by mass that a nuclide has in a substance, and whether that is natural or the usual make.</summary>
public sealed record NuclideShare(Nuclide Nuclide, Fraction MassShare, bool Natural, Provenance Provenance);

/// <summary>Reads isotopes.tsv, natural-isotopes.tsv, decay-chains.tsv and ores.tsv.</summary>
internal sealed class IsotopeTable
{
    private static readonly Dictionary<string, bool> Kinds = new(StringComparer.Ordinal) { ["natural"] = true, ["usual"] = false };

    private readonly Dictionary<string, Nuclide> _nuclides = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<NuclideShare>> _elements = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(Nuclide Daughter, double Share)>> _daughters = new(StringComparer.Ordinal);
    private readonly HashSet<Substance> _ores = new(ReferenceEqualityComparer.Instance);
    private readonly IReadOnlyDictionary<string, double> _weights;

    private IsotopeTable(IReadOnlyDictionary<string, double> weights) => _weights = weights;

    public static IsotopeTable Read(SubstanceCatalogue catalogue)
    {
        var table = new IsotopeTable(catalogue.AtomicWeights);
        foreach (var row in EmbeddedTables.Facts("isotopes.tsv", "nuclide", "element", "half_life_s", "mass_u", "alpha_share", "spread_percent").Rows)
        {
            var nuclide = new Nuclide(
                row.Text("nuclide"), row.Text("element"), new Span(row.Positive("half_life_s")), MolarMass.FromGramsPerMole(row.Positive("mass_u")),
                new Fraction(row.Number("alpha_share")), Spread.OfPercent(row.Number("spread_percent")), row.Provenance);
            if (!table._nuclides.TryAdd(nuclide.Name, nuclide))
                throw row.Wrong("nuclide", "stands twice");
        }

        foreach (var row in EmbeddedTables.Facts("natural-isotopes.tsv", "element", "nuclide", "mass_share", "kind").Rows)
        {
            if (!table._nuclides.TryGetValue(row.Text("nuclide"), out var nuclide) || nuclide.Element != row.Text("element"))
                throw row.Wrong("nuclide", $"'{row.Text("nuclide")}' is not a nuclide of {row.Text("element")} in isotopes.tsv");
            if (!table._elements.TryGetValue(nuclide.Element, out var list))
                table._elements[nuclide.Element] = list = [];
            list.Add(new NuclideShare(nuclide, new Fraction(row.Positive("mass_share")), row.OneOf("kind", Kinds), row.Provenance));
        }

        foreach (var row in EmbeddedTables.Facts("decay-chains.tsv", "parent", "daughter", "share").Rows)
        {
            if (!table._nuclides.ContainsKey(row.Text("parent")) || !table._nuclides.TryGetValue(row.Text("daughter"), out var daughter))
                throw row.Wrong("daughter", "parent and daughter must stand in isotopes.tsv");
            if (!table._daughters.TryGetValue(row.Text("parent"), out var list))
                table._daughters[row.Text("parent")] = list = [];
            list.Add((daughter, row.Positive("share")));
            if (list.Sum(d => d.Share) > 1.000001)
                throw row.Wrong("share", "the shares of a parent's decays add to more than 1");
        }

        foreach (var row in EmbeddedTables.Facts("ores.tsv", "substance").Rows)
        {
            if (catalogue.Find(row.Text("substance")) is not { } ore || table.In(ore).Count == 0)
                throw row.Wrong("substance", "is no substance of the catalogue that holds a radioactive element");
            if (!table._ores.Add(ore))
                throw row.Wrong("substance", "stands twice");
        }

        return table;
    }

    /// <summary>True for a mineral as it came from the ground, with every daughter in it.</summary>
    public bool IsOre(Substance substance) => _ores.Contains(substance);

    /// <summary>The nuclide and everything that its decay leads to.</summary>
    public DecayChain ChainOf(Nuclide parent)
    {
        var order = new List<Nuclide>();
        Visit(parent, order, []);
        order.Reverse();
        var index = order.Select((n, i) => (n.Name, i)).ToDictionary(x => x.Name, x => x.i, StringComparer.Ordinal);
        var feeds = order.Select(_ => new double[order.Count]).ToArray();
        foreach (var nuclide in order)
        {
            foreach (var (daughter, share) in _daughters.GetValueOrDefault(nuclide.Name) ?? [])
                feeds[index[daughter.Name]][index[nuclide.Name]] = share;
        }

        return new DecayChain(order, feeds);
    }

    // Depth first, so that in reverse every daughter comes after all that feed it.
    private void Visit(Nuclide nuclide, List<Nuclide> order, HashSet<string> seen)
    {
        if (!seen.Add(nuclide.Name))
            return;
        foreach (var (daughter, _) in _daughters.GetValueOrDefault(nuclide.Name) ?? [])
            Visit(daughter, order, seen);
        order.Add(nuclide);
    }

    public Nuclide? Find(string name) => _nuclides.GetValueOrDefault(name);

    /// <summary>Radioactive nuclides in a substance by its formula; empty where none is listed.</summary>
    public IReadOnlyList<NuclideShare> In(Substance substance)
    {
        if (substance.Formula is not { } formula || substance.MolarMass is not { } molarMass)
            return [];
        var shares = new List<NuclideShare>();
        foreach (var (symbol, count) in formula.Atoms)
        {
            if (!_elements.TryGetValue(symbol, out var list))
                continue;
            var element = _weights[symbol] * count / molarMass.GramsPerMole;
            shares.AddRange(list.Select(n => n with { MassShare = n.MassShare * element }));
        }

        return shares;
    }
}
