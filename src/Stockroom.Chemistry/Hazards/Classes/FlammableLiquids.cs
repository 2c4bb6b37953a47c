using Stockroom.Chemistry.Catalogue;
using Stockroom.Chemistry.Tables;

namespace Stockroom.Chemistry.Hazards.Classes;

/// <summary>
/// Flammable liquids, CLP Annex I 2.6: by the flash and boiling point where one is known for the whole, else as
/// flammable as the most flammable ingredient, to the safe side.
/// </summary>
public sealed class FlammableLiquids : HazardClass
{
    private static readonly Provenance Criteria = new("Regulation (EC) No 1272/2008", "Annex I Table 2.6.1", "2025");
    private static readonly Provenance WiderCriteria = new("UN GHS, ST/SG/AC.10/30", "Table 2.6.1", "Rev. 10");

    public override string Name => "Flammable liquids";

    public override IReadOnlyList<string> Categories { get; } = ["Flam. Liq. 1", "Flam. Liq. 2", "Flam. Liq. 3", "Flam. Liq. 4"];

    public override bool JudgedAlways => true;

    public override void Judge(Mixture mixture, Findings findings)
    {
        if (mixture.State is MatterState.Solid or MatterState.Gas)
        {
            foreach (var ingredient in mixture.Ingredients.Where(i => Own(i).Any()))
                findings.Note($"not judged: flammability of {ingredient.Name} in a {(mixture.State == MatterState.Gas ? "gas" : "solid")}");
            return;
        }

        if (mixture.FlashPointCelsius is { } flash)
        {
            AsGiven(flash, mixture, findings);
            return;
        }

        var flammable = mixture.Ingredients.Where(i => Own(i).Any()).ToList();
        if (flammable.Count == 0)
            return;
        if (flammable is [var only] && mixture.WaterPercent > 0 && findings.Facts.FlashPoints.Knows(only.Name))
            ByTable(only, mixture, findings);
        else
            ByIngredients(flammable, mixture, findings);
    }

    public override void JudgePure(Ingredient substance, Mixture mixture, Findings findings)
    {
        base.JudgePure(substance, mixture, findings);
        if (mixture.FlashPointCelsius is { } flash && !Own(substance).Any())
            AsGiven(flash, mixture, findings);
    }

    private static void AsGiven(decimal flash, Mixture mixture, Findings findings)
    {
        ByFlashPoint(flash, mixture.BoilingPointCelsius, $"flash point {Explain.Number(flash)} degrees Celsius, as given", null, findings);
        if (mixture.BoilingPointCelsius is null && flash < 23)
            findings.Note("boiling point not known: category 1 (boiling at 35 degrees Celsius or below) is not excluded");
    }

    private static void ByTable(Ingredient only, Mixture mixture, Findings findings)
    {
        var percent = only.Percent * 100m / (only.Percent + mixture.WaterPercent);
        if (findings.Facts.FlashPoints.Of(only.Name, percent) is { } flash)
            ByFlashPoint(flash.Celsius, null, $"{Explain.Share(only)} in water: flash point near {Explain.Number(Math.Round(flash.Celsius, 0))} degrees Celsius", flash.Source, findings);
        else
            findings.Note($"no flash point is known for {only.Name} {Explain.Percent(Math.Round(percent, 1))} in water, weaker than the table; taken as not flammable");
    }

    private static void ByFlashPoint(decimal flash, decimal? boiling, string because, Provenance? source, Findings findings)
    {
        var category = flash < 23 ? (boiling <= 35 ? "Flam. Liq. 1" : "Flam. Liq. 2") : flash <= 60 ? "Flam. Liq. 3" : "Flam. Liq. 4";
        if (category == "Flam. Liq. 4" && (flash > 93 || findings.Rules == RuleSet.Eu))
            return;
        findings.Add(category, findings.Facts.Elements.StatementOf(category), null, () => because, source ?? (category == "Flam. Liq. 4" ? WiderCriteria : Criteria));
    }

    private void ByIngredients(List<Ingredient> flammable, Mixture mixture, Findings findings)
    {
        var inWater = mixture.IsMostlyWater;
        var carry = findings.Facts.Limits.Carry("Flam. Liq.", inWater ? "carry in water" : "carry", findings.Rules);
        var names = string.Join(", ", flammable.Select(i => i.Name));
        if (flammable.Sum(i => i.Percent) < carry.FromPercent)
        {
            findings.Note($"not judged: flammability with {names}; the flash point of the mixture is not known");
            return;
        }

        var worst = flammable.SelectMany(Own).MinBy(c => Severity(c.Category))!;
        findings.Add(worst.Category, worst.Statement, null, () => $"{names}: as flammable as the most flammable ingredient, the flash point of the mixture is not known", carry.Provenance);
        findings.Note($"the flash point of the mixture is not known; {worst.Category} is carried over to the safe side");
    }
}
