using System.Globalization;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>A molecular or empirical formula as atoms and counts: H2SO4, Ca(OH)2, CuSO4.5H2O.</summary>
public sealed class ChemicalFormula
{
    private readonly SortedDictionary<string, double> _atoms = new(StringComparer.Ordinal);

    private ChemicalFormula(string text) => Text = text;

    public string Text { get; }

    /// <summary>Count of each element's atoms in one formula unit.</summary>
    public IReadOnlyDictionary<string, double> Atoms => _atoms;

    public bool Contains(string symbol) => _atoms.ContainsKey(symbol);

    /// <summary>Count of one element's atoms; 0 where the formula lacks it.</summary>
    public double CountOf(string symbol) => _atoms.GetValueOrDefault(symbol);

    /// <summary>Reads a formula; adducts are joined by a full stop (CuSO4.5H2O).</summary>
    /// <exception cref="FormatException">The text is not a formula.</exception>
    public static ChemicalFormula Parse(string text)
    {
        var formula = new ChemicalFormula(text);
        foreach (var part in text.Replace('·', '.').Split('.'))
        {
            var i = 0;
            var count = ReadCount(part, ref i);
            formula.ReadGroup(part, ref i, count, closing: false);
            if (i != part.Length)
                throw new FormatException($"'{text}' is not a formula: unexpected '{part[i]}'");
        }

        return formula._atoms.Count > 0 ? formula : throw new FormatException("A formula is empty");
    }

    /// <summary>Molar mass as the sum of the standard atomic weights of its atoms.</summary>
    /// <exception cref="FormatException">An element's symbol is not among the weights.</exception>
    public MolarMass MolarMassBy(IReadOnlyDictionary<string, double> atomicWeights)
    {
        var grams = 0.0;
        foreach (var (symbol, count) in _atoms)
        {
            grams += atomicWeights.TryGetValue(symbol, out var weight)
                ? weight * count
                : throw new FormatException($"'{symbol}' in {Text} is not an element");
        }

        return MolarMass.FromGramsPerMole(grams);
    }

    public override string ToString() => Text;

    private void ReadGroup(string part, ref int i, double factor, bool closing)
    {
        while (i < part.Length)
        {
            var c = part[i];
            if (c is ')' or ']')
            {
                if (!closing)
                    throw new FormatException($"'{Text}' closes a bracket that was not opened");
                return;
            }

            if (c is '(' or '[')
            {
                var end = MatchingBracket(part, i);
                var after = end + 1;
                var times = ReadCount(part, ref after);
                i++;
                ReadGroup(part, ref i, factor * times, closing: true);
                i = after;
                continue;
            }

            if (!char.IsAsciiLetterUpper(c))
                throw new FormatException($"'{Text}' is not a formula: unexpected '{c}'");
            var start = i++;
            while (i < part.Length && char.IsAsciiLetterLower(part[i]))
                i++;
            var symbol = part[start..i];
            _atoms[symbol] = _atoms.GetValueOrDefault(symbol) + (factor * ReadCount(part, ref i));
        }
    }

    private int MatchingBracket(string part, int open)
    {
        var depth = 0;
        for (var j = open; j < part.Length; j++)
        {
            if (part[j] is '(' or '[')
                depth++;
            else if (part[j] is ')' or ']' && --depth == 0)
                return j;
        }

        throw new FormatException($"'{Text}' opens a bracket that is not closed");
    }

    private static double ReadCount(string part, ref int i)
    {
        var start = i;
        while (i < part.Length && (char.IsAsciiDigit(part[i]) || (part[i] == ',' && i > start)))
            i++;
        return i == start ? 1 : double.Parse(part[start..i], CultureInfo.InvariantCulture);
    }
}
