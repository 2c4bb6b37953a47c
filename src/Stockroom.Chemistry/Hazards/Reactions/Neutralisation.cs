using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Quantities;

namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>
/// A strong acid and a base of one kind, equivalent for equivalent, to a salt; what else forms is the kind's own.
/// An acid of two equivalents that is only half used up is counted as that acid, a carbonate likewise: the stricter side.
/// </summary>
internal abstract class Neutralisation : IReaction
{
    protected abstract IonKind Base { get; }

    /// <summary>What the keeper must know of it.</summary>
    protected abstract string Consequence { get; }

    public void Run(Vessel vessel, IonTable ions)
    {
        foreach (var acid in vessel.Substances.Where(s => ions.Is(s.Name, IonKind.Acid)))
        {
            foreach (var alkali in vessel.Substances.Where(s => ions.Is(s.Name, Base)))
                Neutralise(vessel, acid, ions.Of(acid.Name)!, alkali, ions.Of(alkali.Name)!);
        }
    }

    /// <summary>Gives what forms beside the salt for a number of equivalents.</summary>
    protected abstract void Beside(Vessel vessel, decimal equivalents);

    private void Neutralise(Vessel vessel, Substance acid, IonRow acidIon, Substance alkali, IonRow alkaliIon)
    {
        var acidEquivalents = vessel.MolesOf(acid) * acidIon.Equivalents;
        var alkaliEquivalents = vessel.MolesOf(alkali) * alkaliIon.Equivalents;
        var equivalents = Math.Min(acidEquivalents, alkaliEquivalents);
        if (equivalents <= 0)
            return;
        var (a, b) = (vessel.GramsOf(acid), vessel.GramsOf(alkali));
        var salt = SaltOf(vessel, alkaliIon, acidIon);
        vessel.Take(acid, equivalents / acidIon.Equivalents);
        vessel.Take(alkali, equivalents / alkaliIon.Equivalents);
        vessel.Give(vessel.Catalogue["water"], equivalents / alkaliIon.Equivalents * alkaliIon.CrystalWater);
        GiveSalt(vessel, salt, equivalents / LeastCommon(acidIon.Charge, alkaliIon.Charge));
        Beside(vessel, equivalents);
        vessel.Computed.Add((acid.Name, alkali.Name));
        var left = acidEquivalents > alkaliEquivalents ? acid.Name : alkaliEquivalents > acidEquivalents ? alkali.Name : null;
        vessel.Notes.Add($"ingredients would react: {acid.Name} {Explain.Percent(a)} and {alkali.Name} {Explain.Percent(b)} neutralise each other to {salt.Name}, {Consequence}; "
            + (left is null ? "nothing of either is left" : $"{left} is left over{HalfUsed(left, acidIon, alkaliIon)}"));
    }

    private static string HalfUsed(string left, IonRow acid, IonRow alkali) =>
        left == acid.Substance && acid.Equivalents > 1 ? " (counted as the acid itself, not as its acid salt: the stricter side)"
        : left == alkali.Substance && alkali.Kind == IonKind.Carbonate ? " (counted as the carbonate itself: the stricter side)"
        : "";

    // The salt crystallises from what is at hand: where the catalogue has only a hydrate, its water is taken from the whole.
    private static void GiveSalt(Vessel vessel, Substance salt, decimal moles)
    {
        vessel.Give(salt, moles);
        var water = vessel.Catalogue["water"];
        if (CrystalWater(salt) is > 0 and var bound)
            vessel.Take(water, moles * bound);
    }

    private static decimal CrystalWater(Substance salt)
    {
        var dot = salt.Formula!.Text.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? 0m : (decimal)ChemicalFormula.Parse(salt.Formula.Text[(dot + 1)..]).CountOf("O");
    }

    private static Substance SaltOf(Vessel vessel, IonRow cation, IonRow anion)
    {
        var least = LeastCommon(cation.Charge, anion.Charge);
        var formula = ChemicalFormula.Parse(Group(cation.Ion, least / cation.Charge) + Group(anion.Ion, least / anion.Charge));
        var known = vessel.Catalogue.Substances.Where(s => s.State == MatterState.Solid && s.Formula is not null).ToList();
        return known.Find(s => Same(s.Formula!.Text, formula))
            ?? known.Find(s => s.Formula!.Text.Contains('.', StringComparison.Ordinal) && Same(s.Formula.Text.Split('.')[0], formula))
            ?? new Substance($"{cation.Name} {anion.Name}", formula, null, MatterState.Solid, null, null, formula.MolarMassBy(vessel.Catalogue.AtomicWeights), new("formed by neutralisation", "-", "computed"));
    }

    private static bool Same(string text, ChemicalFormula formula) =>
        ChemicalFormula.Parse(text).Atoms.OrderBy(a => a.Key, StringComparer.Ordinal).SequenceEqual(formula.Atoms.OrderBy(a => a.Key, StringComparer.Ordinal));

    private static string Group(string ion, int count) => count == 1 ? ion : $"({ion}){count}";

    private static int LeastCommon(int a, int b) => a % b == 0 ? a : b % a == 0 ? b : a * b;
}
