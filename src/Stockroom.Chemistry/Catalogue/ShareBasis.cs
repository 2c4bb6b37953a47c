using System.Globalization;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Catalogue;

/// <summary>A share stated on another basis, turned into mass of the pure substance.</summary>
/// <param name="Factor">Mass of the pure substance for one unit of mass of the basis.</param>
/// <param name="Because">The stoichiometry, for whoever reads the answer.</param>
public sealed record ShareConversion(decimal Factor, string Because);

/// <summary>
/// Turns "active chlorine", "P2O5", an element or the anhydrous salt into mass of the pure substance, by molar masses
/// and share-bases.tsv.
/// </summary>
public sealed class ShareBasis
{
    private readonly SubstanceCatalogue _catalogue;
    private readonly ILookup<string, (string Basis, ChemicalFormula Formula, decimal Moles, string Reaction)> _rows;

    /// <summary>The conversions for the substances of one catalogue.</summary>
    public ShareBasis(SubstanceCatalogue catalogue)
    {
        _catalogue = catalogue;
        _rows = EmbeddedTables.Facts("share-bases.tsv", "substance", "basis", "basis_formula", "moles", "reaction").Rows.ToLookup(
            r => catalogue.Find(r.Text("substance"))?.Name ?? throw r.Wrong("substance", $"'{r.Text("substance")}' is not a substance of substances.tsv"),
            r => (r.Text("basis"), ChemicalFormula.Parse(r.Text("basis_formula")), r.Decimal("moles"), r.Text("reaction")),
            StringComparer.Ordinal);
    }

    /// <summary>The bases that the tables know for a substance, for a message.</summary>
    public IEnumerable<string> KnownFor(Substance substance) => _rows[substance.Name].Select(r => r.Basis);

    /// <summary>How a basis converts for a substance, or null where it does not.</summary>
    public ShareConversion? Of(Substance substance, string basis)
    {
        if (substance is not { Formula: { } formula, MolarMass: { } molarMass })
            return null;
        var whole = (decimal)molarMass.GramsPerMole;
        var words = Plain(basis);
        foreach (var row in _rows[substance.Name])
        {
            if (words == Plain(row.Basis) || words == Plain(row.Formula.Text))
                return Conversion(whole, row.Moles * MassOf(row.Formula), $"{substance.Name} {Grams(whole)} for {Grams(row.Moles * MassOf(row.Formula))} of {row.Basis}: {row.Reaction}");
        }

        if (words == Plain(formula.Text))
            return new ShareConversion(1m, $"{formula.Text} is {substance.Name} itself");
        return AsAnhydrous(substance, formula, whole, words) ?? AsElement(substance, formula, whole, basis.Trim());
    }

    private static string Plain(string basis)
    {
        var words = basis.Trim().ToLowerInvariant().Replace("available", "active", StringComparison.Ordinal);
        return words.StartsWith("as ", StringComparison.Ordinal) ? words[3..].Trim() : words;
    }

    private static string Grams(decimal grams) => Math.Round(grams, 2).ToString("0.##", CultureInfo.InvariantCulture) + " g";

    private static ShareConversion Conversion(decimal whole, decimal part, string because) => new(whole / part, because);

    private ShareConversion? AsAnhydrous(Substance substance, ChemicalFormula formula, decimal whole, string words)
    {
        var dot = formula.Text.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0)
            return null;
        var salt = formula.Text[..dot];
        if (words != "anhydrous" && words != salt.ToLowerInvariant())
            return null;
        var dry = MassOf(ChemicalFormula.Parse(salt));
        return Conversion(whole, dry, $"{substance.Name} {Grams(whole)} for {Grams(dry)} of {salt}");
    }

    // An element counts only where the trade has no other meaning for its name (the chlorine of a hypochlorite).
    private ShareConversion? AsElement(Substance substance, ChemicalFormula formula, decimal whole, string symbol)
    {
        if (!formula.Contains(symbol) || _rows[substance.Name].Any() || !_catalogue.AtomicWeights.TryGetValue(symbol, out var weight))
            return null;
        var part = (decimal)(formula.CountOf(symbol) * weight);
        return Conversion(whole, part, $"{substance.Name} {Grams(whole)} for {Grams(part)} of {symbol}");
    }

    private decimal MassOf(ChemicalFormula formula) => (decimal)formula.MolarMassBy(_catalogue.AtomicWeights).GramsPerMole;
}
