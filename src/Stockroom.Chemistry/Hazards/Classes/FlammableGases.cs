using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Flammable gases, CLP Annex I 2.2; older entries still say category 1. A mixture is calculated by ISO 10156 where all
/// figures are known, else a flammable gas in it is carried over.
/// </summary>
public sealed class FlammableGases : TestedClass
{
    public override string Name => "Flammable gases";

    public override IReadOnlyList<string> Categories { get; } =
        ["Flam. Gas 1A", "Pyr. Gas", "Chem. Unst. Gas A", "Chem. Unst. Gas B", "Flam. Gas 1", "Flam. Gas 1B", "Flam. Gas 2"];

    protected override string Prefix => "Flam. Gas";

    protected override MatterState? OnlyFor => MatterState.Gas;

    public override void Judge(Mixture mixture, Findings findings)
    {
        var flammable = mixture.Ingredients.Where(i => Own(i).Any()).ToList();
        var sum = mixture.State == MatterState.Gas && flammable.Count > 0
            ? findings.Facts.Gases.FlammableSum([.. mixture.Ingredients.Select(i => (i.Name, i.Percent))])
            : null;
        if (sum is null)
        {
            base.Judge(mixture, findings);
            return;
        }

        var because = $"the flammable gases reach {Explain.Number(sum.Value)} of the share that burns";
        if (sum <= 1m)
        {
            findings.Note($"not flammable by calculation: {because}");
            return;
        }

        var worst = flammable.SelectMany(Own).MinBy(c => Severity(c.Category))!;
        findings.Add(worst.Category, worst.Statement, null, () => because, findings.Facts.Gases.SourceOf(flammable[0].Name));
    }
}
