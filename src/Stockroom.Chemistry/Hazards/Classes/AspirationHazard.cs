using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Aspiration hazard, CLP Annex I 3.10.3.3: from 10 % of such ingredients on, if the whole is thin enough; an unknown
/// viscosity counts as thin.
/// </summary>
public sealed class AspirationHazard : AdditiveClass
{
    private const decimal ThinUpTo = 20.5m;

    public override string Name => "Aspiration hazard";

    public override IReadOnlyList<string> Categories { get; } = ["Asp. Tox. 1", "Asp. Tox. 2"];

    public override void Judge(Mixture mixture, Findings findings)
    {
        foreach (var target in Categories)
        {
            var shares = SharesTowards(target, mixture, findings);
            if (!Reached(shares) || mixture.State is MatterState.Gas or MatterState.Solid)
                continue;
            if (mixture.KinematicViscosity > ThinUpTo)
            {
                findings.Note($"{target}: not given, kinematic viscosity {Explain.Number(mixture.KinematicViscosity.Value)} mm2/s lies above {Explain.Number(ThinUpTo)}");
                return;
            }

            if (mixture.KinematicViscosity is null)
                findings.Note($"{target}: the viscosity is not known; taken as thin, to the safe side");
            findings.Add(target, findings.Facts.Elements.StatementOf(target), null, () => Because(shares), shares[0].Source);
            return;
        }
    }

    protected override (decimal From, Provenance Source)? LimitTowards(string target, Ingredient ingredient, Findings findings) =>
        GenericTowards(target, Counting(ingredient), findings);
}
