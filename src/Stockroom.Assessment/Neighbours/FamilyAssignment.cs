using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Assessment.Neighbours;

/// <summary>Finds the families of a known content: by what it is made of, then by its GHS statements.</summary>
internal sealed class FamilyAssignment(ContactFacts facts, Content content)
{
    // A figure of our own, to the safe side: with a fifth of water a liquid sets off what water sets off.
    private const decimal WaterBasedFromPercent = 20m;
    private const decimal PlainWaterFromPercent = 100m;
    private const string CorrosiveLiquid = "corrosive-liquid";
    private const string WaterBased = "water-based";

    private readonly List<CarriedFamily> _carried = [];
    private readonly HashSet<string> _keys = new(StringComparer.Ordinal);
    private readonly HashSet<string> _never = new(StringComparer.Ordinal);
    private readonly List<string> _unwritten = [];

    // What fluorine leaves alone at room temperature.
    private static readonly HashSet<string> InertFamilies = new(StringComparer.Ordinal) { "inert-gas", "carbon-dioxide", "halogen-fluoride" };

    public IReadOnlyList<CarriedFamily> Carried => [.. _carried.Where(c => c.Family.Key != ContactFacts.Harmless || _carried.Count == 1)];

    public void ByComposition()
    {
        foreach (var part in content.Parts)
        {
            if (facts.FamiliesOf(part.Substance.Name) is not { } rows)
            {
                _unwritten.Add(part.Substance.Name);
                continue;
            }

            foreach (var row in rows)
            {
                if (!row.Carries)
                    _never.Add(row.Family.Key);
                else if (part.Percent >= row.FromPercent)
                    Carry(row.Family, content.Parts.Count == 1 ? $"is {part.Substance.Name}" : $"holds {part.Percent:0.##} % {part.Substance.Name}");
            }
        }

        if (content.State == MatterState.Liquid)
            ByWater(content.PercentOf("water") + content.PercentOf("heavy water"));
    }

    public void ByStatements(IReadOnlyCollection<string> codes)
    {
        foreach (var code in codes.Order(StringComparer.Ordinal))
        {
            var bare = BareCode(code);
            foreach (var family in facts.Families)
            {
                if (family.Statements.Contains(bare) && !_never.Contains(family.Key))
                    Carry(family, $"statement {code}");
            }

            if (bare == "H314")
                Carry(facts.Family(CorrosiveLiquid), $"statement {code}");
        }
    }

    public int[] Terms()
    {
        var terms = _carried.Select(c => facts.IndexOf(c.Family.Key)).ToHashSet();
        if (!_carried.Exists(c => InertFamilies.Contains(c.Family.Key)))
            terms.Add(facts.Anything);
        foreach (var part in content.Parts)
        {
            foreach (var (fromPercent, term) in facts.TermsOf(part.Substance.Name))
            {
                if (part.Percent >= fromPercent)
                    terms.Add(term);
            }
        }

        return [.. terms.Order()];
    }

    public IReadOnlyList<string> Notes(IReadOnlyCollection<string> codes)
    {
        var notes = new List<string>(content.Notes);
        if (content.Parts.Count == 0 || (_carried.Count == 0 && _unwritten.Count > 0 && codes.Count == 0))
            notes.Add($"what {content.Name} does to its neighbours is not known; no rule spoke, which does not mean that it is harmless");
        else if (_unwritten.Count > 0)
            notes.Add($"nothing is written of what {string.Join(" and ", _unwritten)} does to its neighbours; only the statements on the label were used for it");
        if (_keys.Contains("radioactive"))
            notes.Add($"{content.Name} is radioactive: shielding, distance and the terms of the licence are not judged here");
        return notes;
    }

    private void ByWater(decimal percent)
    {
        if (percent >= PlainWaterFromPercent)
            Carry(facts.Family("plain-water"), $"is {percent:0.##} % water");
        if (percent >= WaterBasedFromPercent)
            Carry(facts.Family(WaterBased), $"is {percent:0.##} % water");
    }

    private void Carry(ContactFamily family, string because)
    {
        if (family.Key == CorrosiveLiquid && content.State != MatterState.Liquid)
            return;
        if (_keys.Add(family.Key))
            _carried.Add(new CarriedFamily(family, because));
    }

    // H360FD and H361d are H360 and H361 with letters for the route.
    private static string BareCode(string code)
    {
        var end = code.Length;
        while (end > 0 && !char.IsAsciiDigit(code[end - 1]))
            end--;
        return code[..end];
    }
}
