using Stockroom.Chemistry.Catalogue;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>Gases under pressure, CLP Annex I 2.5: a property of the gas as it is held.</summary>
public sealed class GasesUnderPressure : TestedClass
{
    private const string Held = "Press. Gas holds for gas held at 200 kPa (gauge) or more, or liquefied (CLP Annex I 2.5.1); an ampoule sealed at the pressure of the room is not meant";

    public override string Name => "Gases under pressure";

    public override IReadOnlyList<string> Categories { get; } =
        ["Press. Gas (Ref. Liq.)", "Press. Gas (Liq.)", "Press. Gas", "Press. Gas (Diss.)", "Press. Gas (Comp.)"];

    protected override string Prefix => "Press. Gas";

    protected override MatterState? OnlyFor => MatterState.Gas;

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        if (findings.Any(c => Owns(c.Category)))
            findings.Note(Held);
    }
}
