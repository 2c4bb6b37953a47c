using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Oxidising gases, CLP Annex I 2.4. A mixture is calculated by ISO 10156 where all figures are known, else an oxidising
/// gas in it is carried over.
/// </summary>
public sealed class OxidisingGases : TestedClass
{
    public override string Name => "Oxidizing gases";

    public override IReadOnlyList<string> Categories { get; } = ["Ox. Gas 1"];

    protected override string Prefix => "Ox. Gas";

    protected override MatterState? OnlyFor => MatterState.Gas;

    public override void Judge(Mixture mixture, Findings findings)
    {
        var oxidising = mixture.Ingredients.Where(i => Own(i).Any()).ToList();
        var power = mixture.State == MatterState.Gas && oxidising.Count > 0
            ? findings.Facts.Gases.OxidisingPower([.. mixture.Ingredients.Select(i => (i.Name, i.Percent))])
            : null;
        if (power is null)
        {
            base.Judge(mixture, findings);
            return;
        }

        var because = $"oxidising power {Explain.Number(power.Value)} % of oxygen, limit {Explain.Number(GasMixing.OxidisingFrom)} %";
        if (power < GasMixing.OxidisingFrom)
            findings.Note($"not oxidising by calculation: {because}");
        else
            findings.Add(Categories[0], findings.Facts.Elements.StatementOf(Categories[0]), null, () => because, findings.Facts.Gases.SourceOf(oxidising[0].Name));
    }
}
