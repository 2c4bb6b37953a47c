using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Reactions;

/// <summary>I2 + 2 S2O3(2-) -> 2 I- + S4O6(2-), the reaction of iodometric titration.</summary>
internal sealed class IodineWithThiosulfate : IReaction
{
    private const string Iodine = "iodine";
    private const string Thiosulfate = "sodium thiosulfate pentahydrate";
    private const decimal CrystalWater = 5m;

    public void Run(Vessel vessel, IonTable ions)
    {
        var (iodine, thiosulfate) = (vessel.Catalogue[Iodine], vessel.Catalogue[Thiosulfate]);
        var moles = Math.Min(vessel.MolesOf(iodine), vessel.MolesOf(thiosulfate) / 2m);
        if (moles <= 0 || vessel.Substances.Any(s => ions.Is(s.Name, IonKind.Acid)))
            return;
        var (a, b) = (vessel.GramsOf(iodine), vessel.GramsOf(thiosulfate));
        vessel.Take(iodine, moles);
        vessel.Take(thiosulfate, moles * 2m);
        vessel.Give(vessel.Catalogue["sodium iodide"], moles * 2m);
        vessel.Give(Tetrathionate(vessel), moles);
        vessel.Give(vessel.Catalogue["water"], moles * 2m * CrystalWater);
        vessel.Computed.Add((Iodine, Thiosulfate));
        var left = vessel.GramsOf(iodine) > 0 ? Iodine : vessel.GramsOf(thiosulfate) > 0 ? Thiosulfate : null;
        vessel.Notes.Add($"ingredients would react: {Iodine} {Explain.Percent(a)} and {Thiosulfate} {Explain.Percent(b)} reduce and oxidise each other to sodium iodide and sodium tetrathionate; "
            + (left is null ? "nothing of either is left" : $"{left} is left over"));
    }

    private static Substance Tetrathionate(Vessel vessel)
    {
        const string name = "sodium tetrathionate";
        var formula = ChemicalFormula.Parse("Na2S4O6");
        return vessel.Catalogue.Find(name)
            ?? new Substance(name, formula, null, MatterState.Solid, null, null, formula.MolarMassBy(vessel.Catalogue.AtomicWeights), new("formed from iodine and thiosulfate", "-", "computed"));
    }
}
